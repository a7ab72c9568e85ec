import type { Evaluation, Part, PlacedHardware } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { openFixture } from '../harness/workbench.ts';

/** Doors as a maker writes them, and what comes of them. */

export interface ReadPiece {
  readonly evaluation: Evaluation;
  readonly hardware: readonly PlacedHardware[];
  /** 'code: sentence' of all that is more than a note. */
  readonly told: readonly string[];
  readonly codes: readonly string[];
  readonly notes: readonly string[];
  part(id: string): Part;
  /** Exact inches of what is measured for a piece of hardware. */
  setOf(id: string, words: string): string | undefined;
}

export async function pieceIn(text: string): Promise<ReadPiece> {
  const workbench = await openFixture({ files: [{ name: 'piece.fettle', text }] });
  const { pieces, findings } = evaluateDocument(workbench.services, workbench.document('piece.fettle'));
  const [piece] = pieces;
  if (piece === undefined) throw new Error('the text holds no piece');
  const { evaluation } = piece;
  const { hardware, parts } = evaluation;
  const grave = findings.filter(({ severity }) => severity !== 'note');
  return {
    evaluation,
    hardware,
    told: grave.map(({ code, sentence }) => `${code}: ${sentence}`),
    codes: grave.map(({ code }) => code),
    notes: findings.filter(({ severity }) => severity === 'note').map(({ code }) => code),
    part: (id) => {
      const found = parts.find((each) => each.id === id);
      if (found === undefined) throw new Error(`no part ${id} among ${parts.map((each) => each.id).join(', ')}`);
      return found;
    },
    setOf: (id, words) =>
      hardware.find((each) => each.id.endsWith(id))?.set.find((each) => each.words === words)?.figure.length
        .exactInches,
  };
}

/** A case of panels 3/4" thick with one face; 20" wide, so that its opening is 18-1/2" wide. */
export function caseWith(face: string, shop: string, size = '20 wide, 30 high, 12 deep'): string {
  return `${shop}
piece "case" {
  size ${size}
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face ${face}
}`;
}

export const butt =
  'hinge "butt 2" butt, 2 long, leaf 5/8 wide, 5/32 closed, screws 5/8 long, 3 screws in each leaf, for inset doors';
export const knife =
  'hinge "knife 2" knife, 2 long, leaf 3/8 wide, 5/32 closed, screws 5/8 long, 2 screws in each leaf, for inset doors';
export const cup =
  'hinge "cup" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, overlay 12mm more than cup distance, ' +
  'fixing-holes 45mm apart, fixing-holes 9.5mm behind cup, plate 37mm from front, screws 12mm long, for overlay doors';
