import type { PlacedFinding } from '@fettle/language';
import type { Verdict } from '@fettle/protocol';

/** The state of a text in a few words, for the status bar and the head of the list of findings. */

/** Longer headlines are cut at a word: the whole sentence stands in the list. */
const mostCharacters = 72;

function shortened(sentence: string): string {
  const [first = sentence] = sentence.split('. ');
  if (first.length <= mostCharacters) return first;
  const cut = first.lastIndexOf(' ', mostCharacters);
  return `${first.slice(0, cut > 0 ? cut : mostCharacters)}\u2026`;
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** Notes alone do not keep a piece from fitting. */
export function verdictWords(readable: boolean, findings: readonly PlacedFinding[]): string {
  const grave = findings.filter((finding) => finding.severity !== 'note');
  const worst = grave.find((finding) => finding.severity === 'error') ?? grave[0];
  if (worst === undefined) {
    if (!readable) return 'cannot be read yet';
    return findings.length === 0 ? 'fits' : `fits, ${counted(findings.length, 'note', 'notes')}`;
  }
  return `${counted(grave.length, 'finding', 'findings')}: ${shortened(worst.sentence)}`;
}

export function verdictOn(
  uri: string,
  version: number,
  evaluated: { readonly readable: boolean; readonly findings: readonly PlacedFinding[] },
): Verdict {
  const { readable, findings } = evaluated;
  return {
    uri,
    version,
    readable,
    verdict: verdictWords(readable, findings),
    errors: findings.filter((finding) => finding.severity === 'error').length,
    warnings: findings.filter((finding) => finding.severity === 'warning').length,
  };
}
