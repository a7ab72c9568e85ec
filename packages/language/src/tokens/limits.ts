/**
 * Caps that keep any text harmless: the parser recurses on braces and parentheses, and its time grows with tokens.
 * No piece of furniture comes near them.
 */
export const deepestBraces = 40;
export const deepestParentheses = 12;
export const longestSum = 200;
export const mostTokens = 200_000;
/** Words parted or joined in one text, and tokens of a line whose braces are mended by trial: both cost as they multiply. */
export const mostRepartedWords = 100;
export const longestMendedLine = 200;
