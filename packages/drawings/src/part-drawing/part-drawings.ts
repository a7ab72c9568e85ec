import type { Evaluation } from '@fettle/engine';
import { cleanName } from '../lettering.ts';
import { type LineRole, PEN_GROUPS } from '../line-types.ts';
import { lookedAt } from '../looked-at.ts';
import type { Box, Drawing } from '../primitives.ts';
import { INCH_SCALES, INCH_SHEETS, METRIC_SCALES, METRIC_SHEETS } from '../scale.ts';
import { extentOf } from '../shapes/part-cells.ts';
import {
  capital,
  commonDrawing,
  commonWords,
  type DrawingName,
  errorWords,
  messageSheet,
  overallWords,
  whyNotDrawn,
} from '../sheet-words.ts';
import { isInch, NEARLY, nearlyWords, unitWords } from '../shown-lengths.ts';
import { roomForView, type SheetWords, sheetFurniture } from '../title-block.ts';
import { type AlikeParts, alikeParts } from './alike-parts.ts';
import { cutWords, fixingWords, headWords, sizeWords } from './cut-words.ts';
import { partBlock } from './part-block.ts';

/**
 * Each part once, as it is laid on the bench, several to a sheet. Never fails: what cannot be drawn is said on the sheet.
 */

const COLUMNS = 3;
const ROWS = 2;
const PARTS_ON_A_SHEET = COLUMNS * ROWS;

const knownSheets = new WeakMap<Evaluation, readonly (readonly AlikeParts[])[]>();

/** The parts of each sheet, in the order of their marks; none while no part is known. Worked out once for an evaluation. */
export function partSheets(evaluation: Evaluation): readonly (readonly AlikeParts[])[] {
  const known = knownSheets.get(evaluation);
  if (known !== undefined) return known;
  const sheets = sheetsOf(evaluation);
  knownSheets.set(evaluation, sheets);
  return sheets;
}

function sheetsOf(evaluation: Evaluation): readonly (readonly AlikeParts[])[] {
  const groups = alikeParts(evaluation.parts.filter((part) => extentOf(part.blank) !== undefined));
  const sheets: AlikeParts[][] = [];
  for (let from = 0; from < groups.length; from += PARTS_ON_A_SHEET) {
    sheets.push(groups.slice(from, from + PARTS_ON_A_SHEET));
  }
  return sheets;
}

/** `number` counts from 1; a sheet that is not there is the first. */
export function partDrawings(evaluation: Evaluation, number = 1): Drawing {
  const inch = isInch(evaluation.design.units);
  const [small, large] = inch ? INCH_SHEETS : METRIC_SHEETS;
  if (small === undefined || large === undefined) throw new Error('two sheets are listed for either system of units');
  const sheets = partSheets(evaluation);
  const shown = sheets[number - 1] ?? sheets[0] ?? [];
  const of = sheets.length < 2 ? '' : ` ${sheets[number - 1] === undefined ? 1 : number} of ${sheets.length}`;
  const name: DrawingName = { id: 'parts', words: `Parts${of}`, description: described(evaluation, shown) };
  const lacking = whyNotDrawn(evaluation);
  if (lacking !== undefined) return messageSheet(evaluation, name, small, lacking);
  if (shown.length === 0) return messageSheet(evaluation, name, small, ['Nothing is drawn yet: no part is known.']);
  const scales = inch ? INCH_SCALES : METRIC_SCALES;
  const blocks = shown.map((alike, at) => partBlock(alike, evaluation, roomOf(roomForView(large, 2), at), scales));
  const roles = new Set(blocks.flatMap((block) => [...block.roles]));
  const leftOut = blocks.reduce((sum, block) => sum + block.leftOut, 0);
  const errors = errorWords(evaluation);
  const writesNearly = JSON.stringify(blocks.map(({ group }) => group)).includes(NEARLY);
  const words: SheetWords = {
    ...commonWords(evaluation, name),
    scale: 'as shown',
    overall: overallWords(evaluation),
    notes: [
      [
        `Finished sizes in ${unitWords(evaluation.design.units)}.`,
        ...(writesNearly
          ? [`${NEARLY} ${isInch(evaluation.design.units) ? 'nearest mark' : nearlyWords(evaluation.design.units)}.`]
          : []),
        ...(leftOut === 0 ? [] : [`No room for ${leftOut === 1 ? '1 figure' : `${leftOut} figures`}.`]),
      ].join(' '),
      signs(roles),
    ],
    warnings: errors === undefined ? [] : [`${capital(errors)}.`],
  };
  const [frame, ...rest] = sheetFurniture(large, words);
  const [, fine] = PEN_GROUPS;
  return {
    ...commonDrawing(evaluation, name, large),
    pens: fine ?? { wide: 0.25, narrow: 0.13 },
    ...lookedAt(blocks.map((block) => block.box)),
    content: [...(frame === undefined ? [] : [frame]), ...blocks.map(({ group }) => group), ...rest],
  };
}

function signs(roles: ReadonlySet<LineRole>): string {
  const told = [
    'small circle: all figures of a row are measured from here',
    ...(roles.has('hidden') ? ['dashed: hidden'] : []),
    ...(roles.has('grain') ? ['double arrows: direction of grain'] : []),
  ];
  return `${capital(told.join('; '))}.`;
}

const GUTTER = 6;

function roomOf(all: Box, at: number): Box {
  const [column, row] = [at % COLUMNS, Math.floor(at / COLUMNS)];
  const wide = (all.right - all.left - (COLUMNS - 1) * GUTTER) / COLUMNS;
  const high = (all.bottom - all.top - (ROWS - 1) * GUTTER) / ROWS;
  const left = all.left + column * (wide + GUTTER);
  const top = all.top + row * (high + GUTTER);
  return { left, top, right: left + wide, bottom: top + high };
}

function described(evaluation: Evaluation, shown: readonly AlikeParts[]): string {
  const piece = cleanName(evaluation.design.name);
  const parts = shown.map((alike) =>
    [
      headWords(alike),
      sizeWords(alike.frame, evaluation.design.units),
      ...cutWords(alike, evaluation),
      ...fixingWords(alike, evaluation),
    ].join(', '),
  );
  const sentences = [`Parts of ${piece === '' ? 'a piece without a name' : piece}`, ...parts];
  return `${sentences.join('. ')}.`;
}
