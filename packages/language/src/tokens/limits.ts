/**
 * Caps that keep any text harmless: the parser recurses on braces and parentheses, and its time grows with tokens.
 * No piece of furniture comes near them.
 */
export const deepestBraces = 40;
export const deepestParentheses = 12;
export const longestSum = 200;
export const mostTokens = 400_000;
