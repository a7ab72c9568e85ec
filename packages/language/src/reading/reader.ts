import {
  assumed,
  type Figure,
  given,
  type Length,
  type LengthUnit,
  measured,
  Rational,
  type Units,
} from '@fettle/engine';
import { type Finding, type Origin, saidTwice, valueCircle, valueNotUnderstood } from '@fettle/findings';
import type { AstNode, LangiumDocument, LangiumDocuments } from 'langium';
import { type Expression, isExpression, isReference, type Part, type Statement } from '../generated/ast.ts';
import { circleIsToldIn } from '../names/circles-of-values.ts';
import { specOf } from '../names/declarations.ts';
import { findName, nameKindOfSlot } from '../names/visible-names.ts';
import type { NameKind, StatementSpec } from '../schema/index.ts';
import { saysWhatHoldsIt } from './inside-braces.ts';
import { expressionIn, type ReadPhrase, readParts } from './phrases.ts';
import { asLength, evaluateExpression, type Value, type ValueProblem } from './values.ts';

/**
 * The reader's view of a piece or of a shop entry: phrases become figures with origins, and whatever cannot be read
 * becomes a finding. Origins count from the start of the unit, so that a line above it changes nothing inside.
 */
export interface TextUnit {
  readonly id: string;
  readonly start: number;
  readonly document: LangiumDocument;
}

export interface ReadContext {
  readonly documents: LangiumDocuments;
  readonly unit: TextUnit;
  readonly units: Units;
  readonly findings: Finding[];
  /** Texts of other units that were read for this one. */
  readonly touched: Set<Statement>;
  /** While a pattern is read for one piece: what that piece gives for each `takes`. */
  readonly given?: ReadonlyMap<Statement, GivenValue>;
}

export interface GivenValue {
  readonly value: Value;
  /** Where the piece says it. */
  readonly origin: Origin;
}

export function originOf(context: ReadContext, from: AstNode, to: AstNode = from): Origin {
  const start = from.$cstNode?.offset ?? context.unit.start;
  const end = to.$cstNode?.end ?? start;
  return { unit: context.unit.id, start: start - context.unit.start, end: end - context.unit.start };
}

