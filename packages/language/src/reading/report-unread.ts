import { notCheckedYet, type Origin, saidInsideBraces, unknownName } from '@fettle/findings';
import { isExpression, isReference, isWord, type Part, type Statement } from '../generated/ast.ts';
import { pieceOf, specOf } from '../names/declarations.ts';
import { isOnlyNear, nearestName } from '../names/nearest.ts';
import { usesMissingFile } from '../names/used-files.ts';
import { findName, nameKindWords, visibleNames } from '../names/visible-names.ts';
import { bodyOf, fileNoun, type PhraseItem, type StatementSpec } from '../schema/index.ts';
import { homesOfPhrase, homesOfStatement } from '../schema/where-words-belong.ts';
import { saysWhatHoldsIt } from './inside-braces.ts';
import { judgeStatement } from './judge-statement.ts';
import { type ReadPhrase, readParts } from './phrases.ts';
import { phrasesHalfSaid, phrasesOfWord, phrasesToGoOnWith } from './phrases-half-said.ts';
import { puttingWhereItBelongs } from './put-where-it-belongs.ts';
import { endOfHead, headOrigin, originOf, type ReadContext, slotKind } from './reader.ts';
import { reportWord } from './report-word.ts';
import { sizeOfWhatIn, unitApartIn } from './sizes-half-said.ts';
import { entryUnit } from './text-units.ts';
import { mostLetters, saidElsewhereIn, sizeAsItsName } from './words-of-the-trade.ts';

/** Says what in this statement, and in its body, means nothing, is not known or is not computed yet. */
export function reportUnread(context: ReadContext, statement: Statement): void {
  const { spec, exact } = specOf(statement);
  if (!exact && statement.head !== undefined) {
    // One cause, one finding: what it would be as a statement of its own is not judged.
    if (isOfWhatHoldsIt(context, statement)) return;
    const origin = headOrigin(context, statement);
    const at = { ...origin, end: origin.start + statement.head.length };
    const container = statement.$container;
    const place = container.$type === 'Statement' ? placeWords(specOf(container as Statement).spec) : 'a file';
    const whole = originOf(context, statement);
    const beside = wordsBeside(statement);
    if (spec.word === '' && saidElsewhereIn(context, statement, at, place, beside)) return;
    const short = spec.word === '' ? sizeAsItsName(statement, beside) : [];
    const homes = homesOfStatement(statement.head);
    const move = spec.word === '' ? puttingWhereItBelongs(context, statement, beside) : undefined;
    reportWord(context, {
      at: short.length === 0 ? at : whole,
      whole,
      words: statement.head,
      place,
      nearest: spec.word,
      homes,
      known: beside,
      shortFor: short,
      ...(move === undefined ? {} : { move }),
    });
    // One cause, one finding: nothing below an unknown statement is judged.
    if (spec.word === '') return;
  }
  const { phrases, unread } = readParts(statement, spec);
  if (spec.checked) {
    for (const read of phrases) {
      const [first, last] = [read.parts[0], read.parts.at(-1)];
      if (read.phrase.checked || first === undefined || last === undefined) continue;
      const words = read.parts.map((part) => part.$cstNode?.text ?? '').join(' ');
      context.findings.push(notCheckedYet.at(originOf(context, first, last), { words }));
    }
  } else if (specOf(statement.$container as Statement).spec.checked ?? true) {
    context.findings.push(notCheckedYet.at(headOrigin(context, statement), { words: statement.head ?? spec.word }));
  }
  reportNames(context, statement, phrases);
  for (const run of unread) reportRun(context, statement, run);
  if (exact) judgeStatement(context, statement);
  for (const child of statement.statements) reportUnread(context, child);
}

/** Words of the thing itself, such as `hinged left` of a door, that stand inside its braces instead of before them. */
function isOfWhatHoldsIt(context: ReadContext, statement: Statement): boolean {
  if (!saysWhatHoldsIt(statement)) return false;
  const holder = statement.$container as Statement;
  const { spec } = specOf(holder);
  const words = statement.$cstNode?.text.trim() ?? '';
  const at = originOf(context, statement);
  const after = endOfHead(context, holder);
  const remove = { kind: 'remove', at } as const;
  context.findings.push(
    saidInsideBraces.at(
      at,
      { words, word: spec.word },
      {
        mends: [
          {
            how: 'before-brace',
            values: { words },
            changes: [remove, { kind: 'insert-words', after, words: `, ${words}` }],
          },
          { how: 'remove', values: { words }, changes: [remove] },
        ],
      },
    ),
  );
  return true;
}

/** The statements that may stand where this one stands. */
function wordsBeside({ $container }: Statement): readonly string[] {
  const noun = $container.$type === 'Statement' ? bodyOf(specOf($container as Statement).spec) : fileNoun;
  return [...noun.statements.keys()];
}

function placeWords(spec: StatementSpec): string {
  return spec.word === '' ? 'this list' : `'${spec.word}'`;
}

