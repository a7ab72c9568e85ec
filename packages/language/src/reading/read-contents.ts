import type { Figure, HeldDesign, ThingDesign } from '@fettle/engine';
import type { Statement } from '../generated/ast.ts';
import * as face from '../schema/face.ts';
import * as vocabulary from '../schema/piece.ts';
import { shopFigure } from './read-shop.ts';
import { bodyStatements, type ReadContext, Reader, unitsAt } from './reader.ts';
import { entryUnit } from './text-units.ts';

/** What an opening or a drawer must hold. A thing of which a size is missing is absent: nothing can be said of it. */
export function readContents(context: ReadContext, statement: Statement): { readonly holds?: readonly HeldDesign[] } {
  const holds = bodyStatements(statement, 'holds').flatMap((said): readonly HeldDesign[] => {
    const reader = new Reader(said, face.frontSpecs.holds, context);
    const target = reader.target('<count> <thing>', '<thing>');
    if (target === undefined) return [];
    context.touched.add(target.statement);
    const thing = readThing(context, target.statement, target.name);
    const written = reader.count('<count> <thing>');
    const countOrigin = reader.slotOrigin('<count> <thing>');
    if (thing === undefined || (countOrigin !== undefined && written === undefined)) return [];
    return [
      {
        origin: reader.origin,
        thing,
        count: written ?? 1,
        ...(countOrigin === undefined ? {} : { countOrigin }),
      },
    ];
  });
  return holds.length === 0 ? {} : { holds };
}

function readThing(context: ReadContext, statement: Statement, name: string): ThingDesign | undefined {
  // What is wrong in the thing itself is said where it stands.
  const quiet: ReadContext = {
    ...context,
    unit: entryUnit(statement),
    units: unitsAt(statement),
    findings: [],
  };
  const sizes = bodyStatements(statement, '').map((each) => new Reader(each, vocabulary.thingSize, quiet));
  const length = (pattern: '<length> wide' | '<length> deep' | '<length> high'): Figure | undefined => {
    const figure = sizes.map((each) => each.length(pattern)).find((each) => each !== undefined);
    return shopFigure(figure, statement);
  };
  const [width, depth, height] = [length('<length> wide'), length('<length> deep'), length('<length> high')];
  if (width === undefined || depth === undefined || height === undefined) return undefined;
  const weighing = bodyStatements(statement, 'weighs').map((each) => new Reader(each, vocabulary.weighs, quiet));
  const weight = (['lb', 'kg'] as const)
    .flatMap((unit) =>
      weighing.map((each) => ({ unit, amount: each.number(unit === 'lb' ? '<number> lb' : '<number> kg') })),
    )
    .find(({ amount }) => amount !== undefined);
  return {
    name,
    origin: new Reader(statement, vocabulary.thing, quiet).origin,
    width,
    depth,
    height,
    keepsUpright: bodyStatements(statement, 'this').some((each) =>
      new Reader(each, vocabulary.thisWayUp, quiet).has('way up'),
    ),
    ...(weight?.amount === undefined ? {} : { weighs: { amount: weight.amount, unit: weight.unit } }),
  };
}
