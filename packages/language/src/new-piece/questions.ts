import { type Length, showLength } from '@fettle/engine';
import {
  type Content,
  type Household,
  isHousehold,
  isRuler,
  isStature,
  type NewPieceAnswers,
  type Ruler,
  readContents,
  readLength,
  type Stature,
  type System,
  statures,
  systemOf,
} from './answers.ts';
import { heightOf, largestPlace, leastPlace, overallDepth, overallWidth, type Place } from './place.ts';
import type { FirstDesign } from './write-piece.ts';

/** What is asked before a new piece is written, one thing after another. Knows nothing of how it is put on a screen. */

export interface Option {
  readonly id: string;
  readonly label: string;
  readonly detail: string;
}

export type Question =
  | {
      readonly kind: 'words';
      readonly id: keyof NewPieceAnswers;
      readonly prompt: string;
      readonly suggestion: string;
    }
  | {
      readonly kind: 'one' | 'several';
      readonly id: keyof NewPieceAnswers;
      readonly prompt: string;
      readonly options: readonly Option[];
      /** What stands chosen before one chooses. */
      readonly chosen: readonly string[];
    };

/** What is asked next, or everything there is to know. An answer that cannot be used counts as not given. */
export type Next =
  | { readonly kind: 'ask'; readonly question: Question; readonly step: number; readonly steps: number }
  | { readonly kind: 'known'; readonly design: FirstDesign };

const order = ['name', 'ruler', 'holds', 'width', 'height', 'depth', 'people', 'stature'] as const;

export function nextQuestion(answers: NewPieceAnswers, usualRuler: Ruler): Next {
  const ask = (question: Question): Next => ({
    kind: 'ask',
    question,
    step: order.indexOf(question.id) + 1,
    steps: order.length,
  });
  const { name, people, ruler, stature } = answers;
  if (problemWithName(name) !== undefined) return ask(nameQuestion);
  if (!isRuler(ruler)) return ask(rulerQuestion(usualRuler));
  const system = systemOf(ruler);
  const holds = readContents(answers.holds);
  if (holds === undefined) return ask(holdsQuestion);
  const sizes: Partial<Record<keyof Place, Length>> = {};
  for (const side of ['width', 'height', 'depth'] as const) {
    const length = readLength(answers[side], system.unit);
    const width = sizes.width ?? length;
    if (length === undefined || width === undefined || problemWithLength(system, holds, side, length, width)) {
      return ask(placeQuestion(system, side));
    }
    sizes[side] = length;
  }
  const place = sizes as Place;
  if (!isHousehold(people)) return ask(peopleQuestion);
  const of = { system, place, holds, people };
  const height = isStature(stature) ? heightOf(stature, of) : undefined;
  if (height === undefined) return ask(statureQuestion(of));
  const size: Place = {
    width: overallWidth(system, place.width, height),
    height,
    depth: overallDepth(system, place.depth, holds),
  };
  return { kind: 'known', design: { name: String(name).trim(), ruler, holds, people, place, size } };
}

/** Why this answer to the question that is asked next cannot be used; undefined when it can. */
export function problemWith(
  answers: NewPieceAnswers,
  id: string,
  answer: unknown,
  usualRuler: Ruler,
): string | undefined {
  if (id === 'name') return problemWithName(answer);
  if (id === 'width' || id === 'height' || id === 'depth') {
    const holds = readContents(answers.holds);
    if (!isRuler(answers.ruler) || holds === undefined) return undefined;
    const system = systemOf(answers.ruler);
    const length = readLength(answer, system.unit);
    if (length === undefined)
      return `This is no length: write it as ${system.unit === 'in' ? '48-1/2, 48 1/2" or 4\'-1/2"' : '1200, 1200mm or 120cm'}`;
    return problemWithLength(system, holds, id, length, readLength(answers.width, system.unit) ?? length);
  }
  if (id === 'holds') return readContents(answer) === undefined ? 'Choose at least one' : undefined;
  const next = nextQuestion({ ...answers, [id]: answer }, usualRuler);
  return next.kind === 'ask' && next.question.id === id ? 'Choose one of these' : undefined;
}

const mostInName = 60;

