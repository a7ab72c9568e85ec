import { exactSource, Length } from '@fettle/engine';
import { frontsDoNotAddUp, type Measure } from '@fettle/findings';
import type { Statement } from '../../generated/ast.ts';
import { pieceUnitId } from '../../reading/text-units.ts';
import { type Asked, around, isCell, isHeld, type Refactoring, wordOf } from './refactoring.ts';

/**
 * Afterwards the sizes of a row or stack add up: what they were too much or too little is taken from or given to every
 * written one of them. The shares are the finding's own; here it is offered anywhere in the row or stack, and not where
 * the finding itself offers it.
 */
export function shareDifference(asked: Asked): Refactoring | undefined {
  const { piece } = asked;
  const { unit } = piece.evaluation.design.units;
  for (const finding of piece.evaluation.findings) {
    const { origin, mends } = finding;
    if (finding.code !== frontsDoNotAddUp.code || origin.unit !== pieceUnitId) continue;
    const start = piece.range.start + origin.start;
    const group = around(asked.statement, (each) => isGroup(each) && holds(each, start));
    const spread = mends.find(({ how }) => how === 'spread');
    if (group === undefined || group.statements.some(isHeld) || spread === undefined) continue;
    if (asked.statement !== group && holds(asked.statement, start)) continue;
    const edits = spread.changes.flatMap((change) => {
      const to = change.kind === 'set-length' ? Length.fromMeasure(change.to) : undefined;
      if (change.kind !== 'set-length' || change.at.unit !== pieceUnitId || to === undefined) return [];
      const { start: from, end } = change.at;
      return [{ start: piece.range.start + from, end: piece.range.start + end, words: exactSource(to, unit) }];
    });
    if (edits.length < spread.changes.length || edits.some((edit) => !holds(group, edit.start))) continue;
    const [difference, least, most] = ['difference', 'least', 'most'].map((value) =>
      piece.say.length(spread.values[value] as Measure),
    );
    const isLess = spread.values['direction'] === 'less';
    const by = least === most ? least : `${least} to ${most}`;
    const words = `Share the ${difference} ${isLess ? 'too much' : 'left over'} among the ${edits.length} sizes`;
    return { title: `${words}, ${by} ${isLess ? 'less' : 'more'} each`, kind: 'refactor.rewrite', edits };
  }
  return undefined;
}

function isGroup(statement: Statement): boolean {
  return ['row', 'stack'].includes(wordOf(statement)) ? isCell(statement) : wordOf(statement) === 'face';
}

function holds(statement: Statement, offset: number): boolean {
  const cst = statement.$cstNode;
  return cst !== undefined && cst.offset <= offset && offset < cst.end;
}
