import type { PieceView, SheetView } from '@fettle/protocol';
import { build } from './build.ts';

/**
 * The tabs of a piece's sheets, in one row. Sheets among which one chooses have one tab together; what is chosen stands
 * below the tabs, in a list of its own. Where the row is longer than the panel is wide, a list of all stands beside it.
 */

/** The id of the tab that a sheet is under. */
export function tabOf(sheet: SheetView): string {
  return `tab-${choiceOf(sheet)?.of ?? sheet.id}`;
}

interface Tab {
  readonly id: string;
  readonly words: string;
  readonly group: string;
  readonly isShown: boolean;
  /** Where it leads. */
  readonly sheet: string;
}

function tabsOf(piece: PieceView, shown: SheetView | undefined): readonly Tab[] {
  const seen = new Set<string>();
  return piece.sheets.flatMap((sheet) => {
    const id = tabOf(sheet);
    if (seen.has(id)) return [];
    seen.add(id);
    const isShown = shown !== undefined && tabOf(shown) === id;
    const words = choiceOf(sheet)?.tab ?? sheet.title;
    return [{ id, words, group: sheet.group ?? '', isShown, sheet: isShown ? shown.id : sheet.id }];
  });
}

export function buildTabs(piece: PieceView, shown: SheetView | undefined): Node {
  const tabs = tabsOf(piece, shown);
  const faces = tabs.map(({ id, words, group, isShown, sheet }, at) =>
    build(
      'button',
      {
        type: 'button',
        role: 'tab',
        id,
        class: at > 0 && tabs[at - 1]?.group !== group ? 'first' : undefined,
        'data-sheet': sheet,
        'aria-controls': 'sheet',
        'aria-selected': String(isShown),
        tabindex: isShown ? 0 : -1,
      },
      words,
    ),
  );
  return build('div', { role: 'tablist', 'aria-label': 'Sheets' }, ...faces);
}

/** All sheets in one list, group by group; seen only where the tabs have not room enough. */
export function buildSheetList(piece: PieceView, shown: SheetView | undefined): Node {
  const tabs = tabsOf(piece, shown);
  const options = (group: string) =>
    tabs
      .filter((tab) => tab.group === group)
      .map(({ words, isShown, sheet }) => build('option', { value: sheet, selected: isShown ? '' : undefined }, words));
  const groups = [...new Set(tabs.map(({ group }) => group))].flatMap((group) =>
    group === '' ? options(group) : [build('optgroup', { label: group }, ...options(group))],
  );
  return build('select', { id: 'sheet-list', 'aria-label': 'All sheets', title: 'All sheets' }, ...groups);
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
