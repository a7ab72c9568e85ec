import type { Origin } from '@fettle/findings';
import { Length } from '../length/length.ts';
import type { WholeOrRational } from '../length/rational.ts';
import type { Figure, Operand } from './figure.ts';

/**
 * How figures come to be. A sum is computed and recorded in one go, so what a figure says of itself and what it is can
 * never differ. Knows nothing of what the figures are figures of.
 */

/** A length written in the text at `origin`. */
export function given(length: Length, origin: Origin): Figure {
  return { length, reason: { kind: 'given', origin } };
}

/** A length found with a ruler and written down at `origin`; `planned` is what stood there before. */
export function measured(length: Length, origin: Origin, planned?: Figure): Figure {
  return {
    length,
    reason: planned === undefined ? { kind: 'measured', origin } : { kind: 'measured', origin, planned },
  };
}

/** A length read from the shop entry called `entry`, which stands at `origin`. */
export function fromShop(length: Length, entry: string, origin: Origin): Figure {
  return { length, reason: { kind: 'shop', entry, origin } };
}

/** A habit of the trade where the text says nothing; `because` is a short sentence. */
export function assumed(length: Length, because: string): Figure {
  return { length, reason: { kind: 'assumed', because } };
}

/**
 * The sum of the signed operands; operands with an empty sign are recorded and not counted. No operands make zero.
 * `rule` says in a short phrase what the sum is.
 */
export function derive(rule: string, operands: readonly Operand[]): Figure {
  let total = Length.zero;
  for (const operand of operands) {
    if (operand.sign === '') continue;
    const term = operand.times === undefined ? operand.figure.length : operand.figure.length.times(operand.times);
    total = operand.sign === '+' ? total.plus(term) : total.minus(term);
  }
  return { length: total, reason: { kind: 'derived', rule, operands } };
}

export function plus(label: string, figure: Figure, times?: WholeOrRational): Operand {
  return times === undefined ? { sign: '+', label, figure } : { sign: '+', label, figure, times };
}

export function less(label: string, figure: Figure, times?: WholeOrRational): Operand {
  return times === undefined ? { sign: '-', label, figure } : { sign: '-', label, figure, times };
}

/** Named beside the sum, not counted in it. */
export function beside(label: string, figure: Figure): Operand {
  return { sign: '', label, figure };
}

/**
 * The words at the bottom of a figure's largest term: where a maker would change it. Follows the first added term of
 * each sum. Undefined when the trail ends in an assumption.
 */
export function rootOrigin(figure: Figure): Origin | undefined {
  let current = figure;
  for (;;) {
    const reason = current.reason;
    switch (reason.kind) {
      case 'given':
      case 'measured':
      case 'shop':
        return reason.origin;
      case 'assumed':
        return undefined;
      case 'derived': {
        const first = reason.operands.find((operand) => operand.sign === '+');
        if (first === undefined) return undefined;
        current = first.figure;
        break;
      }
      default: {
        const unknown: never = reason;
        return unknown;
      }
    }
  }
}
