import { defineFinding } from '../finding.ts';

/** Understood, kept, and not computed yet. */
export const notCheckedYet = defineFinding<{ readonly words: string }>({
  code: 'not-checked-yet',
  severity: 'note',
  title: 'Understood, not checked yet',
  headline: (facts) => `'${facts.words}' is understood and not checked yet: no size or drawing takes it into account`,
  related: {},
  mends: {},
  help: `
The words are part of the language, and nothing is computed from them yet. They stay in the text unharmed.
`,
});
