import { relative } from 'node:path';
import { Length, Rational, type Units } from '@fettle/engine';
import type { EvaluatedDocument, Place, PlacedFinding } from '@fettle/language';
import { type LangiumDocuments, URI } from 'langium';
import type { EvaluatedText } from './evaluated-texts.ts';
import type { FactJson, FindingJson, PlaceJson, PositionJson } from './finding-json.ts';
import { lengthJson } from './length-json.ts';

/** Turns placed findings into what leaves the program: places as line and column, lengths exact and as shown. */
export class FindingReporter {
  readonly #documents: LangiumDocuments;
  readonly #names: ReadonlyMap<string, string>;

  constructor(documents: LangiumDocuments, texts: readonly EvaluatedText[]) {
    this.#documents = documents;
    this.#names = new Map(
      texts.map((text) => [text.document.uri.toString(), text.name === '-' ? text.path : text.name]),
    );
  }

  /** All findings of these texts in reading order, each once even where two texts use the same file. */
  all(texts: readonly EvaluatedText[]): readonly FindingJson[] {
    const seen = new Set<string>();
    return texts.flatMap(({ document, evaluated }) => {
      const fresh = this.of(evaluated, evaluated.findings).filter((finding) => {
        const once = JSON.stringify([
          finding.file,
          finding.start.offset,
          finding.end.offset,
          finding.code,
          finding.sentence,
        ]);
        if (seen.has(once)) return false;
        seen.add(once);
        return true;
      });
      const home = this.#fileName(document.uri.toString());
      return [...fresh].sort((a, b) => byFile(a, b, home) || a.start.offset - b.start.offset);
    });
  }

  of(evaluated: EvaluatedDocument, findings: readonly PlacedFinding[]): readonly FindingJson[] {
    return findings.map((placed) => ({
      code: placed.code,
      severity: placed.severity,
      sentence: placed.sentence,
      ...this.#place(placed),
      facts: factsJson(placed.finding.facts, unitsAround(evaluated, placed)),
      related: placed.related.map((each) => ({ sentence: each.sentence, ...this.#place(each) })),
      mends: placed.fixes.map(({ title, preferred, edits }) => ({
        title,
        preferred,
        edits: edits.map((edit) => ({ ...this.#place(edit), text: edit.text })),
      })),
    }));
  }

  #place(place: Place): PlaceJson {
    const text = this.#documents.getDocument(URI.parse(place.uri))?.textDocument;
    const position = (offset: number): PositionJson => {
      const at = text?.positionAt(offset) ?? { line: 0, character: 0 };
      return { line: at.line + 1, column: at.character + 1, offset };
    };
    return { file: this.#fileName(place.uri), start: position(place.start), end: position(place.end) };
  }

  #fileName(uri: string): string {
    const given = this.#names.get(uri);
    if (given !== undefined) return given;
    const path = URI.parse(uri).fsPath;
    return relative(process.cwd(), path) || path;
  }
}

/** The text's own findings come before those of files it uses. */
function byFile(a: FindingJson, b: FindingJson, home: string): number {
  const rank = (finding: FindingJson) => (finding.file === home ? '' : finding.file);
  return rank(a) < rank(b) ? -1 : rank(a) > rank(b) ? 1 : 0;
}

const plainInches: Units = { unit: 'in', ruler: Rational.of(1, 32) };

function unitsAround(evaluated: EvaluatedDocument, place: Place): Units {
  const around = evaluated.pieces.find(({ range }) => range.start <= place.start && place.end <= range.end);
  return (around ?? evaluated.pieces[0])?.evaluation.design.units ?? plainInches;
}

/** Facts nest only a little; what lies deeper is no fact of ours. */
const deepestFact = 4;

function factsJson(facts: Readonly<Record<string, unknown>>, units: Units): { readonly [name: string]: FactJson } {
  const told: Record<string, FactJson> = {};
  for (const [name, value] of Object.entries(facts)) {
    const fact = factJson(value, units, 0);
    if (fact !== undefined) told[name] = fact;
  }
  return told;
}

function factJson(value: unknown, units: Units, depth: number): FactJson | undefined {
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value;
  if (value instanceof Rational) return value.toString();
  if (typeof value !== 'object' || value === null || depth > deepestFact) return undefined;
  if (Array.isArray(value)) return value.flatMap((item) => factJson(item, units, depth + 1) ?? []);
  if ('exactInches' in value && typeof value.exactInches === 'string') {
    const length = Length.fromMeasure({ exactInches: value.exactInches });
    return length === undefined ? undefined : lengthJson(length, units);
  }
  const told: Record<string, FactJson> = {};
  for (const [name, inner] of Object.entries(value)) {
    const fact = factJson(inner, units, depth + 1);
    if (fact !== undefined) told[name] = fact;
  }
  return told;
}
