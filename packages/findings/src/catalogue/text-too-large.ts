import { defineFinding } from '../finding.ts';

export const textTooLarge = defineFinding<{
  readonly what: 'braces' | 'words' | 'text' | 'findings';
  readonly limit: number;
  /** Braces that stand too deep, or findings that are not shown. */
  readonly count?: number;
}>({
  code: 'text-too-large',
  severity: 'error',
  title: 'More than can be read',
  headline: (facts) =>
    facts.what === 'braces'
      ? `braces stand ${facts.limit} deep here; what is deeper is read as if it stood at that depth` +
        ((facts.count ?? 1) > 1 ? `, and so it is with ${facts.count} braces of this text` : '')
      : facts.what === 'findings'
        ? `only ${facts.limit} findings of this text are shown; there are ${facts.count ?? 0} more`
        : facts.what === 'words'
          ? `only the first ${facts.limit} words and signs of this text are read`
          : 'this text could not be read at all',
  brief: (facts) => (facts.what === 'findings' ? `${facts.count ?? 0} more findings` : 'too large to be read'),
  related: {},
  mends: {},
  help: `
There is a limit to how deep braces may stand and how long a text may be, far beyond any piece of furniture.
Of many hundreds of findings only the gravest are shown; the others come forward as those are mended.
`,
});
