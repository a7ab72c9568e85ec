import {
  type Finding,
  fileNeverNeeded,
  fileUsesItself,
  type Mend,
  type Origin,
  patternNeverUsed,
  stockNeverUsed,
  valueNeverUsed,
} from '@fettle/findings';
import { AstUtils, type LangiumDocument, type LangiumDocuments } from 'langium';
import { isPlainText, isReference, isStatement, type Statement, type Text } from '../generated/ast.ts';
import { type Declaration, fileDeclarations, pieceDeclarations, pieceOf, specOf } from '../names/declarations.ts';
import { kindOfReference } from '../names/kind-of-reference.ts';
import { nearestName } from '../names/nearest.ts';
import { documentsAt, usedDocuments, useStatements } from '../names/used-files.ts';
import { findName, visibleNames } from '../names/visible-names.ts';
import type { NameKind } from '../schema/index.ts';
import { headOrigin, originOf, type ReadContext } from './reader.ts';

/**
 * What a file declares or uses in vain. A file without pieces is a library: what stands at its top level waits for
 * others, and so it does in a file that another one uses.
 */
export function neverUsedFindings(context: ReadContext): void {
  const { documents } = context;
  const { document } = context.unit;
  const root = document.parseResult.value as Text;
  const said = namesSaid(documents, document);
  const hasPieces = root.statements.some((each) => specOf(each).spec.declares === 'piece');
  const isLibrary = !hasPieces || isUsedByOthers(documents, document);
  for (const statement of root.statements.flatMap(namedStatements)) {
    if (said.statements.has(statement)) continue;
    if (isLibrary && statement.$container === root) continue;
    const finding = neverUsed(context, statement);
    if (finding !== undefined) context.findings.push(finding);
  }
  for (const { statement, path } of useStatements(document)) {
    const used = documentsAt(documents, document, path);
    const only = used.length === 1 ? used[0] : undefined;
    const inVain =
      only === document
        ? fileUsesItself
        : isLibrary || used.length === 0 || said.hasUnknown || isNeeded(documents, used, said.documents)
          ? undefined
          : fileNeverNeeded;
    if (inVain !== undefined)
      context.findings.push(inVain.at(pathOrigin(context, statement), { path }, remove(context, statement, { path })));
  }
}

interface NamesSaid {
  /** Declarations that some name of the text stands for. */
  readonly statements: ReadonlySet<Statement>;
  readonly documents: ReadonlySet<LangiumDocument>;
  /** Some name stands for nothing: what looks unused may be what was meant. */
  readonly hasUnknown: boolean;
}

function namesSaid(documents: LangiumDocuments, document: LangiumDocument): NamesSaid {
  const statements = new Set<Statement>();
  const from = new Set<LangiumDocument>();
  let hasUnknown = false;
  // Most names are said in many pieces and declared in none of them: what they stand for is looked up once.
  const ofFile = new Map<string, Declaration | undefined>();
  const say = (found: Declaration | undefined, name: string): void => {
    if (found === undefined || found.name !== name) hasUnknown = true;
    if (found === undefined) return;
    statements.add(found.statement);
    from.add(AstUtils.getDocument(found.statement));
  };
  for (const top of (document.parseResult.value as Text).statements) {
    for (const place of namesSaidIn(top)) {
      const { statement, kind, name, key, own } = place;
      if (own !== undefined) {
        statements.add(own.statement);
        from.add(document);
        continue;
      }
      const isNew = !ofFile.has(key);
      if (isNew) ofFile.set(key, findName(documents, document, statement, kind, name));
      const found = ofFile.get(key);
      // A misspelt name may be meant for one of its own piece.
      if (found === undefined) say(nearestDeclaration(documents, document, place, name), name);
      else if (isNew) say(found, name);
    }
  }
  return { statements, documents: from, hasUnknown };
}

interface Said {
  readonly statement: Statement;
  readonly kind: NameKind;
  readonly name: string;
  /** Kind and name together. */
  readonly key: string;
  /** The piece around it declares it. */
  readonly own: Declaration | undefined;
}

// Statements of the pieces between which one types stay the same, and so does what they say.
const saidIn = new WeakMap<Statement, readonly Said[]>();

