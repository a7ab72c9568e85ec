import { valueCircle } from '@fettle/findings';
import { AstUtils } from 'langium';
import type { Statement } from '../generated/ast.ts';
import { circleThrough } from '../names/circles-of-values.ts';
import { specOf } from '../names/declarations.ts';
import { headOrigin, type ReadContext } from './reader.ts';

/** Named values that lead back to themselves. A circle is told once, where its first value stands. */

export function circleFindings(context: ReadContext, statement: Statement): void {
  if (specOf(statement).spec.declares !== 'value' || statement.name === undefined) return;
  const circle = circleThrough(context.documents, statement);
  if (circle === undefined) return;
  const document = AstUtils.getDocument(statement);
  const own = circle.filter((each) => AstUtils.getDocument(each) === document);
  if (own.some((each) => offsetOf(each) < offsetOf(statement))) return;
  context.findings.push(
    valueCircle.at(
      headOrigin(context, statement),
      { names: circle.map((each) => each.name ?? '') },
      {
        related: own
          .filter((each) => each !== statement)
          .map((each) => ({ role: 'member', values: { name: each.name ?? '' }, origin: headOrigin(context, each) })),
      },
    ),
  );
}

function offsetOf(statement: Statement): number {
  return statement.$cstNode?.offset ?? 0;
}
