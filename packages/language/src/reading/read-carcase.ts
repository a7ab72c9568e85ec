import {
  assumed,
  type CarcaseDesign,
  FRAME_MEMBER,
  Length,
  type LidDesign,
  type LidSupport,
  PLINTH_HEIGHT,
  STRETCHER_WIDTH,
  type TopFixing,
  usual,
} from '@fettle/engine';
import { cannotBeBoth, detailWithoutJoint, type Mend } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import * as vocabulary from '../schema/carcase.ts';
import { join } from '../schema/joints.ts';
import { readParts } from './phrases.ts';
import {
  freedomOf,
  readBackShy,
  readFeet,
  readFramed,
  readHung,
  readNailers,
  readToeSpace,
  withEdging,
} from './read-construction.ts';
import { readHinge } from './read-doors.ts';
import { joinOf, readJoinOf } from './read-joints.ts';
import { readPanel } from './read-material.ts';
import { optional, priceOf } from './read-shop.ts';
import { bodyStatements, headOrigin, onlyStatement, originOf, type ReadContext, Reader } from './reader.ts';

/** The carcase as the maker wrote it. A part without a thickness is absent and has its finding. */
export function readCarcase(context: ReadContext, statement: Statement): CarcaseDesign {
  const only = (word: string) => onlyStatement(context, statement, word);
  const present = <Key extends string, Part>(key: Key, part: Part | undefined) =>
    part === undefined ? {} : ({ [key]: part } as Record<Key, Part>);
  return {
    origin: headOrigin(context, statement),
    ...present('top', readTopOrLid(context, only('top'), only('lid'))),
    ...present('plinth', readPlinth(context, only('plinth'))),
    ...present('sides', readSides(context, only('sides'))),
    ...present('bottom', readBottom(context, only('bottom'))),
    ...present('stretchers', readStretchers(context, only('stretchers'))),
    ...present('back', readBack(context, only('back'))),
    ...present('frame', readFrame(context, only('frame'))),
    ...present('toeSpace', readToeSpace(context, only('toe-space'))),
    ...present('feet', readFeet(context, only('feet'))),
    ...present('hung', readHung(context, only('hung'))),
    ...present('nailers', readNailers(context, only('nailers'))),
    ...present('join', readJoin(context, only('join'))),
  };
}

/** Of the two only one can be. Where both are said the lid is worked out, so that its hinges and supports are judged. */
function readTopOrLid(
  context: ReadContext,
  top: Statement | undefined,
  lid: Statement | undefined,
): CarcaseDesign['top'] {
  const [asTop, asLid] = [readTop(context, top), readLid(context, lid)];
  if (top !== undefined && lid !== undefined) {
    const remove = (statement: Statement, words: string): Mend => ({
      how: 'remove',
      values: { words },
      changes: [{ kind: 'remove', at: originOf(context, statement) }],
    });
    const [earlier, later] =
      (top.$cstNode?.offset ?? 0) < (lid.$cstNode?.offset ?? 0) ? (['top', 'lid'] as const) : (['lid', 'top'] as const);
    const [first, second] = earlier === 'top' ? [top, lid] : [lid, top];
    context.findings.push(
      cannotBeBoth.at(
        headOrigin(context, second),
        { words: later, other: earlier, place: "a 'case'" },
        {
          related: [{ role: 'other', values: { words: earlier }, origin: headOrigin(context, first) }],
          mends: [remove(second, later), remove(first, earlier)],
        },
      ),
    );
  }
  return asLid ?? asTop;
}

function readTop(context: ReadContext, statement: Statement | undefined): CarcaseDesign['top'] {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.top, context);
  const panel = readPanel(reader, 'top');
  if (panel === undefined) return undefined;
  const overhangs = bodyStatements(statement, 'overhang').map((each) => new Reader(each, vocabulary.overhang, context));
  const overhang = (pattern: '<length> at front' | '<length> at ends' | '<length> at back') =>
    overhangs.map((each) => each.length(pattern)).find((each) => each !== undefined) ??
    assumed(Length.zero, 'no overhang is said');
  const fixing = readFixing(context, statement);
  return {
    ...withEdging(context, statement, panel),
    placement: reader.has('between sides') ? 'between' : 'over',
    ...(fixing === undefined ? {} : { fixing }),
    ...joinOf(reader),
    overhangFront: overhang('<length> at front'),
    overhangEnds: overhang('<length> at ends'),
    overhangBack: overhang('<length> at back'),
  };
}

