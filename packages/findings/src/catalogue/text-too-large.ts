import { defineFinding } from '../finding.ts';

export const textTooLarge = defineFinding<{ readonly what: 'braces' | 'words' | 'text'; readonly limit: number }>({
  code: 'text-too-large',
  severity: 'error',
  title: 'More than can be read',
  headline: (facts) =>
    facts.what === 'braces'
      ? `braces stand ${facts.limit} deep here; what is deeper is read as if it stood at that depth`
      : facts.what === 'words'
        ? `only the first ${facts.limit} words and signs of this text are read`
        : 'this text could not be read at all',
  brief: () => 'too large to be read',
  related: {},
  mends: {},
  help: `
There is a limit to how deep braces may stand and how long a text may be, far beyond any piece of furniture.
`,
});
