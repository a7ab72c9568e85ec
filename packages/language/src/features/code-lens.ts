import type { LangiumDocument } from 'langium';
import type { CodeLensProvider } from 'langium/lsp';
import type { CodeLens } from 'vscode-languageserver';
import type { DocumentEvaluator, EvaluatedPiece } from '../evaluation/evaluate-document.ts';
import { whereverTheyHold } from '../evaluation/gathered-notes.ts';
import type { PlacedFinding } from '../evaluation/placed-findings.ts';
import type { FettleServices } from '../fettle-module.ts';
import { verdictWords } from './verdict-words.ts';

/** The command of the editor's client that shows a picture. */
export const showPictureCommand = 'fettle.showPicture';

/** Above each piece: how many parts it comes to and whether it fits; choosing it shows the picture. */
export class FettleCodeLensProvider implements CodeLensProvider {
  readonly #evaluator: DocumentEvaluator;

  constructor(services: FettleServices) {
    this.#evaluator = services.evaluation.DocumentEvaluator;
  }

  provideCodeLens(document: LangiumDocument): CodeLens[] {
    const uri = document.uri.toString();
    const { pieces, findings } = this.#evaluator.evaluate(document);
    return pieces.map((piece) => {
      const { start, end } = piece.range;
      const own = whereverTheyHold(findings).filter(
        (each) => each.uri === uri && start <= each.start && each.end <= end,
      );
      const at = document.textDocument.positionAt(start);
      return {
        range: { start: at, end: document.textDocument.positionAt(start + (piece.statement.head?.length ?? 0)) },
        command: { title: lensWords(piece, own), command: showPictureCommand, arguments: [uri, piece.name] },
      };
    });
  }
}

function lensWords({ evaluation }: EvaluatedPiece, findings: readonly PlacedFinding[]): string {
  const { length } = evaluation.parts;
  return `${length === 1 ? '1 part' : `${length} parts`} · ${verdictWords(true, findings)}`;
}
