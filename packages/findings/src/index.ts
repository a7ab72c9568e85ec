/** The catalogue of findings: codes, facts, wording, help. Knows nothing of layout, parser or editor. */
export * from './finding.ts';
export { type BoxClash, drawerBoxDoesNotFit } from './catalogue/drawer-box-does-not-fit.ts';
export { frontsDoNotAddUp } from './catalogue/fronts-do-not-add-up.ts';
export { sizesNotPositive } from './catalogue/sizes-not-positive.ts';
export { slideTooLong } from './catalogue/slide-too-long.ts';
