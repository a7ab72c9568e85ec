import {
  DOWEL_DIAMETER,
  DOWEL_LENGTH,
  type DowelEntry,
  type JoinDesign,
  LOOSE_TENON_LENGTH,
  LOOSE_TENON_THICKNESS,
  LOOSE_TENON_WIDTH,
  type LooseTenonEntry,
  SCREW_CLEARANCE,
  SCREW_LENGTH,
  SCREW_PILOT,
  type ScrewEntry,
  usual,
} from '@fettle/engine';
import { detailWithoutJoint } from '@fettle/findings';
import type { LangiumDocuments } from 'langium';
import type { Statement } from '../generated/ast.ts';
import * as joints from '../schema/joints.ts';
import { entryReader, optional, priceOf, shopFigure } from './read-shop.ts';
import type { Reader } from './reader.ts';

/** How parts are joined, as the case says it for all of its panels or a statement for its own part. */

type EndPattern = keyof typeof joints.dividerJoints;
type CornerPattern = keyof typeof joints.cornerJoints;
type JoinPattern = NonNullable<(typeof joints.join)['patterns']>;
type AnyPattern = EndPattern | CornerPattern | JoinPattern;

/** Undefined where nothing is said. Of two joints that are said the first here counts; that both cannot be has its finding. */
export function readJoinOf(said: Reader<never>): JoinDesign | undefined {
  const reader = said as Reader<AnyPattern>;
  const join =
    readDado(reader) ?? readDovetailed(reader) ?? readFastened(reader) ?? readTenoned(reader) ?? readMitre(reader);
  reportDetails(reader, join);
  return join;
}

const details: readonly (readonly [AnyPattern, of: string, kinds: readonly JoinDesign['kind'][]])[] = [
  ['stopped <length> from front', 'a dado', ['dado']],
  ['tongue <length> thick', 'a dado', ['dado']],
  ['first <length> in', 'fasteners', ['dowel', 'butt', 'loose-tenon']],
  ['<length> apart', 'fasteners', ['dowel', 'butt', 'loose-tenon']],
  ['tenons <length> thick', 'tenons', ['mortise-and-tenon']],
];

/** Nothing is dropped in silence: what tells of another joint than the one that is asked for says so. */
function reportDetails(reader: Reader<AnyPattern>, join: JoinDesign | undefined): void {
  for (const [pattern, of, kinds] of details) {
    const at = reader.originOf(pattern);
    if (at === undefined || (join !== undefined && kinds.includes(join.kind))) continue;
    const words = pattern.replace(/ ?<length> ?/, ' … ').trim();
    reader.context.findings.push(
      detailWithoutJoint.at(
        at,
        { words: `'${words}'`, of },
        { mends: [{ how: 'remove', values: {}, changes: [{ kind: 'remove', at }] }] },
      ),
    );
  }
}

/** The same, as part of a design. */
export function joinOf(reader: Reader<never>): { readonly join?: JoinDesign } {
  const join = readJoinOf(reader);
  return join === undefined ? {} : { join };
}

function readDado(reader: Reader<AnyPattern>): JoinDesign | undefined {
  const depth = reader.length('in dado <length> deep', 'dado <length> deep');
  const stopped = reader.length('stopped <length> from front');
  const tongue = reader.length('tongue <length> thick');
  const origin = firstOf(reader, 'in dado <length> deep', 'dado <length> deep', 'in dado', 'dado');
  if (origin === undefined) return undefined;
  return {
    kind: 'dado',
    origin,
    ...optional('depth', depth),
    ...optional('stopped', stopped),
    ...optional('tongue', tongue),
  };
}

function readDovetailed(reader: Reader<AnyPattern>): JoinDesign | undefined {
  const depth = reader.length('dovetailed <length> deep');
  const origin = firstOf(reader, 'dovetailed <length> deep', 'dovetailed');
  return origin === undefined ? undefined : { kind: 'sliding-dovetail', origin, ...optional('depth', depth) };
}

