import { type Mend, nameDeclaredTwice, nameEmpty, nameHardToRead, nameMissing, type Origin } from '@fettle/findings';
import { AstUtils, type CstNode, GrammarUtils } from 'langium';
import { isReference, type Statement } from '../generated/ast.ts';
import { fileDeclarations, pieceDeclarations, pieceOf, specOf } from '../names/declarations.ts';
import { kindOfReference } from '../names/kind-of-reference.ts';
import { findName, nameKindWords } from '../names/visible-names.ts';
import type { NameKind } from '../schema/index.ts';
import { headOrigin, originOf, type ReadContext } from './reader.ts';

/** What is wrong with the name that a statement gives: missing, empty, given before, or not what it looks like. */

/** Kinds that are of no use without a name. Fronts and machines do their work without one. */
const needName: ReadonlySet<NameKind> = new Set([
  'piece',
  'pattern',
  'stock',
  'slide',
  'hinge',
  'pull',
  'flitch',
  'thing',
  'value',
  'dowel',
  'screw',
  'tenon',
]);

/** In letters. Common practice, no source: a label holds no more, and no one reads it out. */
const longestName = 200;

/** Names in which nothing is wrong; of the many pieces of a text most stay as they are while one types. */
const sound = new WeakSet<Statement>();

export function nameFindings(context: ReadContext, statement: Statement): void {
  const kind = specOf(statement).spec.declares;
  if (kind === undefined) return;
  if (sound.has(statement) && firstOfName(context, statement, kind) === undefined) return;
  const before = context.findings.length;
  judgeName(context, statement, kind);
  if (context.findings.length === before) sound.add(statement);
}

function judgeName(context: ReadContext, statement: Statement, kind: NameKind): void {
  const quoted = GrammarUtils.findNodeForProperty(statement.$cstNode, 'name');
  if (quoted === undefined || statement.name === undefined) {
    if (needName.has(kind)) missing(context, statement, kind);
    return;
  }
  // A name that was never closed has a finding of its own.
  if (quoted.length < 2 || !/["“”]$/.test(quoted.text)) return;
  const at = placed(context, quoted);
  const inner = quoted.text.slice(1, -1);
  const clean = inner.replace(turning, '').replace(unseen, ' ').replace(/\s+/g, ' ').trim();
  if (clean === '') {
    empty(context, statement, kind, at);
    return;
  }
  if (clean.length > longestName) {
    const facts = { name: clean, why: 'long', character: '', letters: clean.length } as const;
    context.findings.push(nameHardToRead.at(at, facts));
  } else {
    hardToRead(context, statement, kind, at, inner, clean);
  }
  declaredTwice(context, statement, kind, at);
}

function placed(context: ReadContext, node: CstNode): Origin {
  return { unit: context.unit.id, start: node.offset - context.unit.start, end: node.end - context.unit.start };
}

function missing(context: ReadContext, statement: Statement, kind: NameKind): void {
  const word = statement.head ?? specOf(statement).spec.word;
  const at = headOrigin(context, statement);
  // What nothing can use would be named only to be left unused; a piece is drawn and listed at once.
  const name = 'piece';
  const mends: readonly Mend[] =
    kind === 'piece'
      ? [{ how: 'give', values: { name }, changes: [{ kind: 'insert-words', after: at, words: ` "${name}"` }] }]
      : [];
  context.findings.push(nameMissing.at(at, { word, usable: kind === 'piece' }, { mends }));
}

function empty(context: ReadContext, statement: Statement, kind: NameKind, at: Origin): void {
  const word = statement.head ?? specOf(statement).spec.word;
  const mends: readonly Mend[] =
    kind === 'cell'
      ? [{ how: 'remove', values: {}, changes: [{ kind: 'remove', at }] }]
      : kind === 'piece'
        ? [{ how: 'give', values: { name: 'piece' }, changes: [{ kind: 'set-name', at, name: 'piece' }] }]
        : [];
  context.findings.push(nameEmpty.at(at, { word }, { mends }));
}

/** Marks that turn the direction of reading. */
const turning = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/g;
// Control characters, the soft hyphen, blanks without width. A tab is one too: it is as wide as it likes.
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const unseen = /[\u0000-\u001F\u007F-\u009F\u00AD\u200B\u2060\uFEFF]/g;

function hardToRead(
  context: ReadContext,
  statement: Statement,
  kind: NameKind,
  at: Origin,
  inner: string,
  name: string,
): void {
  const turn = inner.match(turning)?.[0];
  const hidden = turn ?? inner.match(unseen)?.[0];
  if (hidden === undefined && inner === inner.trim()) return;
  const why = turn !== undefined ? 'direction' : hidden !== undefined ? 'unseen' : 'blanks-at-ends';
  const code = (hidden ?? ' ').charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
  const taken = name !== statement.name && declarationsAround(context, statement).get(kind)?.has(name) === true;
  const changes = [at, ...(name === statement.name ? [] : placesOfName(context, statement, kind))].map(
    (each) => ({ kind: 'set-name', at: each, name }) as const,
  );
  const mends = taken ? [] : [{ how: 'clean', values: { name }, changes }];
  context.findings.push(nameHardToRead.at(at, { name, why, character: `U+${code}` }, { mends }));
}

/** Where this text says the name that a statement gives. */
function placesOfName(context: ReadContext, statement: Statement, kind: NameKind): Origin[] {
  const within = pieceOf(statement) ?? AstUtils.getDocument(statement).parseResult.value;
  return AstUtils.streamAllContents(within)
    .filter(isReference)
    .filter((each) => {
      if (each.target.$refText !== statement.name) return false;
      const place = kindOfReference(each);
      const found =
        place?.kind === kind &&
        findName(context.documents, context.unit.document, place.statement, kind, each.target.$refText);
      return typeof found === 'object' && found.statement === statement;
    })
    .map((each) => originOf(context, each))
    .toArray();
}

/** Where the name of a statement was given before; undefined where that is nowhere. */
function firstOfName(context: ReadContext, statement: Statement, kind: NameKind): Statement | undefined {
  // Labels are said by nobody.
  if (kind === 'label' || statement.name === undefined) return undefined;
  const first = declarationsAround(context, statement).get(kind)?.get(statement.name)?.statement;
  return first === statement ? undefined : first;
}

function declaredTwice(context: ReadContext, statement: Statement, kind: NameKind, at: Origin): void {
  const first = firstOfName(context, statement, kind);
  const { name } = statement;
  if (first === undefined || name === undefined) return;
  const names = declarationsAround(context, statement).get(kind);
  let count = 2;
  while (names?.has(`${name} ${count}`) === true) count++;
  const fresh = `${name} ${count}`;
  context.findings.push(
    nameDeclaredTwice.at(
      at,
      { name, what: nameKindWords[kind] },
      {
        related: [{ role: 'first', values: { name }, origin: headOrigin(context, first) }],
        mends: [{ how: 'rename', values: { name: fresh }, changes: [{ kind: 'set-name', at, name: fresh }] }],
      },
    ),
  );
}

function declarationsAround(context: ReadContext, statement: Statement) {
  const piece = pieceOf(statement);
  return piece === undefined || piece === statement
    ? fileDeclarations(context.unit.document)
    : pieceDeclarations(piece);
}
