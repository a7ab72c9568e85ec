import type { FindingKind } from '../finding.ts';
import { braceNotClosed } from './brace-not-closed.ts';
import { braceNotOpened } from './brace-not-opened.ts';
import { cannotBeBoth } from './cannot-be-both.ts';
import { dividerOutOfPlace } from './divider-out-of-place.ts';
import { drawerBoxDoesNotFit } from './drawer-box-does-not-fit.ts';
import { emptyGroup } from './empty-group.ts';
import { fileNeverNeeded } from './file-never-needed.ts';
import { fileNotFound } from './file-not-found.ts';
import { fileUsesItself } from './file-uses-itself.ts';
import { frontsDoNotAddUp } from './fronts-do-not-add-up.ts';
import { frontsMeet } from './fronts-meet.ts';
import { gradingWithoutEffect } from './grading-without-effect.ts';
import { lapBeyondEdge } from './lap-beyond-edge.ts';
import { limitWithoutEffect } from './limit-without-effect.ts';
import { limitsDisagree } from './limits-disagree.ts';
import { looksLikeDifference } from './looks-like-difference.ts';
import { looksLikeMixedNumber } from './looks-like-mixed-number.ts';
import { measuredFarFromPlanned } from './measured-far-from-planned.ts';
import { nameDeclaredTwice } from './name-declared-twice.ts';
import { nameEmpty } from './name-empty.ts';
import { nameHardToRead } from './name-hard-to-read.ts';
import { nameMissing } from './name-missing.ts';
import { nameNotClosed } from './name-not-closed.ts';
import { nameNotOpened } from './name-not-opened.ts';
import { notCheckedYet } from './not-checked-yet.ts';
import { nothingToMake } from './nothing-to-make.ts';
import { offTheRuler } from './off-the-ruler.ts';
import { patternNeverUsed } from './pattern-never-used.ts';
import { rulerOdd } from './ruler-odd.ts';
import { saidTwice } from './said-twice.ts';
import { sameLeadsNowhere } from './same-leads-nowhere.ts';
import { shareNotPositive } from './share-not-positive.ts';
import { sizeAcross } from './size-across.ts';
import { sizeIncomplete } from './size-incomplete.ts';
import { sizeLooksLikeOtherUnit } from './size-looks-like-other-unit.ts';
import { sizeOfWhat } from './size-of-what.ts';
import { sizeSaidInTwoWays } from './size-said-in-two-ways.ts';
import { sizesNotPositive } from './sizes-not-positive.ts';
import { slideTooLong } from './slide-too-long.ts';
import { stockNeverUsed } from './stock-never-used.ts';
import { strayMark } from './stray-mark.ts';
import { textTooLarge } from './text-too-large.ts';
import { thicknessNotKnown } from './thickness-not-known.ts';
import { unitApart } from './unit-apart.ts';
import { unitsMixedInSum } from './units-mixed-in-sum.ts';
import { unknownName } from './unknown-name.ts';
import { unknownWord } from './unknown-word.ts';
import { valueCircle } from './value-circle.ts';
import { valueNeverUsed } from './value-never-used.ts';
import { valueNotGiven } from './value-not-given.ts';
import { valueNotUnderstood } from './value-not-understood.ts';
import { wordBelongsElsewhere } from './word-belongs-elsewhere.ts';

// The facts differ from entry to entry; whoever looks one up by its code hands back the facts it was made with.
// biome-ignore lint/suspicious/noExplicitAny: see above
type AnyKind = FindingKind<any>;

const kinds: readonly AnyKind[] = [
  braceNotClosed,
  braceNotOpened,
  dividerOutOfPlace,
  drawerBoxDoesNotFit,
  fileNotFound,
  frontsDoNotAddUp,
  frontsMeet,
  limitsDisagree,
  nameNotClosed,
  nameNotOpened,
  notCheckedYet,
  saidTwice,
  sameLeadsNowhere,
  shareNotPositive,
  sizeIncomplete,
  sizesNotPositive,
  slideTooLong,
  strayMark,
  textTooLarge,
  thicknessNotKnown,
  unknownName,
  unknownWord,
  valueNotUnderstood,
  valueNotGiven,
  cannotBeBoth,
  emptyGroup,
  fileNeverNeeded,
  fileUsesItself,
  gradingWithoutEffect,
  lapBeyondEdge,
  limitWithoutEffect,
  looksLikeDifference,
  looksLikeMixedNumber,
  measuredFarFromPlanned,
  nameDeclaredTwice,
  nameEmpty,
  nameHardToRead,
  nameMissing,
  nothingToMake,
  offTheRuler,
  patternNeverUsed,
  rulerOdd,
  sizeAcross,
  sizeLooksLikeOtherUnit,
  sizeOfWhat,
  sizeSaidInTwoWays,
  stockNeverUsed,
  unitApart,
  unitsMixedInSum,
  valueCircle,
  valueNeverUsed,
  wordBelongsElsewhere,
];

/** Every entry by its code. */
export const catalogue: ReadonlyMap<string, AnyKind> = new Map(kinds.map((kind) => [kind.code, kind]));
