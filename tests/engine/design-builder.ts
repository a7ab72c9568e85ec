import {
  type Cell,
  type Divider,
  type DrawerDesign,
  type Figure,
  type FrontCell,
  type GroupCell,
  given,
  Length,
  type Material,
  type PanelDesign,
  type PieceDesign,
  Rational,
  type SizeAsked,
  type SlideEntry,
  type Stock,
} from '@fettle/engine';
import type { Origin } from '@fettle/findings';

/**
 * Small words for building designs in tests. Every place in the text is another one, as it would be in a real text, so
 * that a finding or a mend can be traced to the one figure it speaks of.
 */

let places = 0;

export function place(unit = 'piece'): Origin {
  places += 1;
  return { unit, start: places * 10, end: places * 10 + 8 };
}

/** '17-1/2' or '3/4' inches, exactly. */
export function inches(text: string): Length {
  const sign = text.startsWith('-') ? -1 : 1;
  const [, whole = '0', fraction] = /^-?(\d+(?!\/)\b)?-?(\d+\/\d+)?$/.exec(text) ?? [];
  const value = (Rational.parse(whole) ?? Rational.zero).plus(Rational.parse(fraction ?? '0') ?? Rational.zero);
  return Length.of(value.times(sign), 'in');
}

/** A length written in the text. */
export function written(text: string): Figure {
  return given(inches(text), place());
}

export function stock(name: string, form: Stock['form'], grain: Stock['grain'] = 'along-length'): Stock {
  return { name, origin: place('shop'), form, grain };
}

export function panel(thickness: string, from?: Stock): PanelDesign {
  return { origin: place(), thickness: written(thickness), ...(from === undefined ? {} : { stock: from }) };
}

export function material(thickness: string, from?: Stock): Material {
  return { thickness: written(thickness), ...(from === undefined ? {} : { stock: from }) };
}

export const rest: SizeAsked = { kind: 'rest' };

export function share(weight: number): SizeAsked {
  return { kind: 'share', weight: Rational.of(weight) };
}

export function front(size: string): Extract<SizeAsked, { kind: 'fixed' }> {
  return { kind: 'fixed', basis: 'front', figure: written(size) };
}

export function opening(size: string): Extract<SizeAsked, { kind: 'fixed' }> {
  return { kind: 'fixed', basis: 'opening', figure: written(size) };
}

export function sameAs(name: string, basis: 'front' | 'opening' = 'opening'): Extract<SizeAsked, { kind: 'same' }> {
  return { kind: 'same', basis, as: name, origin: place() };
}

export function drawer(name: string, along: SizeAsked, more: Partial<FrontCell> = {}): FrontCell {
  return {
    id: name,
    name,
    origin: place(),
    sizeOrigin: place(),
    along,
    kind: 'front',
    what: 'drawer',
    leaves: 1,
    ...more,
  };
}

export function door(name: string, along: SizeAsked, more: Partial<FrontCell> = {}): FrontCell {
  return {
    id: name,
    name,
    origin: place(),
    sizeOrigin: place(),
    along,
    kind: 'front',
    what: 'door',
    leaves: 1,
    ...more,
  };
}

export function open(name: string, along: SizeAsked, more: Partial<Extract<Cell, { kind: 'open' }>> = {}): Cell {
  return { id: name, name, origin: place(), sizeOrigin: place(), along, kind: 'open', ...more };
}

export function row(id: string, along: SizeAsked, cells: readonly Cell[], dividers: readonly Divider[]): GroupCell {
  return { id, origin: place(), sizeOrigin: place(), along, kind: 'row', cells, dividers };
}

export function stack(id: string, along: SizeAsked, cells: readonly Cell[], dividers: readonly Divider[]): GroupCell {
  return { id, origin: place(), sizeOrigin: place(), along, kind: 'stack', cells, dividers };
}

export function partition(id: string, thickness: string, more: Partial<Divider> = {}): Divider {
  return {
    id,
    origin: place(),
    form: 'partition',
    material: material(thickness),
    mode: 'shown',
    anchor: 'centre',
    ...more,
  };
}

export function webFrame(id: string, thickness: string, more: Partial<Divider> = {}): Divider {
  return {
    id,
    origin: place(),
    form: 'web-frame',
    material: material(thickness),
    mode: 'behind',
    anchor: 'centre',
    railWidth: written('2-1/2'),
    ...more,
  };
}

export function sideMount(name: string, length: string, more: Partial<SlideEntry> = {}): SlideEntry {
  return {
    name,
    origin: place('shop'),
    mounting: 'side',
    length: written(length),
    clearanceEachSide: written('1/2'),
    extraDepth: written('0'),
    ...more,
  };
}

export function drawers(more: Partial<DrawerDesign> = {}): DrawerDesign {
  return {
    origin: place(),
    sides: panel('1/2'),
    bottom: panel('1/4'),
    corners: 'dovetail',
    slidesOrigin: place(),
    clearBelow: written('1/4'),
    clearAbove: written('1/4'),
    bottomGroove: written('1/4'),
    bottomShy: written('1/16'),
    ...more,
  };
}

/** A case of 3/4 inch without plinth, whose top, bottom and sides leave exactly this face. */
export function caseWithFace(
  width: string,
  height: string,
  root: Cell,
  more: Partial<PieceDesign['face']> = {},
): PieceDesign {
  const thick = inches('3/4').times(2);
  return {
    name: 'test case',
    origin: place(),
    units: { unit: 'in', ruler: Rational.of(1, 32) },
    size: {
      origin: place(),
      width: given(inches(width).plus(thick), place()),
      height: given(inches(height).plus(thick), place()),
      depth: written('18'),
    },
    carcase: {
      origin: place(),
      top: {
        ...panel('3/4'),
        placement: 'between',
        overhangFront: written('0'),
        overhangEnds: written('0'),
        overhangBack: written('0'),
      },
      sides: panel('3/4'),
      bottom: { ...panel('3/4'), placement: 'between' },
      back: { ...panel('1/4'), fixing: 'groove', depth: written('1/4'), inset: written('1/2') },
    },
    face: {
      origin: place(),
      fit: { kind: 'inset', gap: written('3/32') },
      root,
      fronts: panel('3/4'),
      ...more,
    },
    unchecked: [],
  };
}