function reportNames(context: ReadContext, statement: Statement, phrases: readonly ReadPhrase[]): void {
  for (const read of phrases) {
    for (const part of read.slots) {
      if (!isReference(part)) continue;
      const kind = slotKind(read, part);
      const name = part.target.$refText;
      if (findName(context.documents, context.unit.document, statement, kind, name) !== undefined) continue;
      // Names that a missing file may declare have one cause, which is told where that file is used.
      if (kind !== 'cell' && kind !== 'parameter' && usesMissingFile(context.documents, context.unit.document))
        continue;
      const all = visibleNames(context.documents, context.unit.document, statement, kind);
      const near = nearestName(name, [...all.keys()]);
      const meant = near === undefined ? undefined : all.get(near)?.statement;
      const longer = near === undefined ? longerNames(name, statement, [...all.keys()]) : [];
      context.findings.push(
        unknownName.at(
          originOf(context, part),
          {
            name,
            what: nameKindWords[kind],
            nearest: near ?? '',
            known: all.size,
            names: [...all.keys()].slice(0, mostNamesSaid),
            ...(longer.length === 0 ? {} : { longer }),
          },
          {
            related:
              meant === undefined
                ? []
                : [{ role: 'nearest', values: { name: near ?? '' }, origin: declaredAt(context, statement, meant) }],
            mends: (near === undefined ? longer : [near]).map((each) => ({
              how: 'use-nearest',
              safe: each === near && isOnlyNear(name, near, all.keys()),
              values: { name: each },
              changes: [{ kind: 'set-name', at: originOf(context, part), name: each }],
            })),
          },
        ),
      );
    }
  }
}

/**
 * The names of which this is the beginning: `"birch ply"` for `"birch ply 3/4"`. Those whose last word the statement says
 * anyhow, such as its thickness, come first.
 */
function longerNames(name: string, statement: Statement, known: readonly string[]): readonly string[] {
  const begins = `${name.trim().toLowerCase()} `;
  if (begins === ' ') return [];
  const said = new Set(statement.parts.map((part) => part.$cstNode?.text));
  const isSaid = (each: string) => said.has(each.split(' ').at(-1));
  return known
    .filter((each) => each.toLowerCase().startsWith(begins))
    .sort((a, b) => Number(isSaid(b)) - Number(isSaid(a)))
    .slice(0, mostLonger);
}

const mostLonger = 3;

/** Where a name is declared, also in another file or in another part of this one. */
function declaredAt(context: ReadContext, from: Statement, declaration: Statement): Origin {
  const piece = pieceOf(declaration);
  if (piece !== undefined && piece !== declaration && piece === pieceOf(from)) return headOrigin(context, declaration);
  return headOrigin({ ...context, unit: entryUnit(declaration) }, declaration);
}

function reportRun(context: ReadContext, statement: Statement, run: readonly Part[]): void {
  const [first, last] = [run[0], run.at(-1)];
  if (first === undefined || last === undefined) return;
  if (unitApartIn(context, statement, run) || sizeOfWhatIn(context, statement, run)) return;
  const { spec } = specOf(statement);
  const words = run
    .map((part) => part.$cstNode?.text ?? '')
    .join(' ')
    .slice(0, 80);
  const candidates = [
    ...spec.phrases.flatMap((phrase) => phrase.items.flatMap((item) => (item.kind === 'word' ? [item.word] : []))),
    ...bodyOf(spec).statements.keys(),
  ];
  const [odd, ...others] = run.filter(isWord).filter((part) => !candidates.includes(part.word.toLowerCase()));
  const meant = odd === undefined || others.length > 0 ? undefined : nearestName(odd.word, candidates);
  if (run.length > 1 && odd !== undefined && meant !== undefined) {
    // One word of a phrase is misspelt: it alone is to blame.
    const at = originOf(context, odd);
    reportWord(context, {
      at,
      whole: at,
      words: odd.word,
      place: placeWords(spec),
      nearest: meant,
      homes: [],
      known: candidates,
    });
    return;
  }
  const shortFor = run.length === 1 ? sayMore(statement, spec, first) : phrasesHalfSaid(statement, spec, run);
  const goesOn = shortFor.length > 0 ? [] : phrasesToGoOnWith(statement, spec, run);
  const typed = isWord(first) ? first.word : '';
  const near = typed === '' ? undefined : nearestName(typed, candidates);
  const at = originOf(context, first, last);
  const isMeant = shortFor.length + goesOn.length > 0;
  reportWord(context, {
    at,
    whole: at,
    words,
    place: placeWords(spec),
    nearest: run.length === 1 && near !== typed ? (near ?? '') : '',
    homes: isMeant || candidates.includes(typed.toLowerCase()) ? [] : homesOfRun(words, typed),
    known: candidates,
    shortFor,
    goesOn,
    beside: wordsBeside(statement),
  });
}

/**
 * A value whose word is missing: `sides 1/2` is short for 'thick 1/2', `shelves 2` for '2 adjustable' or '2 fixed'. A word
 * that is one of several (`left` for 'hinged left'), or that the trade has for them.
 */
function sayMore(statement: Statement, spec: StatementSpec, part: Part): readonly string[] {
  if (isWord(part)) return phrasesOfWord(statement, spec, part.word.toLowerCase());
  const value = part.$cstNode?.text ?? '';
  if (!isExpression(part) || isReference(part) || value.length > mostLetters) return [];
  const said = new Set(readParts(statement, spec).phrases.map((read) => read.phrase.pattern));
  const offers = spec.phrases.filter(
    ({ checked, pattern, items }) => checked && !said.has(pattern) && items.length === 2 && items.some(takesValue),
  );
  // A whole number of what can be counted is hardly anything else.
  const counts = offers.filter(({ pattern }) => pattern.includes('<count>'));
  const likely = /^\d+$/.test(value) && counts.length > 0 ? counts : offers.filter((each) => !counts.includes(each));
  // Of many, none is likelier than another.
  return likely.length > 3 ? [] : likely.map(({ pattern }) => pattern.replace(/<\w+>/, () => value));
}

function takesValue(item: PhraseItem): boolean {
  return item.kind === 'slot' && !item.refers && item.slot !== 'path';
}

/** More would be a list, not a sentence. */
const mostNamesSaid = 5;

/** Words of another statement, or a whole statement that stands where none may. */
function homesOfRun(words: string, first: string): readonly string[] {
  const homes = homesOfPhrase(words);
  return homes.length > 0 ? homes : homesOfStatement(first);
}
