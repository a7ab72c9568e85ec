import { explain } from '@fettle/engine';
import type { Say } from '@fettle/findings';
import type { ComputedSize } from './computed-sizes.ts';
import { fenced, plainMarkdown } from './markdown.ts';

/** Each size with its terms, as Markdown; terms that were told above are not told again. */
export function derivations(sizes: readonly ComputedSize[], say: Say): string[] {
  const told = new Set<string>();
  return sizes.flatMap((size) => {
    const lines = explain(size.figure, say).split('\n');
    return [`${plainMarkdown(size.label)}:`, fenced(untold(lines, told).join('\n'))];
  });
}

/** The first line, and of the indented ones below it those that are new. */
function untold(lines: readonly string[], told: Set<string>): string[] {
  const kept: string[] = [];
  let skippedDepth = Number.POSITIVE_INFINITY;
  lines.forEach((line, index) => {
    const depth = line.length - line.trimStart().length;
    if (depth > skippedDepth) return;
    skippedDepth = Number.POSITIVE_INFINITY;
    const sum = line.indexOf(' = ');
    // The same figure is called 'front of "cards"' in one place and nothing in another; its sum is the same.
    const content = sum < 0 ? line.trimStart() : line.slice(sum);
    if (index > 0 && told.has(content)) skippedDepth = depth;
    else kept.push(line);
    told.add(content);
  });
  return kept;
}
