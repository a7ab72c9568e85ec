import type { PlacedFinding } from '@fettle/language';
import type { Verdict } from '@fettle/protocol';

/** The state of a text in a few words, for the status bar and the head of the list of findings. */

const mostCharacters = 60;

/**
 * A headline says what is wrong, then by how much. One that is too long for a status bar gives way to its last part,
 * one without parts is cut at a word: the whole sentence stands in the list.
 */
function shortened(sentence: string): string {
  if (sentence.length <= mostCharacters) return sentence;
  const last = sentence.slice(sentence.lastIndexOf(': ') + 2);
  if (sentence.includes(': ') && last.length <= mostCharacters) return last;
  const cut = sentence.lastIndexOf(' ', mostCharacters);
  return `${sentence.slice(0, cut > 0 ? cut : mostCharacters)}\u2026`;
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
