import { type Length, Length as Lengths } from '@fettle/engine';
import {
  emptyGroup,
  gradingWithoutEffect,
  limitWithoutEffect,
  type Mend,
  measuredFarFromPlanned,
  sizeAcross,
  sizeSaidInTwoWays,
} from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { expressionIn, type ReadPhrase, readParts } from './phrases.ts';
import { whereSaid, wordsOf } from './phrases-together.ts';
import { headOrigin, originOf, type ReadContext, readLength } from './reader.ts';
import { bracesWereGuessed } from './slip-findings.ts';

/** How the spaces of rows and stacks say their sizes: twice, across, with limits or gradings that change nothing. */

/** Beyond this a measured size is most often a tape read wrongly. Common practice, no source. */
const farOff = Lengths.inches(1, 4);

/** A brace that was left out stands right behind its statement. */
const justBehind = 2;

type Group = 'row' | 'stack' | 'face';

export function sizeFindings(context: ReadContext, statement: Statement): void {
  const { word } = specOf(statement).spec;
  if (word === 'row' || word === 'stack' || word === 'face') groupFindings(context, statement, word);
  const group = groupAround(statement);
  if (group === undefined) return;
  const said = new Map<string, ReadPhrase>();
  for (const read of readParts(statement, specOf(statement).spec).phrases) {
    if (!said.has(read.phrase.pattern)) said.set(read.phrase.pattern, read);
  }
  const [along, across] = group.kind === 'row' ? (['wide', 'high'] as const) : (['high', 'wide'] as const);
  const [followed, ...others] = asked(along).flatMap((pattern) => said.get(pattern) ?? []);
  if (followed !== undefined) {
    for (const other of others) twoWays(context, along, followed, other, others.length === 1);
    limits(context, said, followed);
  }
  for (const pattern of [
    `front <length> ${across}`,
    `opening <length> ${across}`,
    `measured front <length> ${across}`,
    `measured opening <length> ${across}`,
  ]) {
    const read = said.get(pattern);
    if (read !== undefined) sayAcross(context, read, group);
  }
  for (const basis of ['front', 'opening']) {
    const [planned, measured] = [
      said.get(`${basis} <length> ${along}`),
      said.get(`measured ${basis} <length> ${along}`),
    ];
    if (planned !== undefined && measured !== undefined) compareMeasured(context, planned, measured);
  }
}

/** The row, stack or face whose space this statement is; undefined for any other statement. */
export function groupAround(statement: Statement): { readonly kind: Group; readonly statement: Statement } | undefined {
  if (!isSpace(statement)) return undefined;
  const around = statement.$container;
  if (around.$type !== 'Statement') return undefined;
  const kind = specOf(around).spec.word;
  return kind === 'row' || kind === 'stack' || kind === 'face' ? { kind, statement: around } : undefined;
}

function isSpace(statement: Statement): boolean {
  return specOf(statement).spec.declares === 'cell';
}

/** Ways of saying a size, the one that is followed first. */
export function asked(along: 'wide' | 'high'): readonly string[] {
  return [
    `front <length> ${along}`,
    `opening <length> ${along}`,
    'share <number>',
    'same front as <cell>',
    'same opening as <cell>',
    'same as <cell>',
    'rest',
  ];
}

function twoWays(
  context: ReadContext,
  along: 'wide' | 'high',
  followed: ReadPhrase,
  other: ReadPhrase,
  only: boolean,
): void {
  const remove = (how: string, read: ReadPhrase): Mend => ({
    how,
    values: { words: wordsOf(read) },
    changes: [{ kind: 'remove', at: whereSaid(context, read) }],
  });
  context.findings.push(
    sizeSaidInTwoWays.at(
      whereSaid(context, other),
      { words: wordsOf(other), followed: wordsOf(followed), axis: along === 'wide' ? 'width' : 'height' },
      {
        related: [{ role: 'followed', values: {}, origin: whereSaid(context, followed) }],
        mends: [remove('remove', other), ...(only ? [remove('remove-other', followed)] : [])],
      },
    ),
  );
}

/** A limit that a fixed size breaks is found where sizes are worked out; here is one that it keeps. */
function limits(context: ReadContext, said: ReadonlyMap<string, ReadPhrase>, followed: ReadPhrase): void {
  if (!/^(front|opening) /.test(followed.phrase.pattern)) return;
  const size = lengthOf(context, followed);
  for (const [pattern, least] of [
    ['at least <length>', true],
    ['at most <length>', false],
  ] as const) {
    const read = said.get(pattern);
    const limit = read && lengthOf(context, read);
    if (read === undefined || size === undefined || limit === undefined) continue;
    // A size that was set to its limit stands there on purpose.
    if (least ? size.compare(limit) <= 0 : size.compare(limit) >= 0) continue;
    const words = wordsOf(read);
    const at = whereSaid(context, read);
    context.findings.push(
      limitWithoutEffect.at(
        at,
        { words, size: wordsOf(followed) },
        {
          related: [{ role: 'size', values: {}, origin: whereSaid(context, followed) }],
          mends: [{ how: 'remove', values: { words }, changes: [{ kind: 'remove', at }] }],
        },
      ),
    );
  }
}

