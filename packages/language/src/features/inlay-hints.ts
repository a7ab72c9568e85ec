import { byEachOther, type Evaluation, type Figure, type LaidCell } from '@fettle/engine';
import type { Origin } from '@fettle/findings';
import type { LangiumDocument, LangiumDocuments } from 'langium';
import type { InlayHintProvider } from 'langium/lsp';
import type { InlayHint, InlayHintParams } from 'vscode-languageserver';
import type { DocumentEvaluator, EvaluatedPiece } from '../evaluation/evaluate-document.ts';
import type { FettleServices } from '../fettle-module.ts';
import { pieceUnitId } from '../reading/text-units.ts';
import { derivations } from './derivations.ts';
import { linkedPlaces } from './linked-places.ts';

/**
 * Sizes and habits that the text leaves unsaid, shown behind the words that leave them so. Few, and always in the same
 * places: a size along its row or stack where the words do not give it, and what was assumed at the statement that could
 * have said it. Reads the kept evaluation and computes nothing.
 */
export class FettleInlayHintProvider implements InlayHintProvider {
  readonly #evaluator: DocumentEvaluator;
  readonly #documents: LangiumDocuments;

  constructor(services: FettleServices) {
    this.#evaluator = services.evaluation.DocumentEvaluator;
    this.#documents = services.shared.workspace.LangiumDocuments;
  }

  getInlayHints(document: LangiumDocument, params: InlayHintParams): InlayHint[] {
    const { textDocument } = document;
    const [from, to] = [textDocument.offsetAt(params.range.start), textDocument.offsetAt(params.range.end)];
    return this.#evaluator.evaluate(document).pieces.flatMap((piece) => {
      if (piece.range.end < from || to < piece.range.start) return [];
      const places = linkedPlaces(this.#documents, document, piece);
      return unsaid(piece.evaluation).flatMap((hint): InlayHint[] => {
        // What stands in a pattern has another value in each piece made from it.
        if (hint.behind.unit !== pieceUnitId) return [];
        const end = piece.range.start + hint.behind.end;
        if (end < from || to < end) return [];
        return [
          {
            position: textDocument.positionAt(end),
            label: hint.words(piece),
            paddingLeft: true,
            tooltip: { kind: 'markdown', value: derivations(hint.figures, piece.say, places).join('\n\n') },
          },
        ];
      });
    });
  }
}

interface Unsaid {
  /** The words it is shown behind. */
  readonly behind: Origin;
  readonly figures: readonly { readonly label: string; readonly axis: 'wide' | 'high'; readonly figure: Figure }[];
  words(piece: EvaluatedPiece): string;
}

function unsaid({ design, layout }: Evaluation): Unsaid[] {
  const found: Unsaid[] = [];
  if (layout.face !== undefined) addComputed(layout.face, found);
  const { face, carcase } = design;
  if (face !== undefined) {
    const { fit } = face;
    const fits: [string, Figure][] = [['gap', fit.gap]];
    if (fit.kind === 'overlay') fits.push(['reveal', fit.reveal]);
    addAssumed(face.origin, fits, found);
  }
  if (face?.drawers !== undefined) {
    const { clearBelow, clearAbove, origin } = face.drawers;
    addAssumed(
      origin,
      [
        ['clear below', clearBelow],
        ['clear above', clearAbove],
      ],
      found,
    );
  }
  if (carcase.frame !== undefined) {
    const { stiles, topRail, bottomRail, origin } = carcase.frame;
    addAssumed(
      origin,
      [
        ['stiles', stiles],
        ['top rail', topRail],
        ['bottom rail', bottomRail],
      ],
      found,
    );
  }
  return found;
}

function addComputed(group: LaidCell, found: Unsaid[]): void {
  for (const laid of group.cells) {
    addComputed(laid, found);
    const { cell, front, leaves, opening } = laid;
    if (cell.along.kind === 'fixed' || cell.measured !== undefined || cell.measuredFront !== undefined) continue;
    const isRow = group.cell.kind === 'row';
    const axis = isRow ? 'wide' : 'high';
    const [leaf] = leaves;
    const isPair = isRow && leaves.length > 1 && leaf !== undefined;
    const box = isPair ? leaf : (front ?? opening);
    const figure = isRow ? box.x.size : box.y.size;
    const what = isPair ? 'each leaf' : front === undefined ? 'the opening' : 'the front';
    found.push({
      behind: cell.sizeOrigin,
      figures: [{ label: `${isRow ? 'width' : 'height'} of ${what}`, axis, figure }],
      words: ({ say }) =>
        `= ${isPair ? byEachOther(`${leaves.length}`, say.length(figure.length)) : say.length(figure.length)}`,
    });
  }
}

/** More would push the words of the line out of sight; the rest is told where one points at the hint. */
const MOST_SAID = 2;

/** One hint for all that a statement leaves to habit. */
function addAssumed(behind: Origin, figures: readonly (readonly [string, Figure])[], found: Unsaid[]): void {
  const taken = figures.filter(([, figure]) => figure.reason.kind === 'assumed');
  if (taken.length === 0) return;
  found.push({
    behind,
    figures: taken.map(([label, figure]) => ({ label, axis: 'wide', figure })),
    words: ({ say }) => {
      const said = taken.slice(0, MOST_SAID).map(([label, { length }]) => `${label} ${say.length(length)}`);
      const more = taken.length - said.length;
      return `assumed: ${said.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
    },
  });
}
