import type { PullEntry, PullHeight, PullsDesign } from '@fettle/engine';
import type { LangiumDocuments } from 'langium';
import type { Statement } from '../generated/ast.ts';
import * as vocabulary from '../schema/hanging.ts';
import { entryReader, optional, priceOf, shopFigure } from './read-shop.ts';
import { onlyStatement, type ReadContext, Reader } from './reader.ts';

/** What fronts are opened by, as the maker wrote it. */

const entries = new WeakMap<Statement, PullEntry>();

export function readPull(statement: Statement, documents: LangiumDocuments): PullEntry {
  const known = entries.get(statement);
  if (known !== undefined) return known;
  const { reader } = entryReader(statement, vocabulary.pull, documents);
  const width = shopFigure(reader.length('<length> wide'), statement);
  const isRound = reader.has('round');
  const entry: PullEntry = {
    name: statement.name ?? '',
    origin: reader.origin,
    ...optional('width', width),
    ...optional('height', shopFigure(reader.length('<length> high'), statement) ?? (isRound ? width : undefined)),
    ...optional('betweenScrews', shopFigure(reader.length('<length> between screws'), statement)),
    ...optional('projection', shopFigure(reader.length('stands out <length>'), statement)),
    ...optional('screwLength', shopFigure(reader.length('screws <length> long'), statement)),
    ...optional('thread', shopFigure(reader.length('thread <length> deep'), statement)),
    ...optional('letIn', shopFigure(reader.length('let in <length> deep'), statement)),
    isRound,
    ...optional('madeOf', reader.target('of <stock>')?.name),
    ...optional('price', priceOf('each', reader.number('costs <number> each'))),
  };
  entries.set(statement, entry);
  return entry;
}

/** The pulls that a front, or the face, says; absent while their entry is not known. */
export function readPulls(context: ReadContext, around: Statement): { readonly pulls?: PullsDesign } {
  const found = onlyStatement(context, around, 'pulls');
  if (found === undefined) return {};
  const reader = new Reader(found, vocabulary.pulls, context);
  const target = reader.target('<pull>');
  if (target === undefined) return {};
  context.touched.add(target.statement);
  const stands = (['upright', 'level'] as const).find((each) => reader.has(each));
  return {
    pulls: {
      origin: reader.origin,
      entry: readPull(target.statement, context.documents),
      entryOrigin: target.origin,
      countEach: Math.min(Math.max(reader.count('<count> on each') ?? 1, 1), MOST_ON_EACH),
      ...optional('countOrigin', reader.slotOrigin('<count> on each')),
      ...optional('fromEdge', reader.length('<length> from closing edge', '<length> from ends')),
      ...optional('height', heightOf(reader)),
      ...optional('stands', stands),
      isShared: reader.has('across both doors'),
      ...optional('screwLength', reader.length('screws <length> long')),
    },
  };
}

/** More than this is a slip of the pen. */
const MOST_ON_EACH = 10;

const heights = {
  '<length> below top': 'from-top',
  '<length> above bottom': 'from-bottom',
  '<length> above floor': 'above-floor',
} as const;

function heightOf(reader: Reader<keyof typeof heights | 'centred'>): PullHeight | undefined {
  for (const pattern of Object.keys(heights) as (keyof typeof heights)[]) {
    const figure = reader.length(pattern);
    if (figure !== undefined) return { kind: heights[pattern], figure };
  }
  return reader.has('centred') ? { kind: 'centred' } : undefined;
}
