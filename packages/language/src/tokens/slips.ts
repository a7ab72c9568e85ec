/** Slips of the pen that were mended while the words were sorted: one for each cause, with the place it stands. */
export type Slip =
  | {
      readonly kind: 'brace-not-closed';
      readonly start: number;
      readonly end: number;
      readonly word: string;
      readonly closeAt: number;
      /** Where the statements around it stand that are not closed either, innermost first. */
      readonly around: readonly number[];
      /** The text ends before it is closed: its last word may be half typed. */
      readonly atEnd: boolean;
    }
  | {
      readonly kind: 'brace-not-opened';
      readonly start: number;
      readonly end: number;
      readonly word: string;
      readonly openAt: number;
    }
  | { readonly kind: 'stray-brace'; readonly start: number; readonly end: number; readonly brace: '{' | '}' }
  | { readonly kind: 'name-not-closed'; readonly start: number; readonly end: number }
  | { readonly kind: 'name-not-opened'; readonly start: number; readonly end: number }
  | { readonly kind: 'half-marked-remark'; readonly start: number; readonly end: number }
  | {
      readonly kind: 'hyphen-left-out';
      readonly start: number;
      readonly end: number;
      readonly words: string;
      readonly word: string;
    }
  | { readonly kind: 'stray-mark'; readonly start: number; readonly end: number; readonly mark: string }
  | { readonly kind: 'too-deep'; readonly start: number; readonly end: number; readonly limit: number }
  | { readonly kind: 'too-long'; readonly start: number; readonly end: number; readonly limit: number };