export function sayAcross(
  context: ReadContext,
  read: Pick<ReadPhrase, 'parts'>,
  group: { readonly kind: Group; readonly statement: Statement },
): void {
  const words = wordsOf(read);
  const at = whereSaid(context, read);
  context.findings.push(
    sizeAcross.at(
      at,
      { words, group: group.kind },
      {
        related: [{ role: 'group', values: { group: group.kind }, origin: headOrigin(context, group.statement) }],
        mends: [{ how: 'remove', values: { words }, changes: [{ kind: 'remove', at }] }],
      },
    ),
  );
}

function compareMeasured(context: ReadContext, plannedRead: ReadPhrase, measuredRead: ReadPhrase): void {
  const [planned, measured] = [lengthOf(context, plannedRead), lengthOf(context, measuredRead)];
  if (planned === undefined || measured === undefined) return;
  const apart = measured.minus(planned);
  if (apart.abs().compare(farOff) <= 0) return;
  context.findings.push(
    measuredFarFromPlanned.at(
      whereSaid(context, measuredRead),
      { measured, planned, difference: apart.abs(), direction: apart.isNegative() ? 'smaller' : 'larger' },
      {
        related: [{ role: 'planned', values: { planned }, origin: whereSaid(context, plannedRead) }],
        mends: [
          ...planAsMeasured(context, plannedRead, measured),
          {
            how: 'measure-again',
            values: {},
            changes: [{ kind: 'remove', at: whereSaid(context, measuredRead) }],
          },
        ],
      },
    ),
  );
}

function planAsMeasured(context: ReadContext, planned: ReadPhrase, measured: Length): readonly Mend[] {
  const expression = expressionIn(planned);
  if (expression === undefined) return [];
  const change = { kind: 'set-length', at: originOf(context, expression), to: measured } as const;
  return [{ how: 'plan-it', values: { measured }, changes: [change] }];
}

/** Quietly: what cannot be read is said where the space is read. */
function lengthOf(context: ReadContext, read: ReadPhrase): Length | undefined {
  const expression = expressionIn(read);
  return expression && readLength({ ...context, findings: [] }, expression)?.length;
}

/** As its first, right behind the brace. */
function openSpaceIn(context: ReadContext, statement: Statement, group: Group): readonly Mend[] {
  const brace = statement.$cstNode?.text.indexOf('{', headLength(context, statement)) ?? -1;
  if (brace < 0) return [];
  const { unit, start } = originOf(context, statement);
  const after = { unit, start: start + brace, end: start + brace + 1 };
  return [{ how: 'open', values: { group }, changes: [{ kind: 'insert-words', after, words: 'open' }] }];
}

/** A brace may also stand in a name. */
function headLength(context: ReadContext, statement: Statement): number {
  const { start, end } = headOrigin(context, statement);
  return end - start;
}

function groupFindings(context: ReadContext, statement: Statement, group: Group): void {
  const spaces = statement.statements.filter(isSpace);
  if (spaces.length === 0) {
    const cst = statement.$cstNode;
    const guessed = cst !== undefined && bracesWereGuessed(context.unit.document, cst.offset, cst.end + justBehind);
    // A word that means nothing may have been meant for a space.
    if (!guessed && statement.statements.every((each) => specOf(each).exact)) {
      context.findings.push(
        emptyGroup.at(headOrigin(context, statement), { group }, { mends: openSpaceIn(context, statement, group) }),
      );
    }
    return;
  }
  if (group === 'face') return;
  const grading = readParts(statement, specOf(statement).spec).phrases.find((read) =>
    read.phrase.pattern.startsWith('graded by'),
  );
  if (grading === undefined) return;
  const ways = asked(group === 'row' ? 'wide' : 'high');
  const graded = spaces.filter(
    (each) => !readParts(each, specOf(each).spec).phrases.some((read) => ways.includes(read.phrase.pattern)),
  ).length;
  if (graded >= 2) return;
  const at = whereSaid(context, grading);
  context.findings.push(
    gradingWithoutEffect.at(
      at,
      { group, spaces: spaces.length, graded },
      { mends: [{ how: 'remove', values: { words: wordsOf(grading) }, changes: [{ kind: 'remove', at }] }] },
    ),
  );
}
