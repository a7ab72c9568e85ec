import { type Evaluation, evaluatePiece, type Units } from '@fettle/engine';
import { type Finding, fileNotFound, type Origin, type Say } from '@fettle/findings';
import { type LangiumDocument, type LangiumDocuments, type LangiumSharedCoreServices, URI, UriUtils } from 'langium';
import { isPlainText, type Statement, type Text } from '../generated/ast.ts';
import { fileDeclarations, specOf } from '../names/declarations.ts';
import { isOnlyNear, nearestName } from '../names/nearest.ts';
import { documentsAt, usedDocuments, useStatements, usesMissingFile } from '../names/used-files.ts';
import { absurdAsWritten } from '../reading/absurd-as-written.ts';
import { nameFindings } from '../reading/names-as-written.ts';
import { neverUsedFindings } from '../reading/never-used.ts';
import { readPiece } from '../reading/read-piece.ts';
import { type ReadContext, unitsAt } from '../reading/reader.ts';
import { reportUnread } from '../reading/report-unread.ts';
import { type OfferList, ShopInReach } from '../reading/shop-in-reach.ts';
import { slipFindings } from '../reading/slip-findings.ts';
import { entryText, entryUnit, fileUnitId, type Place, pieceUnitId, placeOf } from '../reading/text-units.ts';
import { gatherNotes } from './gathered-notes.ts';
import { mostImportant } from './most-findings.ts';
import { causesOnly } from './one-cause.ts';
import { type PlacedFinding, placeFinding } from './placed-findings.ts';
import { withoutConsequences } from './root-findings.ts';
import { sayIn } from './say.ts';

/** One piece of a document: what the engine makes of it, and where its origins lie in the documents of now. */
export interface EvaluatedPiece {
  readonly name: string;
  readonly evaluation: Evaluation;
  readonly range: { readonly start: number; readonly end: number };
  /** In the units the maker wants to see, which are the piece's own unless a setting says otherwise. */
  readonly say: Say;
  readonly statement: Statement;
  locate(origin: Origin): Place | undefined;
}

export interface EvaluatedDocument {
  readonly pieces: readonly EvaluatedPiece[];
  readonly findings: readonly PlacedFinding[];
  /** False when braces had to be guessed or the text is cut: what was drawn from it may be half a piece. */
  readonly readable: boolean;
}

/** What one piece was worked out from, and what came of it. */
interface KeptPiece {
  readonly text: string;
  /** Shop entries and values from elsewhere, by unit, with their words. */
  readonly entries: ReadonlyMap<string, string>;
  readonly around: string;
  readonly names: string;
  /** Lists of the shop that were looked at for something to choose from, with what stood in them. */
  readonly offered: ReadonlyMap<OfferList, string>;
  readonly evaluation: Evaluation;
  readonly findings: readonly Finding[];
}

interface KeptDocument {
  readonly used: readonly Text[];
  readonly evaluated: EvaluatedDocument;
}

/** Evaluates documents, and keeps what it found for each piece as long as the words it was read from stay the same. */
export class DocumentEvaluator {
  readonly #shared: LangiumSharedCoreServices;
  readonly #done = new WeakMap<Text, KeptDocument>();
  readonly #kept = new Map<string, KeptPiece>();
  #names = '';
  #shown: Units | undefined;
  /** Pieces that were really worked out, for tests of what an edit costs. */
  evaluations = 0;

  constructor(shared: LangiumSharedCoreServices) {
    this.#shared = shared;
  }

  /** Units of all that is told beside a text from now on; undefined: each piece's own. Findings keep to those. */
  showIn(units: Units | undefined): void {
    this.#shown = units;
  }

  /** In which a piece that is written in `own` is told of. */
  shownFor(own: Units): Units {
    return this.#shown ?? own;
  }

