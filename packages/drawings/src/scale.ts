/**
 * Standard scales and sheets. Knows nothing of what is drawn.
 */

export interface Scale {
  /** 10 for 1 : 10. */
  readonly denominator: number;
  readonly words: string;
}

export interface Sheet {
  readonly name: string;
  /** In mm. */
  readonly width: number;
  readonly height: number;
}

/** Lying on its long side. ISO 216 and 5457: A4 210 x 297, A3 297 x 420 mm. */
export const METRIC_SHEETS: readonly Sheet[] = [
  { name: 'A4', width: 297, height: 210 },
  { name: 'A3', width: 420, height: 297 },
];
/** Lying on its long side. ASME Y14.1: A 8.5 x 11, B 11 x 17 inches. */
export const INCH_SHEETS: readonly Sheet[] = [
  { name: 'Letter', width: 279.4, height: 215.9 },
  { name: 'Tabloid', width: 431.8, height: 279.4 },
];

/** So much higher than wide, a view is larger on a sheet that stands, for all the dimensions on either side of it. */
const STANDS = 1.6;

/** The smaller sheet and the larger one, as a view of these sizes wants them: standing for a tall and narrow one. */
export function sheetsFor(isInch: boolean, wide: number, high: number): readonly [small: Sheet, large: Sheet] {
  const [small, large] = isInch ? INCH_SHEETS : METRIC_SHEETS;
  if (small === undefined || large === undefined) throw new Error('two sheets are listed for either system of units');
  if (!(high > wide * STANDS)) return [small, large];
  const stood = ({ name, width, height }: Sheet): Sheet => ({ name, width: height, height: width });
  return [stood(small), stood(large)];
}

/** ISO 5455 (from memory): 1, 2 and 5 with their tens. */
function metricScales(): Scale[] {
  const scales: Scale[] = [];
  for (let power = 0; power <= 12; power++) {
    for (const digit of [1, 2, 5]) {
      const denominator = digit * 10 ** power;
      scales.push({ denominator, words: `1 : ${denominator}` });
    }
  }
  return scales;
}

/** Inches to the foot as found on a triangular scale (common practice, no source), then ISO's beyond them. */
function inchScales(): Scale[] {
  const perFoot: readonly (readonly [string, number])[] = [
    ['6"', 2],
    ['3"', 4],
    ['1-1/2"', 8],
    ['1"', 12],
    ['3/4"', 16],
    ['1/2"', 24],
    ['3/8"', 32],
    ['1/4"', 48],
    ['3/16"', 64],
    ['1/8"', 96],
    ['3/32"', 128],
    ['1/16"', 192],
  ];
  return [
    { denominator: 1, words: 'full size' },
    ...perFoot.map(([inches, denominator]) => ({ denominator, words: `${inches} = 1'-0" (1 : ${denominator})` })),
    ...metricScales().filter((scale) => scale.denominator > 192),
  ];
}

/** Largest picture first. */
export const METRIC_SCALES: readonly Scale[] = metricScales();
export const INCH_SCALES: readonly Scale[] = inchScales();
