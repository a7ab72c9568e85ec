/** A check with a text that just passes and one that just fails, in the words of the language. */
export interface BoundaryCase {
  readonly code: string;
  readonly what: string;
  readonly passes: string;
  readonly fails: string;
  readonly severity: 'error' | 'warning' | 'note';
  /** The words under the squiggle. */
  readonly at: string;
  /** Part of the sentence: the number, the limit or the difference. */
  readonly says: string;
  readonly titles: readonly string[];
}

interface Words {
  readonly shop?: string;
  readonly units?: string;
  readonly size?: string;
  readonly box?: string;
  readonly face?: string;
}

export function piece({
  shop = '',
  units = 'units inches to 1/64',
  size = '24 wide, 20 high, 12 deep',
  box = '',
  face,
}: Words): string {
  const body = box === '' ? 'sides thick 3/4   bottom thick 3/4, between sides' : box;
  const front = face === undefined ? '' : `\n  face inset, gap 1/8 { ${face} }`;
  return `${shop}\npiece "box" {\n  ${units}\n  size ${size}\n  case { ${body} }${front}\n}\n`;
}

/** The same text with other words in one place. */
export function pair(make: (words: string) => string, passing: string, failing: string) {
  return { passes: make(passing), fails: make(failing) };
}
