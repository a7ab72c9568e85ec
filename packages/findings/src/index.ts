/** The catalogue of findings: codes, facts, wording, help. Knows nothing of layout, parser or editor. */

export { braceNotClosed } from './catalogue/brace-not-closed.ts';
export { braceNotOpened } from './catalogue/brace-not-opened.ts';
export { dividerOutOfPlace } from './catalogue/divider-out-of-place.ts';
export { type BoxClash, drawerBoxDoesNotFit } from './catalogue/drawer-box-does-not-fit.ts';
export { fileNotFound } from './catalogue/file-not-found.ts';
export { frontsDoNotAddUp } from './catalogue/fronts-do-not-add-up.ts';
export { catalogue } from './catalogue/index.ts';
export { limitsDisagree } from './catalogue/limits-disagree.ts';
export { nameNotClosed } from './catalogue/name-not-closed.ts';
export { notCheckedYet } from './catalogue/not-checked-yet.ts';
export { saidTwice } from './catalogue/said-twice.ts';
export { sameLeadsNowhere } from './catalogue/same-leads-nowhere.ts';
export { shareNotPositive } from './catalogue/share-not-positive.ts';
export { sizeIncomplete } from './catalogue/size-incomplete.ts';
export { sizesNotPositive } from './catalogue/sizes-not-positive.ts';
export { slideTooLong } from './catalogue/slide-too-long.ts';
export { strayMark } from './catalogue/stray-mark.ts';
export { textTooLarge } from './catalogue/text-too-large.ts';
export { thicknessNotKnown } from './catalogue/thickness-not-known.ts';
export { unknownName } from './catalogue/unknown-name.ts';
export { unknownWord } from './catalogue/unknown-word.ts';
export { valueNotGiven } from './catalogue/value-not-given.ts';
export { valueNotUnderstood } from './catalogue/value-not-understood.ts';
export * from './finding.ts';
