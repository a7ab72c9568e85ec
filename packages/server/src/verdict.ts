import { type Told, verdictWords } from '@fettle/language';
import type { Verdict } from '@fettle/protocol';

/** What the status bar is told of a text. */
export function verdictOn(
  uri: string,
  version: number,
  evaluated: { readonly readable: boolean; readonly findings: readonly Told[] },
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
