import type { EvaluatedPiece } from '@fettle/language';
import type { SheetView } from '@fettle/protocol';
import type { SheetContent, SheetMaker } from './sheet-maker.ts';

/** How the sheets of a maker are named, listed and found again. An id is the maker's, or with a choice that and an option. */

type LaterSheet = Extract<SheetView, { kind: 'later' }>;

/** What the piece has of a maker's sheets, none of them drawn yet. May throw as the maker may. */
export function sheetsToCome(maker: SheetMaker, piece: EvaluatedPiece): readonly LaterSheet[] {
  const { id, title, shows, choice } = maker;
  const group = maker.group === undefined ? {} : { group: maker.group };
  if (!maker.suits(piece)) return [];
  const options = choice?.options(piece) ?? [];
  if (choice === undefined || options.length === 0) return [{ kind: 'later', id, title, shows, ...group }];
  return options.map((option) => ({
    kind: 'later',
    id: `${id}:${option.id}`,
    title: `${title}, ${option.words}`,
    shows,
    ...group,
    choice: { of: id, tab: title, label: choice.label, option: option.words },
  }));
}

export interface FoundSheet {
  readonly maker: SheetMaker;
  readonly option?: string;
}

/** The maker of a sheet and what was chosen; an id without an option is its first. */
export function findSheet(makers: readonly SheetMaker[], id: string): FoundSheet | undefined {
  const colon = id.indexOf(':');
  const own = colon < 0 ? id : id.slice(0, colon);
  const maker = makers.find((each) => each.id === own);
  if (maker === undefined) return undefined;
  return colon < 0 ? { maker } : { maker, option: id.slice(colon + 1) };
}

/** The sheet that was to come, with its content. */
export function filledSheet(later: LaterSheet, content: SheetContent): SheetView {
  const { id, title, choice, group } = later;
  const own = group === undefined ? { id } : { id, group };
  if (content.kind === 'table') return { ...content, ...own };
  return choice === undefined ? { ...content, ...own } : { ...content, ...own, title, choice };
}
