import type { PlacedFinding } from '../evaluation/placed-findings.ts';

/**
 * The state of a text or of one piece in a few words: above the piece, in the status bar, at the head of the list of
 * findings.
 */

const mostCharacters = 60;

/** The gist of a finding may hold words of the text, of any length; the whole sentence stands in the list. */
function shortened(words: string): string {
  if (words.length <= mostCharacters) return words;
  const cut = words.lastIndexOf(' ', mostCharacters);
  return `${words.slice(0, cut > 0 ? cut : mostCharacters)}\u2026`;
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** What of a finding its verdict speaks of. */
export type Told = Pick<PlacedFinding, 'severity' | 'brief'>;

/** Notes alone do not keep a piece from fitting. */
export function verdictWords(readable: boolean, findings: readonly Told[]): string {
  const grave = findings.filter((finding) => finding.severity !== 'note');
  const worst = grave.find((finding) => finding.severity === 'error') ?? grave[0];
  if (worst === undefined) {
    if (!readable) return 'cannot be read yet';
    return findings.length === 0 ? 'fits' : `fits, ${counted(findings.length, 'note', 'notes')}`;
  }
  return `${counted(grave.length, 'finding', 'findings')}: ${shortened(worst.brief)}`;
}