/** Every name that a statement at the top of a text says, with its kind, once; what a piece gives to its pattern is no use of it. */
function namesSaidIn(top: Statement): readonly Said[] {
  let said = saidIn.get(top);
  if (said === undefined) {
    const each = AstUtils.streamAllContents(top)
      .filter(isReference)
      .flatMap((reference): Said[] => {
        const place = kindOfReference(reference);
        if (place === undefined || place.kind === 'parameter') return [];
        const { statement, kind } = place;
        const name = reference.target.$refText;
        const piece = pieceOf(statement);
        const own = piece === undefined ? undefined : pieceDeclarations(piece).get(kind)?.get(name);
        return [{ statement, kind, name, key: `${kind} ${name}`, own }];
      });
    // Inside one piece the same name of the same kind is the same thing.
    said = [...new Map([...each].map((one) => [one.key, one])).values()];
    saidIn.set(top, said);
  }
  return said;
}

const namedIn = new WeakMap<Statement, readonly Statement[]>();

/** The statement at the top of a text and those inside it, as far as they give a name to what may go unused. */
function namedStatements(top: Statement): readonly Statement[] {
  let named = namedIn.get(top);
  if (named === undefined) {
    named = [top, ...AstUtils.streamAllContents(top).filter(isStatement)].filter(
      (each) => each.name !== undefined && mayGoUnused.has(specOf(each).spec.declares),
    );
    namedIn.set(top, named);
  }
  return named;
}

const mayGoUnused: ReadonlySet<NameKind | undefined> = new Set(['value', 'stock', 'pattern']);

/** A name that is misspelt was meant for its neighbour. */
function nearestDeclaration(
  documents: LangiumDocuments,
  document: LangiumDocument,
  place: Said,
  name: string,
): Declaration | undefined {
  const names = visibleNames(documents, document, place.statement, place.kind);
  const near = nearestName(name, [...names.keys()]);
  return near === undefined ? undefined : names.get(near);
}

function neverUsed(context: ReadContext, statement: Statement): Finding | undefined {
  const { declares, word } = specOf(statement).spec;
  const name = statement.name ?? '';
  const at = headOrigin(context, statement);
  // A second declaration of a name has its own finding, and no one can say it.
  if (!isFirst(context, statement)) return undefined;
  switch (declares) {
    case 'value':
      // A piece that gives a value needs the pattern to take it.
      return word === 'takes'
        ? valueNeverUsed.at(at, { name, by: 'takes' })
        : valueNeverUsed.at(at, { name, by: 'let' }, remove(context, statement, { name }));
    case 'stock':
      return stockNeverUsed.at(at, { name }, remove(context, statement, { name }));
    case 'pattern':
      return patternNeverUsed.at(at, { name }, remove(context, statement, { name }));
    default:
      return undefined;
  }
}

function isFirst({ documents, unit }: ReadContext, statement: Statement): boolean {
  const { declares } = specOf(statement).spec;
  if (declares === undefined || statement.name === undefined) return false;
  // A pattern is looked for beside itself, not among what it holds.
  const table = pieceOf(statement) === statement ? fileDeclarations(unit.document).get(declares) : undefined;
  const first = table?.get(statement.name) ?? findName(documents, unit.document, statement, declares, statement.name);
  return first?.statement === statement;
}

function remove(
  context: ReadContext,
  statement: Statement,
  values: Mend['values'],
): { readonly mends: readonly Mend[] } {
  return { mends: [{ how: 'remove', values, changes: [{ kind: 'remove', at: originOf(context, statement) }] }] };
}

function pathOrigin(context: ReadContext, statement: Statement): Origin {
  const path = statement.parts.find(isPlainText);
  return path === undefined ? headOrigin(context, statement) : originOf(context, path);
}

/** Machines and cutters count without being named. */
function isNeeded(
  documents: LangiumDocuments,
  used: readonly LangiumDocument[],
  said: ReadonlySet<LangiumDocument>,
): boolean {
  const reached = new Set(used.flatMap((each) => [each, ...usedDocuments(documents, each)]));
  return [...reached].some((each) => said.has(each) || (fileDeclarations(each).get('tool')?.size ?? 0) > 0);
}

function isUsedByOthers(documents: LangiumDocuments, document: LangiumDocument): boolean {
  return documents.all.some(
    (other) =>
      other !== document &&
      useStatements(other).some(({ path }) => documentsAt(documents, other, path).includes(document)),
  );
}
