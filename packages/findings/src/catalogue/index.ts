import type { FindingKind } from '../finding.ts';
import { braceNotClosed } from './brace-not-closed.ts';
import { braceNotOpened } from './brace-not-opened.ts';
import { dividerOutOfPlace } from './divider-out-of-place.ts';
import { drawerBoxDoesNotFit } from './drawer-box-does-not-fit.ts';
import { fileNotFound } from './file-not-found.ts';
import { frontsDoNotAddUp } from './fronts-do-not-add-up.ts';
import { limitsDisagree } from './limits-disagree.ts';
import { nameNotClosed } from './name-not-closed.ts';
import { notCheckedYet } from './not-checked-yet.ts';
import { saidTwice } from './said-twice.ts';
import { sameLeadsNowhere } from './same-leads-nowhere.ts';
import { shareNotPositive } from './share-not-positive.ts';
import { sizeIncomplete } from './size-incomplete.ts';
import { sizesNotPositive } from './sizes-not-positive.ts';
import { slideTooLong } from './slide-too-long.ts';
import { strayMark } from './stray-mark.ts';
import { textTooLarge } from './text-too-large.ts';
import { thicknessNotKnown } from './thickness-not-known.ts';
import { unknownName } from './unknown-name.ts';
import { unknownWord } from './unknown-word.ts';
import { valueNotGiven } from './value-not-given.ts';
import { valueNotUnderstood } from './value-not-understood.ts';

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
  limitsDisagree,
  nameNotClosed,
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
];

/** Every entry by its code. */
export const catalogue: ReadonlyMap<string, AnyKind> = new Map(kinds.map((kind) => [kind.code, kind]));
