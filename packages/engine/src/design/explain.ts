import type { Origin, Say } from '@fettle/findings';
import { asFactor } from '../length/products.ts';
import { Rational } from '../length/rational.ts';
import type { Figure, Operand, Reason } from './figure.ts';

/**
 * Says in plain words how a figure came about. Words are made only here and only when asked for; how a length is
 * written is the edge's business and comes in through `say`.
 */

/** Terms of terms of terms: deeper than this nobody reads on. */
const DEEPEST = 4;
const MOST_LINES = 16;
const MOST_TERMS = 12;

/** Where something is written, in words: 'written in line 12'; undefined where that cannot be told. */
export type TellPlace = (origin: Origin) => string | undefined;

/**
 * Several lines, the first for the figure itself, the following, indented, for its terms:
 *
 *     57" = 58-1/2" (width of the body) − 2 × 3/4" (thickness of the sides)
 *       58-1/2" (width of the body) = 60" (width of the piece) − 2 × 3/4" (overhang at each end)
 *         60" (width of the piece): written here
 *
 * `where` names the place of what was written. Never throws; at most 16 lines, whatever the depth of the derivation.
 */
export function explain(figure: Figure, say: Say, where: TellPlace = () => undefined): string {
  const lines: string[] = [];
  const told = new Set<Figure>();
  tell(figure, undefined, 0, { say, where }, lines, told);
  return lines.join('\n');
}

function tell(
  figure: Figure,
  label: string | undefined,
  depth: number,
  words: { readonly say: Say; readonly where: TellPlace },
  lines: string[],
  told: Set<Figure>,
): void {
  if (lines.length >= MOST_LINES || told.has(figure)) return;
  told.add(figure);
  const { say, where } = words;
  const subject = `${'  '.repeat(depth)}${say.length(figure.length)}${label === undefined ? '' : ` (${label})`}`;
  const reason = figure.reason;
  if (reason.kind !== 'derived') {
    lines.push(`${subject}: ${leafWords(reason, say, where)}`);
    return;
  }
  const terms = reason.operands.filter((operand) => !operand.figure.length.isZero());
  lines.push(`${subject}${sumWords(reason.rule, terms, say)}`);
  if (depth + 1 >= DEEPEST) return;
  for (const term of terms.slice(0, MOST_TERMS)) tell(term.figure, term.label, depth + 1, words, lines, told);
}

function sumWords(rule: string, terms: readonly Operand[], say: Say): string {
  const counted = terms.filter((term) => term.sign !== '');
  const named = terms.filter((term) => term.sign === '');
  const first = counted[0];
  const plain = counted.length === 1 && first !== undefined && first.sign === '+' && first.times === undefined;
  let words: string;
  if (first === undefined || plain) {
    words = `: ${rule}`;
  } else {
    words = ` = ${counted
      .slice(0, MOST_TERMS)
      .map((term, at) => termWords(term, at === 0, say))
      .join(' ')}`;
    if (counted.length > MOST_TERMS) words += ` and ${counted.length - MOST_TERMS} more`;
  }
  for (const term of named.slice(0, MOST_TERMS)) words += `; ${term.label}: ${say.length(term.figure.length)}`;
  return words;
}

function termWords(term: Operand, isFirst: boolean, say: Say): string {
  const sign = term.sign === '-' ? '− ' : isFirst ? '' : '+ ';
  const times = timesWords(term.times);
  const length = say.length(term.figure.length);
  // Taken away, a sum needs its brackets as much as multiplied.
  const shown = times === '' && term.sign !== '-' ? length : asFactor(length);
  return `${sign}${times}${shown} (${term.label})`;
}

function timesWords(times: Operand['times']): string {
  if (times === undefined) return '';
  if (typeof times === 'number') return times === 1 ? '' : `${times} × `;
  if (times.equals(Rational.one)) return '';
  if (times.isWhole()) return `${times} × `;
  if (times.equals(Rational.of(1, 2))) return 'half of ';
  return times.abs().compare(Rational.one) < 0 ? `${times} of ` : `${mixedNumber(times)} × `;
}

/** '1-1/2', as a maker says it; no whole number. */
function mixedNumber(value: Rational): string {
  const size = value.abs();
  const whole = size.floor();
  return `${value.sign() < 0 ? '−' : ''}${whole}-${size.minus(whole)}`;
}

function leafWords(reason: Exclude<Reason, { kind: 'derived' }>, say: Say, where: TellPlace): string {
  switch (reason.kind) {
    case 'given':
      return where(reason.origin) ?? 'written here';
    case 'measured':
      return reason.planned === undefined ? 'measured' : `measured; ${say.length(reason.planned.length)} was planned`;
    case 'shop':
      return `from shop entry ${say.name(reason.entry)}`;
    case 'assumed':
      return `assumed: ${reason.because}`;
    default: {
      const unknown: never = reason;
      return String(unknown);
    }
  }
}
