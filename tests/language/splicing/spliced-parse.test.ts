import fc from 'fast-check';
import { type AstNode, type CstNode, isAstNode, isCompositeCstNode, isReference, type ParseResult } from 'langium';
import { expect, test } from 'vitest';
import { isStatement, type Text } from '../../../packages/language/src/generated/ast.ts';
import { spliceParse } from '../../../packages/language/src/splicing/spliced-parse.ts';
import type { StructureReport } from '../../../packages/language/src/tokens/fettle-lexer.ts';
import { services } from '../harness/workbench.ts';
import { example, shop, sideboard } from '../sideboard.ts';

/** A tree that was spliced must be the tree that reading the whole text afresh gives, to the last comma. */

const { LangiumParser } = services.parser;
const parse = (text: string) => LangiumParser.parse<Text>(text);

function cstLines(node: CstNode, depth = 0): string[] {
  const { offset, end, text, range, hidden } = node;
  const { start: a, end: b } = range;
  const place = `${offset}-${end} ${a.line}:${a.character}-${b.line}:${b.character}${hidden ? ' hidden' : ''}`;
  const own = `${' '.repeat(depth)}${place} ${node.astNode.$type} ${JSON.stringify(text)}`;
  if (!isCompositeCstNode(node)) return [own];
  for (const each of node.content) expect(each.container).toBe(node);
  return [own, ...node.content.flatMap((each) => cstLines(each, depth + 1))];
}

function astLines(node: AstNode, depth = 0): string[] {
  const { $type, $containerProperty, $containerIndex, $cstNode } = node;
  const lines = [`${' '.repeat(depth)}${$type} ${$containerProperty}[${$containerIndex}] at ${$cstNode?.offset}`];
  for (const [name, value] of Object.entries(node)) {
    if (name.startsWith('$')) continue;
    for (const each of Array.isArray(value) ? value : [value]) {
      if (isAstNode(each)) {
        expect(each.$container).toBe(node);
        lines.push(...astLines(each, depth + 1));
      } else {
        const words = isReference(each) ? `${each.$refText} at ${each.$refNode?.offset}` : String(each);
        lines.push(`${' '.repeat(depth)}${name}: ${words}`);
      }
    }
  }
  return lines;
}

function told({ value, lexerReport, parserErrors }: ParseResult<Text>) {
  const { slips } = lexerReport as StructureReport;
  return {
    ast: astLines(value),
    cst: value.$cstNode === undefined ? [] : cstLines(value.$cstNode),
    slips: slips.map((slip) => JSON.stringify(slip)).sort(),
    parserErrors,
  };
}

const twice = `${sideboard}\n// the other one\n${sideboard.replace('"Games sideboard"', '"Other sideboard"')}`;
const texts = [
  twice,
  twice.replaceAll('\n', '\r\n'),
  shop,
  example('wall.fettle').text,
  example('metric-shop.fettle').text,
];
const typed = [
  '1',
  ' ',
  '"',
  'front 5 high',
  '{',
  '}',
  '{ }',
  '\n',
  '\r\n',
  '\r',
  '/*',
  '*/',
  '/* a */',
  '// b\n',
  ';',
  'é',
  'piece "x" { }',
  '(',
  'rest',
  '\u{1F600}',
];
const at = fc.nat({ max: 20_000 });
/** What a maker types most: a letter, a number, a word, or one of them gone. */
const plain = fc.record({
  at,
  gone: fc.nat({ max: 3 }),
  typed: fc.constantFrom('', '1', ' ', ';', 'é', 'rest', 'front 5 high'),
});
const wild = fc.record({
  at,
  gone: fc.oneof({ weight: 3, arbitrary: fc.nat({ max: 3 }) }, fc.nat({ max: 100 })),
  typed: fc.oneof(fc.constant(''), fc.constantFrom(...typed)),
});
const edits = fc.array(fc.oneof(plain, wild), { minLength: 1, maxLength: 6 });

test('after any edits it is the tree that a fresh reading gives', () => {
  let spliced = 0;
  let all = 0;
  fc.assert(
    fc.property(fc.constantFrom(...texts), edits, (source, list) => {
      let text = source;
      let before = parse(text);
      for (const { at, gone, typed: words } of list) {
        const place = at % (text.length + 1);
        const edited = text.slice(0, place) + words + text.slice(place + gone);
        all++;
        const now = spliceParse(LangiumParser, before, edited);
        // Where it is refused the old tree must still be whole: it is edited again.
        if (now === undefined) continue;
        spliced++;
        expect(told(now)).toEqual(told(parse(edited)));
        before = now;
        text = edited;
      }
    }),
    { numRuns: Number(process.env['FETTLE_SPLICES'] ?? 60) },
  );
  // Were it hardly ever done, the comparison would say nothing.
  expect(spliced).toBeGreaterThan(all / 4);
});

test('pieces that did not change are taken over as they are', () => {
  const before = parse(twice);
  const kept = before.value.statements.filter(isStatement);
  const now = spliceParse(LangiumParser, before, twice.replace('front 6 high', 'front 16 high'));
  expect(now?.value.statements.map((each, at) => each === kept[at])).toEqual([true, false, true, true]);
});

test.each([
  ['a brace that opens', 'front 6 high', 'front 6 high {'],
  ['a remark that does not end', 'front 6 high', 'front 6 /* high'],
  ['the head of a piece', 'piece "Games', 'piece "Game'],
  ['what stands between pieces', '// the other one', '// the other, too'],
])('%s is read with all that stands around it', (_, words, others) => {
  expect(twice).toContain(words);
  expect(spliceParse(LangiumParser, parse(twice), twice.replace(words, others))).toBeUndefined();
});
