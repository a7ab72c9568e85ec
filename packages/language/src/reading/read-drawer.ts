import { assumed, type DrawerDesign, type Figure, Length } from '@fettle/engine';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import * as vocabulary from '../schema/face.ts';
import { readPanel } from './read-material.ts';
import { readSlide } from './read-shop.ts';
import { bodyStatements, headOrigin, onlyStatement, originOf, type ReadContext, Reader } from './reader.ts';

/** What a drawer box is made of and runs on, said for all drawers or for one. */

const drawerWords = new Set(Object.values(vocabulary.drawerSpecs).map((spec) => spec.word));
export function hasDrawerStatements(statement: Statement): boolean {
  return statement.statements.some((each) => drawerWords.has(specOf(each).spec.word));
}

export function readDrawer(context: ReadContext, statement: Statement): DrawerDesign {
  const { boxSides, boxBottom, corners, slides, boxSize, clear } = vocabulary.drawerSpecs;
  const only = (word: string) => onlyStatement(context, statement, word);
  const sides = only('sides');
  const bottom = only('bottom');
  const sidePanel = sides && readPanel(new Reader(sides, boxSides, context), 'drawer sides');
  const bottomPanel = bottom && readPanel(new Reader(bottom, boxBottom, context), 'drawer bottom');
  const cornerStatement = only('corners');
  const cornerReader = cornerStatement && new Reader(cornerStatement, corners, context);
  const joint =
    (['dovetail', 'box-joint', 'rabbet', 'butt'] as const).find((each) => cornerReader?.has(each)) ?? 'butt';
  const slideStatement = only('slides');
  const target = slideStatement && new Reader(slideStatement, slides, context).target('<slide>');
  if (target !== undefined) context.touched.add(target.statement);
  const entry = target && readSlide(target.statement, context.documents);
  const boxStatement = only('box');
  const box = boxStatement && new Reader(boxStatement, boxSize, context);
  const clearReaders = bodyStatements(statement, 'clear').map((each) => new Reader(each, clear, context));
  const clearance = (pattern: '<length> below' | '<length> above', fallback: Length, because: string): Figure =>
    clearReaders.map((each) => each.length(pattern)).find((each) => each !== undefined) ?? assumed(fallback, because);
  const boxWidth = box?.length('<length> wide');
  const boxHeight = box?.length('<length> high');
  const last = statement.statements.at(-1);
  return {
    origin: headOrigin(context, statement),
    ...(last === undefined ? {} : { lastStatement: originOf(context, last) }),
    ...(sidePanel === undefined ? {} : { sides: sidePanel }),
    ...(bottomPanel === undefined ? {} : { bottom: bottomPanel }),
    corners: joint,
    ...(entry === undefined ? {} : { slides: entry }),
    ...(target === undefined ? {} : { slidesOrigin: target.origin }),
    clearBelow: clearance('<length> below', Length.inches(1, 4), 'drawer boxes have about 1/4" free under them'),
    clearAbove: clearance('<length> above', Length.inches(1, 2), 'drawer boxes have about 1/2" free over them'),
    bottomGroove: assumed(Length.inches(1, 4), 'grooves for drawer bottoms are 1/4" deep'),
    bottomShy: assumed(Length.inches(1, 16), 'drawer bottoms are 1/16" short of their grooves'),
    ...(boxWidth === undefined ? {} : { boxWidth }),
    ...(boxHeight === undefined ? {} : { boxHeight }),
  };
}
