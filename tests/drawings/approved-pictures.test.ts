import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { elevation, toSvg } from '@fettle/drawings';
import type { Element } from '@xmldom/xmldom';
import { expect, it } from 'vitest';
import {
  bookcase,
  caseOnly,
  evaluatedSideboard,
  overfullSideboard,
  pencilChest,
  vanity,
  wallCupboard,
} from './pieces-to-draw.ts';
import { elements, readSvg } from './reading-svg.ts';

/**
 * Whole pictures that somebody has looked at. A difference tells which element moved and by how much; APPROVE=1 writes
 * the pictures anew, and whoever does that looks at them again.
 */

const pictures = {
  sideboard: evaluatedSideboard,
  'sideboard-overfull': overfullSideboard,
  'sideboard-case': caseOnly,
  'pencil-chest': pencilChest,
  vanity,
  bookcase,
  'wall-cupboard': wallCupboard,
};

it.each(Object.entries(pictures))('%s looks as approved', (name, make) => {
  const path = new URL(`../approved/${name}.svg`, import.meta.url);
  const svg = toSvg(elevation(make()), { standalone: true });
  if (process.env['APPROVE'] === '1') writeFileSync(path, svg);
  expect(existsSync(path), `${name}.svg is approved by running with APPROVE=1`).toBe(true);
  expect(differences(readFileSync(path, 'utf8'), svg)).toEqual([]);
});

it('tells what moved, what changed and what came or went', () => {
  const before = toSvg(elevation(evaluatedSideboard()), { standalone: true });
  expect(differences(before, before)).toEqual([]);
  const moved = before.replace(
    /(id="elevation-part-cards\.2f\.front"[\s\S]*?<rect class="surface front" x=")([\d.]+)/,
    (_, head, x) => `${head}${Number(x) + 2}`,
  );
  expect(differences(before, moved)).toEqual([
    expect.stringMatching(/^elevation-part-cards\.2f\.front rect 1: x [\d.]+ → [\d.]+ \(by 2\)$/),
  ]);
  const renamed = before.replace('>cards</text>', '>card games</text>');
  expect(differences(before, renamed)).toEqual([expect.stringContaining('text "cards" → "card games"')]);
  const less = before.replace(/<text [^>]*>cards<\/text>\n/, '');
  expect(differences(before, less).join('\n')).toMatch(/text \d+: gone/);
});

interface Entry {
  readonly attributes: ReadonlyMap<string, string>;
  readonly text: string;
}

function differences(before: string, after: string): string[] {
  const old = entries(before);
  const now = entries(after);
  const found: string[] = [];
  for (const [key, entry] of old) {
    const other = now.get(key);
    if (other === undefined) found.push(`${key}: gone`);
    else found.push(...changes(key, entry, other));
  }
  for (const key of now.keys()) if (!old.has(key)) found.push(`${key}: new`);
  return found;
}

function changes(key: string, before: Entry, after: Entry): string[] {
  const found: string[] = [];
  for (const name of new Set([...before.attributes.keys(), ...after.attributes.keys()])) {
    const one = before.attributes.get(name);
    const other = after.attributes.get(name);
    if (one === other) continue;
    const by = Math.round((Number(other) - Number(one)) * 1000) / 1000;
    found.push(`${key}: ${name} ${one} → ${other}${Number.isFinite(by) ? ` (by ${by})` : ''}`);
  }
  if (before.text !== after.text) found.push(`${key}: text "${before.text}" → "${after.text}"`);
  return found;
}

/** Each element under the nearest id above it, with its number among its like there. */
function entries(svg: string): Map<string, Entry> {
  const found = new Map<string, Entry>();
  const counts = new Map<string, number>();
  const root = readSvg(svg);
  for (const element of [root, ...elements(root, '*')]) {
    const id = element.getAttribute('id');
    let key = id ?? '';
    if (id === null) {
      const kind = `${idAbove(element)} ${element.tagName}`;
      const count = (counts.get(kind) ?? 0) + 1;
      counts.set(kind, count);
      key = `${kind} ${count}`;
    }
    const attributes = new Map(Array.from(element.attributes).map((attribute) => [attribute.name, attribute.value]));
    const hasElements = Array.from(element.childNodes).some((child) => child.nodeType === 1);
    found.set(key, { attributes, text: hasElements ? '' : (element.textContent ?? '') });
  }
  return found;
}

function idAbove(element: Element): string {
  let above = element.parentNode;
  while (above !== null && above.nodeType === 1) {
    const id = (above as Element).getAttribute('id');
    if (id !== null) return id;
    above = above.parentNode;
  }
  return '';
}
