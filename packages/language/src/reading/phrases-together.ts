import { cannotBeBoth, type Mend, saidTwice } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { members } from '../schema/piece.ts';
import { type ReadPhrase, readParts } from './phrases.ts';
import { originOf, type ReadContext } from './reader.ts';

/** What one statement says twice, and what it says that excludes something else it says. */

/** One part, one joint: whichever way each of them is said. */
const joinsThatExclude: readonly (readonly string[])[] = [
  [
    'in dado',
    'in dado <length> deep',
    'dovetailed',
    'dovetailed <length> deep',
    'by dowels',
    'by dowels <dowel>',
    'by screws',
    'by screws <screw>',
    'by loose tenons',
    'by loose tenons <tenon>',
    'by tenons',
    'by tenons <length> long',
    'mitred corners',
  ],
  [
    'dado',
    'dado <length> deep',
    'dowels',
    'dowels <dowel>',
    'screws',
    'screws <screw>',
    'loose tenons',
    'loose tenons <tenon>',
  ],
];

/** In each list, at most one can be. Sizes of a space are judged apart: they know what the row or stack decides. */
const excluding: readonly (readonly string[])[] = [
  ['over sides', 'between sides', 'under sides'],
  ['in groove <length> deep', 'in rabbet <length> deep', 'applied'],
  ['shown', 'behind fronts'],
  ['centred on gap', 'upper face on gap', 'lower face on gap', 'left face on gap', 'right face on gap'],
  ['web-frame', 'panel'],
  ['inset', 'overlay full', 'overlay half', 'overlay <length>', 'lipped <length>'],
  ['dovetail', 'box-joint', 'rabbet', 'lock-rabbet', 'butt'],
  ...joinsThatExclude,
  ['inches', 'mm', 'cm', 'feet'],
  ['<stock>', 'of <stock>'],
  ['side mount', 'under mount', 'centre mount'],
  ['in grooves', 'slid in', 'applied'],
  [
    '<length> above lower edge of front',
    '<length> above lower edge of opening',
    '<length> above lower edge of box',
    'screw line <length> above lower edge of front',
    'screw line <length> above lower edge of opening',
    'screw line <length> above lower edge of box',
  ],
  ['<count> adjustable', '<count> fixed', '<count> on cleats'],
  ['corners <length>', 'square corners'],
  ['underside <length> up', 'upper face <length> up'],
  ['hinged left', 'hinged right'],
  ['grain upright', 'grain across'],
  ['graded by <length>', 'graded by ratio <number>'],
  ['mitred', 'butted'],
  ['before veneer', 'after veneer'],
  ['at dividers', '<count> evenly spaced'],
  ['clearance <length>', 'float <length> each side'],
  ['flush', 'proud <length>'],
  ['behind', 'in front'],
  ['carries <number> lb', 'carries <number> kg'],
];

/** By pattern, the lists it stands in. */
const listsOf = new Map<string, (readonly string[])[]>();
for (const list of excluding) for (const pattern of list) listsOf.set(pattern, [...(listsOf.get(pattern) ?? []), list]);

function excludingAmong(said: ReadonlyMap<string, ReadPhrase>): Iterable<readonly string[]> {
  const counts = new Map<readonly string[], number>();
  for (const pattern of said.keys()) {
    for (const list of listsOf.get(pattern) ?? []) counts.set(list, (counts.get(list) ?? 0) + 1);
  }
  return excluding.filter((list) => (counts.get(list) ?? 0) > 1);
}

const severalNames: ReadonlySet<string> = new Set(members.phrases.map(({ pattern }) => pattern));

export function phraseFindings(context: ReadContext, statement: Statement): void {
  const { spec } = specOf(statement);
  const first = new Map<string, ReadPhrase>();
  for (const read of readParts(statement, spec).phrases) {
    const { pattern, checked } = read.phrase;
    // A piece gives its pattern several values, a sequence names several fronts: each by a name of its own.
    if (!checked || pattern.includes('<parameter>') || severalNames.has(pattern)) continue;
    if (first.has(pattern)) again(context, pattern, first.get(pattern) as ReadPhrase, read);
    else first.set(pattern, read);
  }
  // Nearly every statement says one thing of each kind: only lists of which two are said are looked through.
  for (const group of first.size < 2 ? [] : excludingAmong(first)) {
    const [one, ...others] = group.flatMap((pattern) => first.get(pattern) ?? []);
    for (const other of one === undefined ? [] : others) both(context, statement, one as ReadPhrase, other);
  }
}

function again(context: ReadContext, pattern: string, first: ReadPhrase, read: ReadPhrase): void {
  const words = pattern.replaceAll(/<\w+>/g, '…');
  const at = whereSaid(context, read);
  context.findings.push(
    saidTwice.at(
      at,
      { words },
      {
        related: [{ role: 'first', values: {}, origin: whereSaid(context, first) }],
        mends: [{ how: 'remove', safe: true, values: { words }, changes: [{ kind: 'remove', at }] }],
      },
    ),
  );
}

function both(context: ReadContext, statement: Statement, one: ReadPhrase, two: ReadPhrase): void {
  const [earlier, later] =
    (one.parts[0]?.$cstNode?.offset ?? 0) < (two.parts[0]?.$cstNode?.offset ?? 0) ? [one, two] : [two, one];
  const remove = (read: ReadPhrase): Mend => ({
    how: 'remove',
    values: { words: wordsOf(read) },
    changes: [{ kind: 'remove', at: whereSaid(context, read) }],
  });
  context.findings.push(
    cannotBeBoth.at(
      whereSaid(context, later),
      { words: wordsOf(later), other: wordsOf(earlier), place: `'${statement.head ?? specOf(statement).spec.word}'` },
      {
        related: [{ role: 'other', values: { words: wordsOf(earlier) }, origin: whereSaid(context, earlier) }],
        mends: [remove(later), remove(earlier)],
      },
    ),
  );
}

export function whereSaid(context: ReadContext, read: Pick<ReadPhrase, 'parts'>) {
  // A phrase has at least one part.
  return originOf(context, read.parts[0] as (typeof read.parts)[number], read.parts.at(-1));
}

export function wordsOf(read: Pick<ReadPhrase, 'parts'>): string {
  return read.parts.map((part) => part.$cstNode?.text ?? '').join(' ');
}
