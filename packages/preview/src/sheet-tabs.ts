import type { PieceView, SheetView } from '@fettle/protocol';
import { build } from './build.ts';

/**
 * The tabs of a piece's sheets. Sheets among which one chooses have one tab together; what is chosen stands beside the
 * tabs, in a list of its own.
 */

/** The id of the tab that a sheet is under. */
export function tabOf(sheet: SheetView): string {
  return `tab-${choiceOf(sheet)?.of ?? sheet.id}`;
}

export function buildTabs(piece: PieceView, shown: SheetView | undefined): Node {
  const seen = new Set<string>();
  const tabs = piece.sheets.flatMap((sheet) => {
    const tab = tabOf(sheet);
    if (seen.has(tab)) return [];
    seen.add(tab);
    const isShown = shown !== undefined && tabOf(shown) === tab;
    return build(
      'button',
      {
        type: 'button',
        role: 'tab',
        id: tab,
        'data-sheet': isShown ? shown.id : sheet.id,
        'aria-controls': 'sheet',
        'aria-selected': String(isShown),
        tabindex: isShown ? 0 : -1,
      },
      choiceOf(sheet)?.tab ?? sheet.title,
    );
  });
  return build('div', { role: 'tablist', 'aria-label': 'Sheets' }, ...tabs);
}

/** What else the shown sheet could show; undefined where there is nothing to choose. */
export function buildSheetChoice(piece: PieceView, shown: SheetView | undefined): Node | undefined {
  const choice = shown === undefined ? undefined : choiceOf(shown);
  if (shown === undefined || choice === undefined) return undefined;
  const options = piece.sheets.filter((sheet) => choiceOf(sheet)?.of === choice.of);
  if (options.length < 2) return undefined;
  return build(
    'label',
    { class: 'piece' },
    `${choice.label} `,
    build(
      'select',
      { id: 'sheet-choice' },
      ...options.map((sheet) =>
        build(
          'option',
          { value: sheet.id, selected: sheet.id === shown.id ? '' : undefined },
          choiceOf(sheet)?.option ?? sheet.title,
        ),
      ),
    ),
  );
}

function choiceOf(sheet: SheetView) {
  return sheet.kind === 'table' ? undefined : sheet.choice;
}
