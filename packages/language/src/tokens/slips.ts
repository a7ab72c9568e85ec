/** Slips of the pen that were mended while the words were sorted: one for each cause, with the place it stands. */
export type Slip =
  | {
      readonly kind: 'brace-not-closed';
      readonly start: number;
      readonly end: number;
      readonly word: string;
      readonly closeAt: number;
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
  | { readonly kind: 'stray-mark'; readonly start: number; readonly end: number; readonly mark: string }
  | { readonly kind: 'too-deep'; readonly start: number; readonly end: number; readonly limit: number }
  | { readonly kind: 'too-long'; readonly start: number; readonly end: number; readonly limit: number };
