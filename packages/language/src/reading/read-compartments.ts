import {
  COMPARTMENT_DADO,
  COMPARTMENT_WALL,
  type CompartmentDesign,
  type CompartmentsDesign,
  type Figure,
  usual,
} from '@fettle/engine';
import { cannotBeBoth } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import * as vocabulary from '../schema/face.ts';
import { readContents } from './read-contents.ts';
import { readMaterial } from './read-material.ts';
import { optional } from './read-shop.ts';
import { bodyStatements, type ReadContext, Reader } from './reader.ts';

/** The compartments of a drawer box: so many alike, or each as it is listed. */

/** More in one drawer is a slip of the pen. */
const MOST_COMPARTMENTS = 100;

export function readCompartments(context: ReadContext, said: Statement): CompartmentsDesign | undefined {
  const reader = new Reader(said, vocabulary.drawerSpecs.compartments, context);
  const { unit } = context.units;
  const counted = (['<count> across', '<count> front to back'] as const).find((each) => reader.has(each));
  const count = counted && reader.count(counted);
  const way = counted === '<count> front to back' || reader.has('front to back') ? 'behind' : 'across';
  const listed = bodyStatements(said, 'compartment').map((each) => readOne(context, each, way));
  if (counted !== undefined && count !== undefined && listed.length > 0 && listed.length !== count) {
    const place = 'how many compartments this drawer has';
    context.findings.push(
      cannotBeBoth.at(
        reader.slotOrigin(counted) ?? reader.origin,
        { words: `${count}`, other: `the ${listed.length} that are listed`, place },
        {},
      ),
    );
  }
  const own = reader.has('<stock>') || reader.has('of <stock>') || reader.has('thick <length>');
  const material = own ? readMaterial(reader, 'compartments') : { thickness: usual(COMPARTMENT_WALL, unit) };
  const alike = Array.from({ length: Math.min(count ?? 0, MOST_COMPARTMENTS) }, () => ({ origin: reader.origin }));
  const each: readonly CompartmentDesign[] = listed.length > 0 ? listed : alike;
  if (material === undefined || each.length < 2) return undefined;
  return {
    origin: reader.origin,
    way,
    material,
    ...optional('height', reader.length('<length> high')),
    dado: reader.length('dadoes <length> deep') ?? usual(COMPARTMENT_DADO, unit),
    each,
  };
}

function readOne(context: ReadContext, statement: Statement, way: CompartmentsDesign['way']): CompartmentDesign {
  const reader = new Reader(statement, vocabulary.compartmentSpec, context);
  const sizes: Readonly<Record<CompartmentsDesign['way'], Figure | undefined>> = {
    across: reader.length('<length> wide'),
    behind: reader.length('<length> deep'),
  };
  return { origin: reader.origin, ...optional('size', sizes[way]), ...readContents(context, statement) };
}
