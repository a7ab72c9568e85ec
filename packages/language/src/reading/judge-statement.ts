import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { entryInOtherUnit } from './entries-in-other-unit.ts';
import { machineFindings } from './machines-as-written.ts';
import { nameFindings } from './names-as-written.ts';
import { notationFindings } from './notation.ts';
import { phraseFindings } from './phrases-together.ts';
import { priceFindings } from './prices-as-written.ts';
import type { ReadContext } from './reader.ts';
import { rulerFindings } from './rulers-and-units.ts';
import { sizeFindings } from './sizes-as-said.ts';
import { stockFindings } from './stock-as-written.ts';
import { circleFindings } from './value-circles.ts';

/** All that the words of one statement show without anything being worked out from them. Its body is not looked into. */
export function judgeStatement(context: ReadContext, statement: Statement): void {
  // Whether the name of a piece is taken depends on what stands around the piece: it is judged with the file.
  if (specOf(statement).spec.declares !== 'piece') nameFindings(context, statement);
  notationFindings(context, statement);
  phraseFindings(context, statement);
  sizeFindings(context, statement);
  rulerFindings(context, statement);
  entryInOtherUnit(context, statement);
  priceFindings(context, statement);
  stockFindings(context, statement);
  machineFindings(context, statement);
  circleFindings(context, statement);
}