  /** The document must be parsed; names are found in the documents it uses, as far as they are loaded. */
  evaluate(document: LangiumDocument): EvaluatedDocument {
    const root = document.parseResult.value as Text;
    const used = usedDocuments(this.#shared.workspace.LangiumDocuments, document);
    const usedRoots = used.map((each) => each.parseResult.value as Text);
    const done = this.#done.get(root);
    if (done?.used.length === usedRoots.length && done.used.every((each, i) => each === usedRoots[i])) {
      return done.evaluated;
    }
    const evaluated = this.#evaluate(document, root, used);
    this.#done.set(root, { used: usedRoots, evaluated });
    return evaluated;
  }

  #evaluate(document: LangiumDocument, root: Text, used: readonly LangiumDocument[]): EvaluatedDocument {
    const documents = this.#shared.workspace.LangiumDocuments;
    const findings: PlacedFinding[] = [];
    const pieces: EvaluatedPiece[] = [];
    const uri = document.uri.toString();
    const textAt = (at: Place): string => {
      const text =
        at.uri === uri
          ? document.textDocument.getText()
          : documents.getDocument(URI.parse(at.uri))?.textDocument.getText();
      return text?.slice(at.start, at.end) ?? '';
    };
    /** `home` is where origins of the piece count from; `use` its own words, for what is wrong in its pattern. */
    const add = (list: readonly Finding[], units: Units, home: number, use?: Place) => {
      const seen = new Set<string>();
      for (const finding of list) {
        const once = `${finding.code} ${finding.origin.unit} ${finding.origin.start} ${finding.origin.end}`;
        if (seen.has(once)) continue;
        seen.add(once);
        const place = (origin: Origin) => placeOf(origin, { uri, start: home }, documents);
        const placed = placeFinding(finding, units, sayIn(units), place, textAt);
        if (placed !== undefined) findings.push(ofPattern(finding) && use !== undefined ? atUse(placed, use) : placed);
      }
    };
    const slips = slipFindings(document);
    const fileContext: ReadContext = {
      documents,
      unit: { id: fileUnitId, start: 0, document },
      units: unitsAt(root),
      findings: [...slips],
      touched: new Set(),
    };
    this.#reportMissingFiles(document, fileContext);
    const shop = new ShopInReach(documents, [document, ...used]);
    // The same string as long as it says the same: every piece is compared by it.
    const names = namesAround(documents, [document, ...used]);
    this.#names = names === this.#names ? this.#names : names;
    const now = new TextsOfNow(documents, this.#names);
    for (const statement of root.statements) {
      if (specOf(statement).spec.declares === 'piece') {
        nameFindings(fileContext, statement);
        const piece = this.#piece(document, statement, shop, now);
        pieces.push(piece.evaluated);
        const { design } = piece.evaluated.evaluation;
        add(piece.findings, design.units, piece.evaluated.range.start, piece.evaluated.locate(design.origin));
      } else {
        reportUnread(fileContext, statement);
      }
    }
    neverUsedFindings(fileContext);
    add(fileContext.findings, fileContext.units, 0);
    return {
      pieces,
      findings: mostImportant(gatherNotes(withoutConsequences(findings, document)), sayIn(fileContext.units)),
      readable: slips.every(
        (slip) => slip.severity !== 'error' || slip.code === 'stray-mark' || slip.code === 'name-not-closed',
      ),
    };
  }

  #piece(
    document: LangiumDocument,
    statement: Statement,
    shop: ShopInReach,
    now: TextsOfNow,
  ): { evaluated: EvaluatedPiece; findings: readonly Finding[] } {
    const documents = this.#shared.workspace.LangiumDocuments;
    const uri = document.uri.toString();
    const text = statement.$cstNode?.text ?? '';
    const start = statement.$cstNode?.offset ?? 0;
    const name = statement.name ?? 'piece';
    // What the piece depends on beside its own words and its shop: units of the file, and the names there are, so that
    // one that was missing is found once it is declared.
    const around = JSON.stringify(unitsAt(statement));
    const { names } = now;
    const slot = `${uri}\n${name}`;
    const kept = this.#kept.get(slot);
    const stillHolds =
      kept?.text === text &&
      kept.around === around &&
      kept.names === names &&
      [...kept.entries].every(([unit, words]) => now.entryText(unit) === words) &&
      [...kept.offered].every(([list, key]) => shop.key(list) === key);
    const current =
      kept !== undefined && stillHolds ? kept : this.#work(document, statement, { text, around, names }, shop);
    this.#kept.set(slot, current);
    const { evaluation, findings } = current;
    const shownFor = (own: Units): Units => this.shownFor(own);
    const evaluated: EvaluatedPiece = {
      name,
      evaluation,
      range: { start, end: statement.$cstNode?.end ?? start },
      // Asked anew each time: a piece is kept longer than a setting may last.
      get say() {
        return sayIn(shownFor(evaluation.design.units));
      },
      statement,
      locate: (origin) => placeOf(origin, { uri, start }, documents),
    };
    return { evaluated, findings };
  }

