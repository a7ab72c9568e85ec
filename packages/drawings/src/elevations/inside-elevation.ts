import type { Evaluation, LaidCell, Part, PartRole } from '@fettle/engine';
import type { Chain, PlainChain } from '../dimension-chains.ts';
import { cleanName } from '../lettering.ts';
import { FRONTS } from '../parts-in-view.ts';
import type { Drawing } from '../primitives.ts';
import { listed } from '../sections/describe-section.ts';
import { chains, openingsChain, railsChain, wholeChain } from '../sections/section-chains.ts';
import { FROM_FRONT } from '../shapes/view-direction.ts';
import { realMm } from '../shown-lengths.ts';
import { onStandardSheet } from '../views/standard-sheet.ts';
import { viewedParts } from '../views/viewed-parts.ts';
import { elevationNotes } from './elevation-notes.ts';

const TAKEN_OUT: readonly PartRole[] = [...FRONTS, 'drawer-side', 'drawer-end', 'drawer-bottom', 'drawer-partition'];

/** The piece seen from the front without fronts and drawers. Never fails: what cannot be drawn is said on the sheet. */
export function insideElevation(evaluation: Evaluation): Drawing {
  const { carcase, face } = evaluation.layout;
  const parts = evaluation.parts.filter(({ role }) => !TAKEN_OUT.includes(role));
  const piece = cleanName(evaluation.design.name);
  const name = {
    id: 'inside',
    words: 'Inside elevation',
    description: [
      `Inside elevation of ${piece === '' ? 'a piece without a name' : piece}, without fronts and drawers`,
      parts.length === 0 ? 'Nothing is drawn yet' : `Drawn: ${listed(parts)}`,
    ]
      .map((sentence) => `${sentence}.`)
      .join(' '),
  };
  if (carcase === undefined) return onStandardSheet(evaluation, { name, notes: () => [] });
  const viewed = viewedParts({ parts, from: FROM_FRONT, showsHidden: () => true });
  const { x, y } = carcase.outside;
  const columns = face === undefined ? [] : stacksIn(face);
  return onStandardSheet(evaluation, {
    name,
    plan: {
      viewed,
      from: FROM_FRONT,
      low: { u: realMm(x.start.length), v: realMm(y.start.length) },
      high: { u: realMm(x.end.length), v: realMm(y.end.length) },
      seenAs: 'edge',
      chains: {
        left: chains('case', [
          railsChain(evaluation.parts, 'case/back'),
          openingsChain(evaluation, [], 'y'),
          wholeChain(evaluation, 'y'),
        ]),
        right: columnChains(evaluation, columns),
        above: [],
        below: [...rowChains(evaluation, face), ...chains('openings', [wholeChain(evaluation, 'x')])],
      },
      standsOnFloor: evaluation.design.carcase.hung === undefined,
      wordsOf,
      mayGoWithout: ({ part, seen }) => part.role === 'back' || seen.length === 0,
    },
    notes: (content) => elevationNotes(evaluation, content, ' Fronts and drawers are taken out.'),
  });
}

/** A column that stands alone needs no caption. */
function columnChains(evaluation: Evaluation, columns: readonly LaidCell[]): readonly Chain[] {
  const all = columns.map((stack) => openingsChain(evaluation, stack.cells, 'y', `-${stack.cell.id}`));
  const different = differing(all);
  const isAlone = different.filter(({ stretches }) => stretches.length > 0).length === 1;
  return chains('openings', different, isAlone ? [] : columns.map(captionOf));
}

/** Every row tells where its partitions stand; without a row, the width inside the case. */
function rowChains(evaluation: Evaluation, face: LaidCell | undefined): readonly Chain[] {
  const rows = face === undefined ? [] : rowsIn(face);
  if (rows.length === 0) {
    return chains('openings', [openingsChain(evaluation, face === undefined ? [] : [face], 'x')]);
  }
  const different = differing(rows.map((row) => openingsChain(evaluation, row.cells, 'x', `-${row.cell.id}`)));
  const isAlone = different.filter(({ stretches }) => stretches.length > 0).length === 1;
  return chains('openings', different, isAlone ? [] : rows.map(captionOf));
}

export function wordsOf({ mark, label }: Part): readonly string[] {
  return [`${cleanName(mark)}  ${cleanName(label)}`, cleanName(mark)];
}

function captionOf({ cell, cells }: LaidCell): string {
  const [first, last] = [cells[0]?.cell.name, cells[cells.length - 1]?.cell.name];
  return cleanName(cell.name ?? [first, last].filter((words) => words !== undefined).join(' to '));
}

/** Two stacks that are divided alike are told once. */
function differing(list: readonly PlainChain[]): readonly PlainChain[] {
  return list.map((chain, at) => {
    const isKnown = list.slice(0, at).some(
      (other) =>
        other.stretches.length === chain.stretches.length &&
        chain.stretches.every((stretch, index) => {
          const same = other.stretches[index];
          return same?.start.equals(stretch.start) === true && same.end.equals(stretch.end);
        }),
    );
    return isKnown ? { ...chain, stretches: [] } : chain;
  });
}

function stacksIn(laid: LaidCell): readonly LaidCell[] {
  const inner = laid.cells.flatMap(stacksIn);
  return laid.cell.kind === 'stack' ? [laid, ...inner] : inner;
}

function rowsIn(laid: LaidCell): readonly LaidCell[] {
  const inner = laid.cells.flatMap(rowsIn);
  return laid.cell.kind === 'row' ? [laid, ...inner] : inner;
}