function problemWithName(name: unknown): string | undefined {
  if (typeof name !== 'string' || name.trim() === '')
    return 'Give it a name, to tell it from others in drawings and lists';
  if (name.trim().length > mostInName) return `Keep the name under ${mostInName + 1} characters`;
  if (/["“”„‟″]/u.test(name)) return 'A name stands between quotation marks, so it cannot hold one';
  if (/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u.test(name)) return 'The name holds a mark that is not seen';
  if (!/[\p{L}\p{N}]/u.test(name)) return 'The name needs a letter or a figure';
  return undefined;
}

const sideWords = { width: 'wide', height: 'high', depth: 'deep' } as const;

function problemWithLength(
  system: System,
  holds: readonly Content[],
  side: keyof Place,
  length: Length,
  width: Length,
): string | undefined {
  const show = (each: Length) => showLength(each, { unit: system.unit, ruler: system.grid.in(system.unit) });
  const least = leastPlace(system, holds, width)[side];
  if (length.compare(least) < 0) {
    return `What it must hold needs a place at least ${show(least)} ${sideWords[side]}; this is ${show(length)}`;
  }
  const most = largestPlace(system);
  if (length.compare(most) > 0) return `No room is ${show(length)} ${sideWords[side]}: is the unit right?`;
  return undefined;
}

const nameQuestion: Question = {
  kind: 'words',
  id: 'name',
  prompt: 'What is the piece called?',
  suggestion: 'Hall cupboard',
};

function rulerQuestion(usual: Ruler): Question {
  return {
    kind: 'one',
    id: 'ruler',
    prompt: 'What do you measure with?',
    options: [
      { id: 'inches-32', label: 'Inches, to 1/32"', detail: 'Bare numbers are inches; the finest mark is 1/32"' },
      { id: 'inches-64', label: 'Inches, to 1/64"', detail: 'Bare numbers are inches; the finest mark is 1/64"' },
      { id: 'inches-16', label: 'Inches, to 1/16"', detail: 'Bare numbers are inches; the finest mark is 1/16"' },
      { id: 'mm-1', label: 'Millimetres', detail: 'Bare numbers are millimetres; the finest mark is 1 mm' },
      {
        id: 'mm-half',
        label: 'Millimetres, to 0.5 mm',
        detail: 'Bare numbers are millimetres; the finest mark is half of one',
      },
    ],
    chosen: [usual],
  };
}

const holdsQuestion: Question = {
  kind: 'several',
  id: 'holds',
  prompt: 'What must it hold?',
  options: [
    { id: 'papers', label: 'Papers and small things', detail: 'Low drawers' },
    { id: 'clothes', label: 'Clothes, linen, blankets', detail: 'High drawers, the lowest the highest' },
    { id: 'boxes', label: 'Boxes, jars, dishes', detail: 'Shelves behind doors' },
    { id: 'books', label: 'Books, things to be seen', detail: 'Open shelves' },
  ],
  chosen: [],
};

function placeQuestion(system: System, side: keyof Place): Question {
  const inches = system.unit === 'in';
  const asked = {
    width: { prompt: 'How wide is the place where it stands?', suggestion: inches ? '48' : '1200' },
    height: {
      prompt: 'How high is that place, from the floor to the ceiling or to what hangs there?',
      suggestion: inches ? '96' : '2400',
    },
    depth: { prompt: 'How deep may it stand out from the wall?', suggestion: inches ? '20' : '500' },
  }[side];
  return {
    kind: 'words',
    id: side,
    ...asked,
    prompt: `${asked.prompt} Bare numbers are ${inches ? 'inches' : 'millimetres'}.`,
  };
}

const peopleQuestion: Question = {
  kind: 'one',
  id: 'people',
  prompt: 'Who lives with it?',
  options: [
    { id: 'adults', label: 'Grown-ups only', detail: 'Nobody pulls himself up on a drawer' },
    { id: 'children', label: 'Small children', detail: 'It must be fastened to the wall, and gets a back that can be' },
    { id: 'seated', label: 'Somebody who reaches it seated', detail: 'Nothing higher than 48 inches' },
  ],
  chosen: ['adults'],
};

const statureWords: Readonly<Record<Stature, readonly [label: string, detail: string]>> = {
  low: ['Low', 'to sit beside or to put a lamp on'],
  side: ['Table height', 'its top is a place to work or to serve from'],
  chest: ['Chest height', 'its top can still be looked at'],
  tall: ['Tall', 'as high as one reaches'],
  full: ['As high as the place allows', 'less what it takes to bring it in and stand it up'],
};

function statureQuestion(of: {
  readonly system: System;
  readonly place: Place;
  readonly holds: readonly Content[];
  readonly people: Household;
}): Question {
  const { system } = of;
  const options = statures.flatMap((id): Option[] => {
    const height = heightOf(id, of);
    const [label, detail] = statureWords[id];
    if (height === undefined) return [];
    return [
      {
        id,
        label,
        detail: `${showLength(height, { unit: system.unit, ruler: system.grid.in(system.unit) })} high, ${detail}`,
      },
    ];
  });
  const usual = options.find(({ id }) => id === 'side') ?? options[0];
  return {
    kind: 'one',
    id: 'stature',
    prompt: 'How high should it be?',
    options,
    chosen: usual === undefined ? [] : [usual.id],
  };
}
