/**
 * The colours of a sheet and the custom properties a page may set instead. Colours never carry meaning alone: line
 * types and words do.
 */

interface Tint {
  readonly property: string;
  /** On white paper. */
  readonly printed: string;
  /** In a page that sets no property: its own text colour, or nothing. */
  readonly inPage: string;
}

const TINTS = {
  ink: { property: '--fettle-ink', printed: '#1c2024', inPage: 'currentColor' },
  quiet: { property: '--fettle-quiet', printed: '#4d555c', inPage: 'currentColor' },
  warning: { property: '--fettle-warning', printed: '#a3180c', inPage: 'currentColor' },
  paper: { property: '--fettle-paper', printed: '#ffffff', inPage: 'none' },
  front: { property: '--fettle-front', printed: '#f7f0e2', inPage: 'none' },
} as const satisfies Readonly<Record<string, Tint>>;

export type TintName = keyof typeof TINTS;

/** As a presentation attribute: fixed in a file, open to the page's theme in a page. */
export function colour(tint: TintName, standalone: boolean): string {
  const { property, printed, inPage } = TINTS[tint];
  return standalone ? printed : `var(${property}, ${inPage})`;
}

/** For files only: shows which part has the keyboard's or the pointer's attention. */
export const STANDALONE_STYLE =
  '.part{cursor:pointer;outline:none}' +
  '.part:hover>.surface,.part:focus-visible>.surface{fill:#ffd98a;fill-opacity:.5}' +
  '.part:focus-visible>.edge{stroke:#0b57a4}';