function readFastened(reader: Reader<AnyPattern>): JoinDesign | undefined {
  const row = {
    ...optional('first', reader.length('first <length> in')),
    ...optional('apart', reader.length('<length> apart')),
  };
  const dowels = firstOf(reader, 'by dowels <dowel>', 'dowels <dowel>', 'by dowels', 'dowels');
  if (dowels !== undefined) {
    return {
      kind: 'dowel',
      origin: dowels,
      ...row,
      ...optional('dowel', entryOf(reader, readDowel, 'by dowels <dowel>', 'dowels <dowel>')),
    };
  }
  const screws = firstOf(reader, 'by screws <screw>', 'screws <screw>', 'by screws', 'screws');
  if (screws !== undefined) {
    const named = entryOf(reader, readScrew, 'by screws <screw>', 'screws <screw>');
    return { kind: 'butt', origin: screws, ...row, screw: named ?? usualScrew(reader, screws) };
  }
  const tenons = firstOf(reader, 'by loose tenons <tenon>', 'loose tenons <tenon>', 'by loose tenons', 'loose tenons');
  if (tenons === undefined) return undefined;
  const tenon = entryOf(reader, readLooseTenon, 'by loose tenons <tenon>', 'loose tenons <tenon>');
  return { kind: 'loose-tenon', origin: tenons, ...row, ...optional('tenon', tenon) };
}

function readTenoned(reader: Reader<AnyPattern>): JoinDesign | undefined {
  const origin = firstOf(reader, 'by tenons <length> long', 'by tenons');
  if (origin === undefined) return undefined;
  return {
    kind: 'mortise-and-tenon',
    origin,
    ...optional('length', reader.length('by tenons <length> long')),
    ...optional('thickness', reader.length('tenons <length> thick')),
  };
}

function readMitre(reader: Reader<AnyPattern>): JoinDesign | undefined {
  const origin = reader.originOf('mitred corners');
  return origin === undefined ? undefined : { kind: 'mitre', origin };
}

function firstOf(reader: Reader<AnyPattern>, ...patterns: AnyPattern[]) {
  for (const pattern of patterns) {
    const origin = reader.originOf(pattern);
    if (origin !== undefined) return origin;
  }
  return undefined;
}

function entryOf<Entry>(
  reader: Reader<AnyPattern>,
  read: (statement: Statement, documents: LangiumDocuments) => Entry,
  ...patterns: AnyPattern[]
): Entry | undefined {
  const target = reader.target(...patterns);
  if (target === undefined) return undefined;
  reader.context.touched.add(target.statement);
  return read(target.statement, reader.context.documents);
}

function usualScrew(reader: Reader<AnyPattern>, origin: ScrewEntry['origin']): ScrewEntry {
  const { unit } = reader.context.units;
  return {
    name: '',
    origin,
    length: usual(SCREW_LENGTH, unit),
    pilot: usual(SCREW_PILOT, unit),
    clearance: usual(SCREW_CLEARANCE, unit),
  };
}

export function readDowel(statement: Statement, documents: LangiumDocuments): DowelEntry {
  const { reader, unit } = entryReader(statement, joints.dowel, documents);
  return {
    name: statement.name ?? '',
    origin: reader.origin,
    diameter: shopFigure(reader.length('<length> thick'), statement) ?? usual(DOWEL_DIAMETER, unit),
    length: shopFigure(reader.length('<length> long'), statement) ?? usual(DOWEL_LENGTH, unit),
    ...optional('price', priceOf('each', reader.number('costs <number> each'))),
  };
}

export function readScrew(statement: Statement, documents: LangiumDocuments): ScrewEntry {
  const { reader, unit } = entryReader(statement, joints.screw, documents);
  return {
    name: statement.name ?? '',
    origin: reader.origin,
    length: shopFigure(reader.length('<length> long'), statement) ?? usual(SCREW_LENGTH, unit),
    pilot: shopFigure(reader.length('pilot <length>'), statement) ?? usual(SCREW_PILOT, unit),
    clearance: shopFigure(reader.length('clearance <length>'), statement) ?? usual(SCREW_CLEARANCE, unit),
    ...optional('price', priceOf('each', reader.number('costs <number> each'))),
  };
}

export function readLooseTenon(statement: Statement, documents: LangiumDocuments): LooseTenonEntry {
  const { reader, unit } = entryReader(statement, joints.tenon, documents);
  return {
    name: statement.name ?? '',
    origin: reader.origin,
    thickness: shopFigure(reader.length('<length> thick'), statement) ?? usual(LOOSE_TENON_THICKNESS, unit),
    width: shopFigure(reader.length('<length> wide'), statement) ?? usual(LOOSE_TENON_WIDTH, unit),
    length: shopFigure(reader.length('<length> long'), statement) ?? usual(LOOSE_TENON_LENGTH, unit),
    ...optional('price', priceOf('each', reader.number('costs <number> each'))),
  };
}
