import type { LangiumServices } from 'langium/lsp';
import type { Text } from '../generated/ast.ts';
import { bodyOf, fileNoun, type Noun, type Phrase, type StatementSpec } from '../schema/index.ts';
import { moreSaid } from './more-said.ts';
import { saidInExamples } from './said-in-examples.ts';

/** The reference of the language in Markdown, made from its vocabulary: every statement with its phrases and an example. */

const slots: readonly (readonly [string, string])[] = [
  ['length', '`3/4`, `17-1/2"`, `5\'-2-3/8"`, `19mm`, `4.5cm`, a sum, or a named value in quotes'],
  ['number', 'any number, such as `2`, `1/2` or `1.5`'],
  ['count', 'a whole number'],
  ['path', 'a file or a folder in quotes, from the folder of this file: `"shop.fettle"`, `"shop/"`'],
  ['stock', 'the name of a `sheet`, a `board` or a `veneer`'],
  ['slide', 'the name of a `slide`'],
  ['hinge', 'the name of a `hinge`'],
  ['pull', 'the name of a `pull`'],
  ['cell', 'the name of a front, an opening, a row or a stack of the same piece'],
  ['flitch', 'the name of a `flitch`'],
  ['thing', 'the name of a `thing`'],
  ['pattern', 'the name of a `pattern`'],
  ['dowel', 'the name of a `dowel`'],
  ['screw', 'the name of a `screw`'],
  ['tenon', 'the name of a `tenon`'],
  ['parameter', 'the name of a value that the pattern `takes`'],
];

/** `examples` are whole texts of the language; each statement is shown as one of them says it. */
export function languageReference(services: LangiumServices, examples: readonly string[]): string {
  const texts = [...examples, moreSaid].map((text) => services.parser.LangiumParser.parse<Text>(text).value);
  const said = saidInExamples(texts);
  const described = new Map<StatementSpec, Noun>();
  const sections = nounsFrom(fileNoun).map((noun) => sectionOf(noun, said, described));
  return `${[opening(), ...sections].join('\n\n')}\n`;
}

function opening(): string {
  return [
    '# The language',
    '',
    'Generated from the vocabulary by `npm run reference`; do not edit.',
    '',
    'A statement is a word, perhaps a name in quotes, what it says, and perhaps braces with more statements in them. What it',
    'says is made of the phrases listed with it, in any order, with commas or without. Line breaks and order do not matter,',
    'except that a `stack` lists its spaces from top to bottom and a `row` from left to right, as one sees them. `//` begins',
    'a comment that ends with its line; `/*` and `*/` enclose one.',
    '',
    'What stands between angle brackets is to be filled in:',
    '',
    '| | |',
    '|---|---|',
    ...slots.map(([slot, words]) => `| \`<${slot}>\` | ${words} |`),
    '',
    'Phrases marked *later* are understood and kept; nothing is computed from them yet.',
  ].join('\n');
}

/** Braces in the order in which one meets them. */
function nounsFrom(first: Noun): readonly Noun[] {
  const found = new Map<string, Noun>();
  const waiting = [first];
  for (let noun = waiting.shift(); noun !== undefined; noun = waiting.shift()) {
    if (found.has(noun.id)) continue;
    found.set(noun.id, noun);
    for (const spec of noun.statements.values()) if (spec.body !== undefined) waiting.push(bodyOf(spec));
  }
  return [...found.values()];
}

function headingOf(noun: Noun): string {
  return noun.id === 'file' ? 'In a file' : `Inside ${noun.id}`;
}

function sectionOf(noun: Noun, said: ReadonlyMap<StatementSpec, string>, described: Map<StatementSpec, Noun>): string {
  const specs = [...noun.statements.values(), ...(noun.bare === undefined ? [] : [noun.bare])];
  const parts = specs.map((spec) => {
    const before = described.get(spec);
    if (before !== undefined) return `**${titleOf(spec)}**: as ${linkTo(before)}.`;
    described.set(spec, noun);
    return statementPart(spec, said.get(spec));
  });
  return [`## ${headingOf(noun)}`, noun.doc, ...parts].join('\n\n');
}

function titleOf(spec: StatementSpec): string {
  return spec.word === '' ? 'a statement without a word' : `\`${spec.word}\``;
}

function linkTo(noun: Noun): string {
  const heading = headingOf(noun);
  return `[${heading.charAt(0).toLowerCase()}${heading.slice(1)}](#${heading.toLowerCase().replaceAll(' ', '-')})`;
}

function statementPart(spec: StatementSpec, example: string | undefined): string {
  const name = spec.declares === undefined ? '' : ' "name"';
  const title = spec.word === '' ? 'a statement without a word' : `${spec.word}${name}`;
  return [
    `### ${title}`,
    `${spec.doc}${spec.checked ? '' : ' *later*'}`,
    ...(spec.phrases.length === 0 ? [] : [phraseTable(spec.phrases)]),
    ...(spec.body === undefined ? [] : [`Its braces: see ${linkTo(bodyOf(spec))}.`]),
    ...(example === undefined ? [] : [`\`\`\`fettle\n${example}\n\`\`\``]),
  ].join('\n\n');
}

function phraseTable(phrases: readonly Phrase[]): string {
  return [
    '| It may say | |',
    '|---|---|',
    ...phrases.map(({ pattern, doc, checked }) => `| \`${pattern}\` | ${doc}${checked ? '' : ' *later*'} |`),
  ].join('\n');
}
