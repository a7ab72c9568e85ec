/** Markdown that no name can break out of. */

/** Plain words inside a line of Markdown: every mark that could mean something is escaped. */
export function plainMarkdown(words: string): string {
  return words.replace(/[\\`*_{}[\]<>()#+\-.!|~&$:@^=]/g, '\\$&').replace(/\s+/g, ' ');
}

/** A block shown as it is written; its fence is longer than any run of backticks within. */
export function fenced(text: string, language = 'text'): string {
  const longest = Math.max(0, ...[...text.matchAll(/`+/g)].map((run) => run[0].length));
  const fence = '`'.repeat(Math.max(3, longest + 1));
  return `${fence}${language}\n${text}\n${fence}`;
}
