import type { Origin } from '@fettle/findings';
import type { Figure } from './figure.ts';

/** What a shop file tells: stock and hardware with the figures of the real thing. */
export interface Stock {
  readonly name: string;
  readonly origin: Origin;
  readonly form: 'sheet' | 'board';
  /** What the yard calls it. */
  readonly nominal?: Figure;
  /** What the caliper says. Fits use this. */
  readonly actual?: Figure;
  /** Sheet length (along the grain) and width, or longest and widest board. */
  readonly length?: Figure;
  readonly width?: Figure;
  readonly grain: 'along-length' | 'none';
  readonly species?: string;
}

export interface SlideEntry {
  readonly name: string;
  readonly origin: Origin;
  readonly mounting: 'side';
  /** Closed length; also the depth of the box it carries. */
  readonly length: Figure;
  /** Space each slide takes beside the box. */
  readonly clearanceEachSide: Figure;
  /** Depth needed behind the inside of the front beyond `length`. */
  readonly extraDepth: Figure;
  /** Height of the slide itself; the box side must be at least this high. */
  readonly height?: Figure;
}