/** The word of a statement and its name: what is underlined when the statement as a whole is to blame. */
export function headOrigin(context: ReadContext, statement: Statement): Origin {
  const cst = statement.$cstNode;
  const start = cst?.offset ?? context.unit.start;
  const last = statement.parts.at(-1)?.$cstNode?.end;
  const text = cst?.text ?? '';
  const head = /^[^\s{]*(?:\s+["“][^"”\n{]*["”]?)?/.exec(text)?.[0].length ?? 0;
  const end = statement.head === undefined && last !== undefined ? last : start + Math.max(head, 1);
  return { unit: context.unit.id, start: start - context.unit.start, end: end - context.unit.start };
}

/** The last of what a statement says before its brace: what is added to it follows there. */
export function endOfHead(context: ReadContext, statement: Statement): Origin {
  const last = statement.parts.at(-1);
  return last === undefined ? headOrigin(context, statement) : originOf(context, last);
}

/** One statement, read by the phrases of its vocabulary entry. `Pattern` keeps misspelt phrases out of the code. */
export class Reader<Pattern extends string> {
  readonly statement: Statement;
  readonly context: ReadContext;
  readonly #phrases: ReadonlyMap<string, ReadPhrase>;

  constructor(statement: Statement, _spec: StatementSpec<Pattern>, context: ReadContext) {
    this.statement = statement;
    this.context = context;
    const phrases = new Map<string, ReadPhrase>();
    // A misspelt word was taken for its neighbour, so the statement's own entry counts.
    for (const read of readParts(statement, specOf(statement).spec).phrases) {
      if (!phrases.has(read.phrase.pattern)) phrases.set(read.phrase.pattern, read);
    }
    this.#phrases = phrases;
  }

  get origin(): Origin {
    return headOrigin(this.context, this.statement);
  }

  has(pattern: Pattern): boolean {
    return this.#phrases.has(pattern);
  }

  /** Whether some of its words are in no phrase. */
  get hasUnread(): boolean {
    return readParts(this.statement, specOf(this.statement).spec).unread.length > 0;
  }

  /** The words of a phrase, from the first to the last. */
  originOf(pattern: Pattern): Origin | undefined {
    const read = this.#phrases.get(pattern);
    const [first, last] = [read?.parts[0], read?.parts.at(-1)];
    return first === undefined || last === undefined ? undefined : originOf(this.context, first, last);
  }

  /** The length in the first slot, as written. Undefined when the phrase is absent or holds no length. */
  length(...patterns: Pattern[]): Figure | undefined {
    for (const pattern of patterns) {
      const expression = expressionIn(this.#phrases.get(pattern));
      if (expression !== undefined) return readLength(this.context, expression);
    }
    return undefined;
  }

  /** The lengths in all slots of a phrase, in their order; empty when the phrase is absent. */
  lengths(pattern: Pattern): readonly (Figure | undefined)[] {
    const read = this.#phrases.get(pattern);
    return (read?.slots ?? []).map((_slot, at) => {
      const expression = expressionIn(read, at);
      return expression === undefined ? undefined : readLength(this.context, expression);
    });
  }

  /** The words in the first slot of a phrase. */
  slotOrigin(pattern: Pattern): Origin | undefined {
    const slot = this.#phrases.get(pattern)?.slots[0];
    return slot === undefined ? undefined : originOf(this.context, slot);
  }

  /** As `length`, or what the trade would take for granted. */
  lengthOr(fallback: Length, because: string, ...patterns: Pattern[]): Figure {
    return this.length(...patterns) ?? assumed(fallback, because);
  }

  measured(...patterns: Pattern[]): Figure | undefined {
    const figure = this.length(...patterns);
    return figure?.reason.kind === 'given' ? measured(figure.length, figure.reason.origin) : figure;
  }

  number(pattern: Pattern): Rational | undefined {
    const expression = expressionIn(this.#phrases.get(pattern));
    return expression === undefined ? undefined : readNumber(this.context, expression, 'number');
  }

  /** A whole number, not negative. */
  count(pattern: Pattern): number | undefined {
    const expression = expressionIn(this.#phrases.get(pattern));
    return expression === undefined ? undefined : readNumber(this.context, expression, 'count')?.toNumber();
  }

  /** Each time one of these phrases is said, with the name and the value in it. */
  named(...patterns: Pattern[]): readonly { readonly statement: Statement; readonly expression: Expression }[] {
    const { spec } = specOf(this.statement);
    return readParts(this.statement, spec).phrases.flatMap((read) => {
      const [name, value] = read.slots;
      if (!patterns.includes(read.phrase.pattern as Pattern) || name === undefined || !isReference(name)) return [];
      const kind = slotKind(read, name);
      const found = findName(
        this.context.documents,
        this.context.unit.document,
        this.statement,
        kind,
        name.target.$refText,
      );
      return found === undefined || value === undefined || !isExpression(value)
        ? []
        : [{ statement: found.statement, expression: value }];
    });
  }

  /** The statement that declares the name in the phrase's first name slot, and the words of that name. */
  target(
    ...patterns: Pattern[]
  ): { readonly statement: Statement; readonly name: string; readonly origin: Origin } | undefined {
    for (const pattern of patterns) {
      const part = this.#phrases.get(pattern)?.slots.find(isReference);
      if (part === undefined) continue;
      const kind = slotKind(this.#phrases.get(pattern), part);
      const found = findName(
        this.context.documents,
        this.context.unit.document,
        this.statement,
        kind,
        part.target.$refText,
      );
      if (found !== undefined) {
        return { statement: found.statement, name: found.name, origin: originOf(this.context, part) };
      }
    }
    return undefined;
  }
}

/** The kind of name a part of this phrase stands for. */
export function slotKind(read: ReadPhrase | undefined, part: Part): NameKind {
  let slot = 0;
  for (const item of read?.phrase.items ?? []) {
    if (item.kind === 'word') continue;
    if (read?.slots[slot] === part) return nameKindOfSlot(item.slot);
    slot++;
  }
  return 'value';
}

/** Statements of a body by their vocabulary word; a misspelt word counts as the one it was taken for. */
export function bodyStatements(statement: Statement | undefined, word: string): Statement[] {
  const isMeant = (each: Statement): boolean => {
    const { spec, exact } = specOf(each);
    return spec.word === word && (exact || !saysWhatHoldsIt(each));
  };
  return statement?.statements.filter(isMeant) ?? [];
}

/** The one statement of this word; a second one is said to count for nothing. */
export function onlyStatement(
  context: ReadContext,
  statement: Statement | undefined,
  word: string,
): Statement | undefined {
  const [first, ...rest] = bodyStatements(statement, word);
  for (const again of rest) {
    context.findings.push(
      saidTwice.at(
        headOrigin(context, again),
        { words: again.head ?? word },
        {
          related: first === undefined ? [] : [{ role: 'first', values: {}, origin: headOrigin(context, first) }],
          mends: [
            {
              how: 'remove',
              safe: true,
              values: { words: word },
              changes: [{ kind: 'remove', at: originOf(context, again) }],
            },
          ],
        },
      ),
    );
  }
  return first;
}

/** A value as it stands, for what a piece gives to its pattern. */
export function readValue(context: ReadContext, expression: Expression): Value {
  const value = evaluateExpression(expression, (at) => namedValue(context, at, new Set()), context.units.unit);
  if (value.kind === 'problem') reportValue(context, expression, 'length', value.problem, value.at);
  return value.kind === 'number' ? { unit: context.units.unit, ...value } : value;
}

export function readLength(context: ReadContext, expression: Expression): Figure | undefined {
  const value = evaluateExpression(
    expression,
    (reference) => namedValue(context, reference, new Set()),
    context.units.unit,
  );
  if (value.kind === 'problem') {
    reportValue(context, expression, 'length', value.problem, value.at);
    return undefined;
  }
  const length = asLength(value, context.units.unit);
  return given(length, saidBy(context, expression)?.origin ?? originOf(context, expression));
}

/** What a piece gives for the value that stands here alone: its words are the ones to change. */
function saidBy(context: ReadContext, expression: Expression): GivenValue | undefined {
  if (!isReference(expression) || context.given === undefined) return undefined;
  const statement = containingStatement(expression);
  const found =
    statement && findName(context.documents, context.unit.document, statement, 'value', expression.target.$refText);
  return found && context.given.get(found.statement);
}

export function readNumber(
  context: ReadContext,
  expression: Expression,
  wanted: 'number' | 'count',
): Rational | undefined {
  const value = evaluateExpression(
    expression,
    (reference) => namedValue(context, reference, new Set()),
    context.units.unit,
  );
  if (value.kind === 'problem') {
    reportValue(context, expression, wanted, value.problem, value.at);
    return undefined;
  }
  if (value.kind === 'length') {
    reportValue(context, expression, wanted, 'length-for-number', expression);
    return undefined;
  }
  if (wanted === 'count' && (!value.number.isWhole() || value.number.sign() < 0)) {
    reportValue(context, expression, wanted, 'not-whole', expression);
    return undefined;
  }
  if (wanted === 'count' && value.number.toNumber() > 1000) {
    reportValue(context, expression, wanted, 'too-large', expression);
    return undefined;
  }
  return value.number;
}

function reportValue(
  context: ReadContext,
  expression: Expression,
  wanted: 'length' | 'number' | 'count',
  problem: ValueProblem,
  at: Expression,
): void {
  // The unknown name has a finding of its own.
  if (problem === 'unknown-name') return;
  if (problem === 'circle') {
    // Told where its first value stands, unless that is another file.
    if (!isReference(at) || circleIsToldIn(context.documents, context.unit.document, at)) return;
    context.findings.push(valueCircle.at(originOf(context, at), { names: [at.target.$refText] }));
    return;
  }
  const words = (expression.$cstNode?.text ?? '').slice(0, 60);
  context.findings.push(valueNotUnderstood.at(originOf(context, at), { words, wanted, problem }));
}

/** The value a quoted name stands for. Its own units are those of the file that declares it. */
function namedValue(
  context: ReadContext,
  reference: Expression & { readonly $type: 'Reference' },
  above: ReadonlySet<Statement>,
): ReturnType<typeof evaluateExpression> {
  const statement = containingStatement(reference);
  const found =
    statement === undefined
      ? undefined
      : findName(context.documents, context.unit.document, statement, 'value', reference.target.$refText);
  if (found === undefined) return { kind: 'problem', problem: 'unknown-name', at: reference };
  if (above.has(found.statement) || above.size > 50) return { kind: 'problem', problem: 'circle', at: reference };
  const said = context.given?.get(found.statement);
  if (said !== undefined) return said.value;
  context.touched.add(found.statement);
  const { spec } = specOf(found.statement);
  const expression = expressionIn(readParts(found.statement, spec).phrases[0]);
  if (expression === undefined) return { kind: 'problem', problem: 'unknown-name', at: reference };
  const deeper = new Set([...above, found.statement]);
  const value = evaluateExpression(
    expression,
    (inner) => namedValue(context, inner, deeper),
    unitsAt(found.statement).unit,
  );
  if (value.kind === 'problem') return { ...value, at: reference };
  const { unit } = unitsAt(found.statement);
  // A bare number of a text in other units is a length of that text.
  return value.kind === 'number' && unit !== context.units.unit ? { unit, ...value } : value;
}

function containingStatement(node: AstNode): Statement | undefined {
  let at: AstNode | undefined = node;
  while (at !== undefined && at.$type !== 'Statement') at = at.$container;
  return at as Statement | undefined;
}

const unitWords: Readonly<Record<string, LengthUnit>> = { inches: 'in', mm: 'mm', cm: 'cm', feet: 'ft' };
const defaultRulers: Readonly<Record<LengthUnit, Rational>> = {
  in: Rational.of(1, 32),
  mm: Rational.of(1, 2),
  cm: Rational.of(1, 20),
  ft: Rational.of(1, 384),
};

/** The units that hold at a statement: those of its piece, else of its file, else inches. */
export function unitsAt(node: AstNode): Units {
  let at: AstNode | undefined = node;
  while (at !== undefined) {
    const found: Statement | undefined = (at as { statements?: Statement[] }).statements?.find(
      (each) => each.head?.toLowerCase() === 'units',
    );
    if (found !== undefined) return unitsOf(found);
    at = at.$container;
  }
  return { unit: 'in', ruler: defaultRulers.in };
}

const knownUnits = new WeakMap<Statement, Units>();

/** Of its own words alone, so they are read once: every piece of a text asks. */
function unitsOf(statement: Statement): Units {
  const known = knownUnits.get(statement);
  if (known !== undefined) return known;
  const { unit, ruler } = rulerOf(statement);
  const units = { unit, ruler: ruler !== undefined && ruler.sign() > 0 ? ruler : defaultRulers[unit] };
  knownUnits.set(statement, units);
  return units;
}

/** What a `units` statement says: its unit, and the finest mark as far as it can be read; it may be zero or negative. */
export function rulerOf(statement: Statement): { readonly unit: LengthUnit; readonly ruler: Rational | undefined } {
  const { phrases } = readParts(statement, specOf(statement).spec);
  const unit = phrases.map((read) => unitWords[read.phrase.pattern]).find((each) => each !== undefined) ?? 'in';
  const to = expressionIn(phrases.find((read) => read.phrase.pattern === 'to <number>'));
  if (to === undefined) return { unit, ruler: defaultRulers[unit] };
  const value = evaluateExpression(to, (at) => ({ kind: 'problem', problem: 'unknown-name', at }), unit);
  const ruler = value.kind === 'number' ? value.number : value.kind === 'length' ? value.length.in(unit) : undefined;
  return { unit, ruler };
}
