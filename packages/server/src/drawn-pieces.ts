import { materialWords } from '@fettle/drawings';
import { type BuyingPlan, type Evaluation, explain, isTogether, type Part, type TellPlace } from '@fettle/engine';
import type { Measure, Say } from '@fettle/findings';
import type { EvaluatedPiece } from '@fettle/language';
import type { PartView, PieceView, SheetView, TextSpan } from '@fettle/protocol';
import { URI, UriUtils } from 'langium';
import { ownerOf } from './pieces-to-show.ts';
import type { PiecePlans } from './plans/piece-plans.ts';
import { filledSheet, findSheet, sheetsToCome } from './sheets/sheet-ids.ts';
import type { SheetMaker } from './sheets/sheet-maker.ts';

/**
 * What has been drawn and explained, kept as long as the evaluation it was made from: a piece whose words did not
 * change is not drawn again, and stays the same object, so that nobody sends it twice. Bounded by the evaluations that
 * the language keeps.
 */

const noParts: readonly PartView[] = [];

/** The whole statement around an offset of the document. */
export type StatementAround = (offset: number) => TextSpan | undefined;

/** What must be known of the text the pieces are written in. */
export interface WrittenText {
  readonly uri: string;
  readonly statementAround: StatementAround;
  /** The line of an offset, counted from 1 as editors do. */
  lineAt(offset: number): number;
}

interface Kept {
  parts: readonly PartView[];
  /** The line its piece began in when its sums were told, for they name lines; undefined while they are not told. */
  explainedFrom: number | undefined;
  /** Some part is written outside its piece, so its place may move while the piece stays the same. */
  roaming: boolean;
  sheets: readonly SheetView[];
  /** The plan that is drawn where one is. */
  plan: BuyingPlan | undefined;
}

export class DrawnPieces {
  #kept = new WeakMap<Evaluation, Kept>();
  /** Asked for several times before anything is drawn. */
  #come = new WeakMap<Evaluation, readonly SheetView[]>();
  readonly #makers: readonly SheetMaker[];
  readonly #plans: Pick<PiecePlans, 'planOf' | 'progressOf'>;
  readonly #onFailure: (sheet: string, error: unknown) => void;

  /** One sheet that fails leaves the others standing; `onFailure` hears of it. */
  constructor(
    makers: readonly SheetMaker[],
    plans: Pick<PiecePlans, 'planOf' | 'progressOf'>,
    onFailure: (sheet: string, error: unknown) => void,
  ) {
    this.#makers = makers;
    this.#plans = plans;
    this.#onFailure = onFailure;
  }

