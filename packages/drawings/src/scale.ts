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
  /** Lying on its long side, in mm. */
  readonly width: number;
  readonly height: number;
}

/** ISO 216 and 5457: A4 210 x 297, A3 297 x 420 mm. */
export const METRIC_SHEETS: readonly Sheet[] = [
  { name: 'A4', width: 297, height: 210 },
  { name: 'A3', width: 420, height: 297 },
];
/** ASME Y14.1: A 8.5 x 11, B 11 x 17 inches. */
export const INCH_SHEETS: readonly Sheet[] = [
  { name: 'Letter', width: 279.4, height: 215.9 },
  { name: 'Tabloid', width: 431.8, height: 279.4 },
];

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
