import { explain } from '@fettle/engine';
import type { Origin, Say } from '@fettle/findings';
import type { ComputedSize } from './computed-sizes.ts';
import { plainMarkdown } from './markdown.ts';

/** A place that one can go to: its file as an address, its name for a place elsewhere, and its line from one on. */
export interface LinkedPlace {
  readonly uri: string;
  readonly file?: string;
  readonly line: number;
}

/** Undefined for a place that is gone. */
export type PlaceOf = (origin: Origin) => LinkedPlace | undefined;

/** Each size with its terms, as Markdown; every term leads to where it is written, and none is told twice. */
export function derivations(sizes: readonly ComputedSize[], say: Say, placeOf: PlaceOf): string[] {
  const told = new Set<string>();
  return sizes.flatMap((size) => {
    const places: LinkedPlace[] = [];
    // In plain words first, for the words are compared; a mark that no text holds keeps the place of each link.
    const lines = explain(size.figure, say, (origin) => {
      const place = placeOf(origin);
      if (place === undefined) return undefined;
      const known = places.findIndex(({ uri, line }) => uri === place.uri && line === place.line);
      const at = known >= 0 ? known : places.push(place) - 1;
      return `written in ${linkMark}${at}${linkMark}`;
    }).split('\n');
    const list = untold(lines, told).map((line) => listItem(line, places));
    return [`${plainMarkdown(size.label)}:`, list.join('\n')];
  });
}

const linkMark = '\u0000';

function listItem(line: string, places: readonly LinkedPlace[]): string {
  const words = line.trimStart();
  const pieces = words.split(linkMark);
  const text = pieces.map((piece, at) => (at % 2 === 0 ? plainMarkdown(piece) : link(places[Number(piece)])));
  return `${line.slice(0, line.length - words.length)}- ${text.join('')}`;
}

function link(place: LinkedPlace | undefined): string {
  if (place === undefined) return '';
  const words = `line ${place.line}${place.file === undefined ? '' : ` of ${plainMarkdown(place.file)}`}`;
  // An address holds no blank and no closing bracket of its own: both would end it.
  return `[${words}](${encodeURI(decodeURI(place.uri)).replaceAll('(', '%28').replaceAll(')', '%29')}#L${place.line})`;
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