/** A lid lies where a top would, and turns on its back edge. */
function readLid(context: ReadContext, statement: Statement | undefined): CarcaseDesign['top'] {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.lid, context);
  const panel = readPanel(reader, 'lid');
  if (panel === undefined) return undefined;
  const overhangs = bodyStatements(statement, 'overhang').map((each) => new Reader(each, vocabulary.overhang, context));
  const overhang = (pattern: '<length> at front' | '<length> at ends' | '<length> at back') =>
    overhangs.map((each) => each.length(pattern)).find((each) => each !== undefined) ??
    assumed(Length.zero, 'no overhang is said');
  const hinges = onlyStatement(context, statement, 'hinges');
  const hung = hinges && new Reader(hinges, vocabulary.lidHinges, context);
  const target = hung?.target('<hinge>');
  if (target !== undefined) context.touched.add(target.statement);
  const lid: LidDesign = {
    origin: reader.origin,
    ...(target === undefined
      ? {}
      : { hinges: readHinge(target.statement, context.documents), hingesOrigin: target.origin }),
    isHung: hinges !== undefined,
    ...optional('count', hung?.count('<count> of them')),
    ...optional('opens', reader.number('opens <number> degrees')),
    fromWall: reader.lengthOr(Length.zero, 'the piece stands against the wall', '<length> from wall'),
    ...optional('support', readSupport(context, onlyStatement(context, statement, 'support'))),
  };
  return {
    ...withEdging(context, statement, panel),
    placement: 'over',
    lid,
    overhangFront: overhang('<length> at front'),
    overhangEnds: overhang('<length> at ends'),
    overhangBack: overhang('<length> at back'),
  };
}

function readSupport(context: ReadContext, statement: Statement | undefined): LidSupport | undefined {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.support, context);
  const unit = (['inch-pounds', 'newton-metres'] as const).find((each) => reader.has(`carries <number> ${each}`));
  const moment = unit && reader.number(`carries <number> ${unit}`);
  return {
    origin: reader.origin,
    ...optional(
      'how',
      (['torsion', 'stay'] as const).find((each) => reader.has(each)),
    ),
    hasLostWords: readParts(statement, specOf(statement).spec).unread.length > 0,
    count: reader.count('<count> of them') ?? 1,
    ...optional('countOrigin', reader.slotOrigin('<count> of them')),
    ...(unit === undefined || moment === undefined
      ? {}
      : { carries: { moment, unit, ...optional('origin', reader.slotOrigin(`carries <number> ${unit}`)) } }),
    holes: bodyStatements(statement, 'hole').map((each) => {
      const hole = new Reader(each, vocabulary.supportHole, context);
      return {
        ...optional('forward', hole.length('<length> forward')),
        ...optional('down', hole.length('<length> down')),
      };
    }),
    ...optional('screws', readSupportScrews(context, onlyStatement(context, statement, 'screws'))),
    ...optional('fromSides', reader.length('<length> from sides')),
    ...optional('price', priceOf('each', reader.number('costs <number> each'))),
  };
}

function readSupportScrews(context: ReadContext, statement: Statement | undefined): LidSupport['screws'] {
  const reader = statement && new Reader(statement, vocabulary.supportScrews, context);
  const length = reader?.length('<length> long');
  return length === undefined ? undefined : { length, ...optional('diameter', reader?.length('<length> thick')) };
}

/** Slots come first: what is also glued is said elsewhere. */
function readFixing(context: ReadContext, statement: Statement): TopFixing | undefined {
  const glued = onlyStatement(context, statement, 'glued');
  if (glued !== undefined) return { kind: 'glued', origin: originOf(context, glued) };
  const slotted = onlyStatement(context, statement, 'slotted');
  if (slotted === undefined) return undefined;
  const where = new Reader(slotted, vocabulary.slotted, context).has('in front') ? 'in front' : 'behind';
  return { kind: 'slotted', where, origin: originOf(context, slotted) };
}