  /**
   * The piece as far as it is needed: `shown` are the sheets that somebody looks at. What was drawn before stays drawn.
   */
  contentOf(
    piece: EvaluatedPiece,
    shown: ReadonlySet<string>,
    text: WrittenText,
  ): Pick<PieceView, 'parts' | 'sheets' | 'planning'> {
    const { evaluation } = piece;
    const { uri, statementAround } = text;
    // All pieces as one are as many parts again: told only to whoever looks at them.
    if (isTogether(evaluation) && shown.size === 0) return { parts: noParts, sheets: this.#tabs(piece) };
    let kept = this.#kept.get(evaluation);
    if (kept === undefined) {
      const { parts, roaming } = placedParts(piece, uri, statementAround);
      kept = { parts, roaming, explainedFrom: undefined, sheets: this.#tabs(piece), plan: undefined };
      this.#kept.set(evaluation, kept);
    } else if (kept.roaming) {
      kept.parts = withSpansOf(kept.parts, placedParts(piece, uri, statementAround).parts);
    }
    // Of all pieces as one each begins in a line of its own, so that any edit may move one of them.
    const line = isTogether(evaluation) ? undefined : text.lineAt(piece.range.start);
    if (shown.size > 0 && (line === undefined || kept.explainedFrom !== line)) {
      const say = sayOnce(piece.say);
      kept.parts = kept.parts.map((view, at) => {
        const part = evaluation.parts[at];
        return part === undefined
          ? view
          : { ...view, derivation: derivationOf(part, say, placeTeller(ownerOf(piece, part), text)) };
      });
      kept.explainedFrom = line;
    }
    const plan = this.#plans.planOf(evaluation);
    if (plan !== kept.plan) kept.sheets = this.#withoutPlans(piece, kept.sheets);
    kept.plan = plan;
    if (kept.sheets.some((sheet) => sheet.kind === 'later' && shown.has(sheet.id))) {
      kept.sheets = kept.sheets.flatMap((sheet) =>
        sheet.kind === 'later' && shown.has(sheet.id) ? this.#make(piece, sheet) : sheet,
      );
    }
    const planning = this.showsPlans(shown) ? this.#plans.progressOf(evaluation) : undefined;
    return { parts: kept.parts, sheets: kept.sheets, ...(planning === undefined ? {} : { planning }) };
  }

  /** Lengths are told in other units from now on. */
  forget(): void {
    this.#kept = new WeakMap();
    this.#come = new WeakMap();
  }

  /** Ids of the sheets the piece has, in their order. */
  tabsOf(piece: EvaluatedPiece): readonly string[] {
    return (this.#kept.get(piece.evaluation)?.sheets ?? this.#tabs(piece)).map(({ id }) => id);
  }

  /** Whether one of these sheets, by their ids, shows cutting plans. */
  showsPlans(sheets: ReadonlySet<string>): boolean {
    return [...sheets].some((id) => findSheet(this.#makers, id)?.maker.needs === 'plan');
  }

  /** There is a better plan: what shows the one before is to be drawn anew. */
  #withoutPlans(piece: EvaluatedPiece, sheets: readonly SheetView[]): readonly SheetView[] {
    const fresh = new Map(this.#tabs(piece).map((sheet) => [sheet.id, sheet]));
    return sheets.map((sheet) =>
      sheet.kind !== 'later' && this.showsPlans(new Set([sheet.id])) ? (fresh.get(sheet.id) ?? sheet) : sheet,
    );
  }

  #tabs(piece: EvaluatedPiece): readonly SheetView[] {
    const known = this.#come.get(piece.evaluation);
    if (known !== undefined) return known;
    const makers = isTogether(piece.evaluation) ? this.#makers.filter(({ needs }) => needs === 'plan') : this.#makers;
    const tabs = makers.flatMap((maker) => {
      try {
        return sheetsToCome(maker, piece);
      } catch (error) {
        this.#onFailure(maker.id, error);
        return [];
      }
    });
    this.#come.set(piece.evaluation, tabs);
    return tabs;
  }

  #make(piece: EvaluatedPiece, later: Extract<SheetView, { kind: 'later' }>): readonly SheetView[] {
    try {
      const found = findSheet(this.#makers, later.id);
      if (found === undefined) return [];
      const { maker, option } = found;
      if (maker.needs === undefined) return [filledSheet(later, maker.make(piece, option))];
      const plan = this.#plans.planOf(piece.evaluation);
      return [plan === undefined ? later : filledSheet(later, maker.make(piece, plan, option))];
    } catch (error) {
      this.#onFailure(later.id, error);
      return [];
    }
  }
}

function placedParts(piece: EvaluatedPiece, uri: string, statementAround: StatementAround) {
  // Of all pieces as one, one may move while the whole begins where it did.
  let roaming = isTogether(piece.evaluation);
  const { start, end } = piece.range;
  const { say } = piece;
  const parts = piece.evaluation.parts.map((part): PartView => {
    const span = spanOfPart(ownerOf(piece, part), part, uri, statementAround);
    if (span === undefined || span.start < start || end < span.end) roaming = true;
    const at = span ?? piece.range;
    return {
      id: part.id,
      label: `${part.label}, mark ${part.mark}`,
      mark: part.mark,
      sizes: [part.length, part.width, part.thickness].map((figure) => say.length(figure.length)),
      material: materialWords(part.role, part.stock?.name) ?? '',
      span: { start: at.start - start, end: at.end - start },
      derivation: '',
    };
  });
  return { parts, roaming };
}

/** All that is said of a part in this document; undefined for a part written elsewhere. */
function spanOfPart(
  piece: EvaluatedPiece,
  part: Part,
  uri: string,
  statementAround: StatementAround,
): TextSpan | undefined {
  const place = piece.locate(part.origin);
  if (place?.uri !== uri) return undefined;
  return statementAround(place.start) ?? { start: place.start, end: place.end };
}

/** The same objects wherever the place is the same too. */
function withSpansOf(kept: readonly PartView[], now: readonly PartView[]): readonly PartView[] {
  let moved = false;
  const parts = kept.map((view, at) => {
    const span = now[at]?.span ?? view.span;
    if (span.start === view.span.start && span.end === view.span.end) return view;
    moved = true;
    return { ...view, span };
  });
  return moved ? parts : kept;
}

/** The same sizes are told of many parts of a piece: each is put into words once. */
function sayOnce(say: Say): Say {
  const said = new Map<Measure, string>();
  return {
    name: say.name,
    length(measure) {
      let words = said.get(measure);
      if (words === undefined) {
        words = say.length(measure);
        said.set(measure, words);
      }
      return words;
    },
  };
}

/** In this text by line; of another only its name, for its lines are not known here. */
function placeTeller(piece: EvaluatedPiece, { uri, lineAt }: WrittenText): TellPlace {
  return (origin) => {
    const place = piece.locate(origin);
    if (place === undefined) return undefined;
    return place.uri === uri
      ? `written in line ${lineAt(place.start)}`
      : `written in ${UriUtils.basename(URI.parse(place.uri))}`;
  };
}

function derivationOf(part: Part, say: Say, where: TellPlace): string {
  const sizes = [
    ['Length', part.length],
    ['Width', part.width],
    ['Thickness', part.thickness],
  ] as const;
  return sizes.map(([name, figure]) => `${name} ${explain(figure, say, where)}`).join('\n');
}