  #work(
    document: LangiumDocument,
    statement: Statement,
    keys: Pick<KeptPiece, 'text' | 'around' | 'names'>,
    shop: ShopInReach,
  ): KeptPiece {
    this.evaluations++;
    const documents = this.#shared.workspace.LangiumDocuments;
    const read = readPiece(documents, document, statement);
    const asked = new Set<OfferList>();
    const evaluation = evaluatePiece(read.design, shop.offer(asked));
    const units = [...read.touched].map((each) => entryUnit(each).id).filter((unit) => unit !== pieceUnitId);
    return {
      ...keys,
      entries: new Map(units.map((unit) => [unit, entryText(unit, documents)])),
      offered: new Map([...asked].map((list) => [list, shop.key(list)])),
      evaluation,
      findings: causesOnly(read.findings, absurdAsWritten(evaluation.findings, keys.text, read.design.units)),
    };
  }

  /** As far as there is a file system that lists them. */
  #textsIn(folder: URI): readonly URI[] {
    try {
      const nodes = this.#shared.workspace.FileSystemProvider.readDirectorySync(folder);
      return nodes.filter(({ isFile, uri }) => isFile && uri.path.endsWith('.fettle')).map(({ uri }) => uri);
    } catch {
      return [];
    }
  }

  #reportMissingFiles(document: LangiumDocument, context: ReadContext): void {
    const documents = this.#shared.workspace.LangiumDocuments;
    for (const { statement, path } of useStatements(document)) {
      if (documentsAt(documents, document, path).length > 0) continue;
      const part = statement.parts.find(isPlainText)?.$cstNode;
      const at: Origin = { unit: fileUnitId, start: part?.offset ?? 0, end: part?.end ?? 0 };
      const folder = UriUtils.dirname(document.uri).toString();
      const loaded = documents.all
        .map((each) => each.uri)
        .filter((each) => UriUtils.dirname(each).toString() === folder);
      const beside = [...new Set([...loaded, ...this.#textsIn(UriUtils.dirname(document.uri))].map(UriUtils.basename))];
      const own = UriUtils.basename(document.uri);
      const nearest =
        nearestName(
          path,
          beside.filter((each) => each !== own),
        ) ?? '';
      context.findings.push(
        fileNotFound.at(
          at,
          { path, nearest },
          {
            mends:
              nearest === ''
                ? []
                : [
                    {
                      how: 'use-nearest',
                      safe: isOnlyNear(path, nearest, beside),
                      values: { name: nearest },
                      changes: [{ kind: 'set-name', at, name: nearest }],
                    },
                  ],
          },
        ),
      );
    }
  }
}

/** What all pieces of a text are compared with, looked up once. */
class TextsOfNow {
  readonly #documents: LangiumDocuments;
  readonly #entries = new Map<string, string>();
  /** The names there are around the pieces. */
  readonly names: string;

  constructor(documents: LangiumDocuments, names: string) {
    this.#documents = documents;
    this.names = names;
  }

  entryText(unit: string): string {
    let text = this.#entries.get(unit);
    if (text === undefined) {
      text = entryText(unit, this.#documents);
      this.#entries.set(unit, text);
    }
    return text;
  }
}

/** The names that these texts declare for others, without pieces: those are nobody's concern but their own. */
function namesAround(documents: LangiumDocuments, all: readonly LangiumDocument[]): string {
  return JSON.stringify(
    all.map((document) => [
      usesMissingFile(documents, document),
      ...[...fileDeclarations(document)].map(([kind, names]) => (kind === 'piece' ? [] : [kind, ...names.keys()])),
    ]),
  );
}

function ofPattern(finding: Finding): boolean {
  return finding.origin.unit !== pieceUnitId && finding.origin.unit !== fileUnitId;
}

/** What goes wrong in a pattern goes wrong for one piece: it is shown there, and points into the pattern. */
function atUse(placed: PlacedFinding, use: Place): PlacedFinding {
  const { uri, start, end } = placed;
  return {
    ...placed,
    ...use,
    pattern: { uri, start, end },
    related: [{ uri, start, end, sentence: 'these words of the pattern' }, ...placed.related],
  };
}
