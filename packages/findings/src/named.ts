import type { Measure, Say } from './finding.ts';

/** Says which cell is meant: by its `name` in the maker's quotes, or in `words` such as 'the third drawer'. */
export function subject(values: Readonly<Record<string, Measure | string | number>>, say: Say): string {
  const { name, words } = values;
  return name === undefined ? String(words ?? 'it') : say.name(String(name));
}
