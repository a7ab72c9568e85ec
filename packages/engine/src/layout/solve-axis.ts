import type { Figure } from '../design/figure.ts';
import type { AxisRequest, AxisResult } from './axis.ts';

/** Sizes of all cells of one row or stack. */
export declare function solveAxis(request: AxisRequest): AxisResult;

/** What all cells and boundaries need together when every cell's size is written or measured; undefined otherwise. */
export declare function rigidTotal(request: Pick<AxisRequest, 'cells' | 'boundaries' | 'sameAs'>): Figure | undefined;