function readPlinth(context: ReadContext, statement: Statement | undefined): CarcaseDesign['plinth'] {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.plinth, context);
  const panel = readPanel(reader, 'plinth');
  const height = reader.length('<length> high') ?? usual(PLINTH_HEIGHT, context.units.unit);
  if (panel === undefined) return undefined;
  return {
    ...panel,
    ...joinOf(reader),
    height,
    setBack: reader.lengthOr(Length.zero, 'no set-back is said', 'set back <length>'),
  };
}

function readSides(context: ReadContext, statement: Statement | undefined): CarcaseDesign['sides'] {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.sides, context);
  const panel = readPanel(reader, 'sides');
  if (panel === undefined) return undefined;
  const framed = readFramed(reader, panel);
  return { ...withEdging(context, statement, panel), ...(framed === undefined ? {} : { framed }) };
}

function readBottom(context: ReadContext, statement: Statement | undefined): CarcaseDesign['bottom'] {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.bottom, context);
  const panel = readPanel(reader, 'bottom');
  if (panel === undefined) return undefined;
  return {
    ...withEdging(context, statement, panel),
    ...joinOf(reader),
    placement: reader.has('under sides') ? 'under' : 'between',
  };
}

function readStretchers(context: ReadContext, statement: Statement | undefined): CarcaseDesign['stretchers'] {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.stretchers, context);
  const panel = readPanel(reader, 'stretchers');
  if (panel === undefined) return undefined;
  return {
    ...panel,
    ...joinOf(reader),
    width: reader.length('<length> wide') ?? usual(STRETCHER_WIDTH, context.units.unit),
  };
}

function readBack(context: ReadContext, statement: Statement | undefined): CarcaseDesign['back'] {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.back, context);
  const panel = readPanel(reader, 'back');
  if (panel === undefined) return undefined;
  const fixing = reader.has('in groove <length> deep')
    ? 'groove'
    : reader.has('in rabbet <length> deep')
      ? 'rabbet'
      : 'applied';
  if (fixing !== 'applied') reportScrewsOfBack(reader);
  const framed = readFramed(reader, panel);
  // An applied back lies on the case and has nothing to go into; a frame around panels does not move.
  const shy =
    fixing === 'applied' ? undefined : readBackShy(reader, framed === undefined ? panel.stock?.form : 'sheet');
  return {
    ...panel,
    ...(framed === undefined ? {} : { framed }),
    ...(shy === undefined ? {} : { shy }),
    ...(fixing === 'applied' ? joinOf(reader) : {}),
    ...optional('appliedOrigin', reader.originOf('applied')),
    ...freedomOf(reader),
    fixing,
    depth: reader.lengthOr(
      Length.zero,
      'the back lies on the case',
      'in groove <length> deep',
      'in rabbet <length> deep',
    ),
    inset: reader.lengthOr(Length.zero, 'the back is flush with the back edge', '<length> in from back edge'),
  };
}

/** A back in a groove or a rabbet is not screwed: what is said of its screws would come to nothing. */
function reportScrewsOfBack(reader: Reader<'by screws' | 'by screws <screw>'>): void {
  const at = reader.originOf('by screws <screw>') ?? reader.originOf('by screws');
  if (at === undefined) return;
  reader.context.findings.push(
    detailWithoutJoint.at(
      at,
      { words: "'by screws'", of: 'an applied back' },
      { mends: [{ how: 'remove', values: {}, changes: [{ kind: 'remove', at }] }] },
    ),
  );
}

function readFrame(context: ReadContext, statement: Statement | undefined): CarcaseDesign['frame'] {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.frame, context);
  const panel = readPanel(reader, 'frame');
  const proud = reader.length('proud <length>');
  const { frameStiles, frameTopRail, frameBottomRail } = vocabulary;
  const wide = (spec: typeof frameStiles | typeof frameTopRail | typeof frameBottomRail) => {
    const said = onlyStatement(context, statement, spec.word);
    const width = said && new Reader(said, spec, context).length('<length> wide');
    return width ?? usual(FRAME_MEMBER, context.units.unit);
  };
  const [stiles, topRail, bottomRail] = [wide(frameStiles), wide(frameTopRail), wide(frameBottomRail)];
  return panel === undefined
    ? undefined
    : { ...panel, ...joinOf(reader), stiles, topRail, bottomRail, ...(proud === undefined ? {} : { proud }) };
}

function readJoin(context: ReadContext, statement: Statement | undefined): CarcaseDesign['join'] {
  return statement === undefined ? undefined : readJoinOf(new Reader(statement, join, context));
}
