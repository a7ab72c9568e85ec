import type { FindingKind } from '../finding.ts';
import { anchorToWall } from './anchor-to-wall.ts';
import { braceNotClosed } from './brace-not-closed.ts';
import { braceNotOpened } from './brace-not-opened.ts';
import { cannotBeBoth } from './cannot-be-both.ts';
import { cannotFollowInSequence } from './cannot-follow-in-sequence.ts';
import { caseGainTooDeep } from './case-gain-too-deep.ts';
import { clearanceIsNoFloat } from './clearance-is-no-float.ts';
import { cleatsTooHigh } from './cleats-too-high.ts';
import { closingEdgeNeedsBevel } from './closing-edge-needs-bevel.ts';
import { compartmentsDoNotFit } from './compartments-do-not-fit.ts';
import { contentsDoNotFit } from './contents-do-not-fit.ts';
import { crosscutTooLong } from './crosscut-too-long.ts';
import { crosscutTooWide } from './crosscut-too-wide.ts';
import { cupBeyondStile } from './cup-beyond-stile.ts';
import { cupDistanceOutside } from './cup-distance-outside.ts';
import { cupTooDeep } from './cup-too-deep.ts';
import { dadoTooDeep } from './dado-too-deep.ts';
import { detailWithoutJoint } from './detail-without-joint.ts';
import { dividerOutOfPlace } from './divider-out-of-place.ts';
import { doorHingedOnNothing } from './door-hinged-on-nothing.ts';
import { doorTooWide } from './door-too-wide.ts';
import { doorWiderThanHigh } from './door-wider-than-high.ts';
import { dowelDoesNotSuit } from './dowel-does-not-suit.ts';
import { dowelHoldsTooLittle } from './dowel-holds-too-little.ts';
import { drawerBottomTooLow } from './drawer-bottom-too-low.ts';
import { drawerBottomTooThick } from './drawer-bottom-too-thick.ts';
import { drawerBoxDoesNotFit } from './drawer-box-does-not-fit.ts';
import { drawerCannotBeLiftedIn } from './drawer-cannot-be-lifted-in.ts';
import { drawerTooWideForItsDepth } from './drawer-too-wide-for-its-depth.ts';
import { drawerWithoutPlay } from './drawer-without-play.ts';
import { drawersWithoutSlides } from './drawers-without-slides.ts';
import { edgingAcrossGrain } from './edging-across-grain.ts';
import { edgingLeavesNoCore } from './edging-leaves-no-core.ts';
import { emptyGroup } from './empty-group.ts';
import { faceFrameNotSolid } from './face-frame-not-solid.ts';
import { faceFrameTooThin } from './face-frame-too-thin.ts';
import { featuresMeet } from './features-meet.ts';
import { fileNeverNeeded } from './file-never-needed.ts';
import { fileNotFound } from './file-not-found.ts';
import { fileUsesItself } from './file-uses-itself.ts';
import { floorIsOpenFrame } from './floor-is-open-frame.ts';
import { footCannotTaper } from './foot-cannot-taper.ts';
import { frontSizeNotMet } from './front-size-not-met.ts';
import { frontTooLow } from './front-too-low.ts';
import { frontsDoNotAddUp } from './fronts-do-not-add-up.ts';
import { frontsMeet } from './fronts-meet.ts';
import { gapUnusual } from './gap-unusual.ts';
import { glassNotSaidSafe } from './glass-not-said-safe.ts';
import { gradingWithoutEffect } from './grading-without-effect.ts';
import { grooveBreaksOut } from './groove-breaks-out.ts';
import { grooveTooDeep } from './groove-too-deep.ts';
import { halfMarkedRemark } from './half-marked-remark.ts';
import { hangsOnWall } from './hangs-on-wall.ts';
import { hingeDoorThickness } from './hinge-door-thickness.ts';
import { hingeDoorTooHigh } from './hinge-door-too-high.ts';
import { hingeDoorTooWide } from './hinge-door-too-wide.ts';
import { hingeLeafTooWide } from './hinge-leaf-too-wide.ts';
import { hingeReachAssumed } from './hinge-reach-assumed.ts';
import { hingeScrewsInEdging } from './hinge-screws-in-edging.ts';
import { hingeSideNotSaid } from './hinge-side-not-said.ts';
import { hingeThinnerThanGap } from './hinge-thinner-than-gap.ts';
import { hingeWrongFit } from './hinge-wrong-fit.ts';
import { hingesAtOtherEdge } from './hinges-at-other-edge.ts';
import { hingesDoNotFit } from './hinges-do-not-fit.ts';
import { hingesNotPlaced } from './hinges-not-placed.ts';
import { hungCaseNotJoined } from './hung-case-not-joined.ts';
import { hungWithBase } from './hung-with-base.ts';
import { hungWithoutNailer } from './hung-without-nailer.ts';
import { hyphenLeftOut } from './hyphen-left-out.ts';
import { insideDrawerMeetsDoor } from './inside-drawer-meets-door.ts';
import { insideDrawerMeetsHinge } from './inside-drawer-meets-hinge.ts';
import { insidePullMeetsDoor } from './inside-pull-meets-door.ts';
import { jointBreaksThrough } from './joint-breaks-through.ts';
import { jointNotThere } from './joint-not-there.ts';
import { jointThroughEdging } from './joint-through-edging.ts';
import { jointWithoutSize } from './joint-without-size.ts';
import { kerfNotOfABlade } from './kerf-not-of-a-blade.ts';
import { lapBeyondEdge } from './lap-beyond-edge.ts';
import { lidCanFall } from './lid-can-fall.ts';
import { lidHingesNotPlaced } from './lid-hinges-not-placed.ts';
import { lidMeetsWall } from './lid-meets-wall.ts';
import { lidSupportHalfTold } from './lid-support-half-told.ts';
import { lidSupportNotPlaced } from './lid-support-not-placed.ts';
import { lidSupportTooStrong } from './lid-support-too-strong.ts';
import { lidSupportTooWeak } from './lid-support-too-weak.ts';
import { lidWithoutSupport } from './lid-without-support.ts';
import { limitWithoutEffect } from './limit-without-effect.ts';
import { limitsDisagree } from './limits-disagree.ts';
import { looksLikeDifference } from './looks-like-difference.ts';
import { looksLikeMixedNumber } from './looks-like-mixed-number.ts';
import { measuredFarFromPlanned } from './measured-far-from-planned.ts';
import { mitreWithoutCorner } from './mitre-without-corner.ts';
import { nailerNotJoined } from './nailer-not-joined.ts';
import { nailerTooSmall } from './nailer-too-small.ts';
import { nailerWithoutRoom } from './nailer-without-room.ts';
import { nameDeclaredTwice } from './name-declared-twice.ts';
import { nameEmpty } from './name-empty.ts';
import { nameHardToRead } from './name-hard-to-read.ts';
import { nameMissing } from './name-missing.ts';
import { nameNotClosed } from './name-not-closed.ts';
import { nameNotOpened } from './name-not-opened.ts';
import { noCutterForGroove } from './no-cutter-for-groove.ts';
import { noRoomForCentreRunner } from './no-room-for-centre-runner.ts';
import { noToolForJoint } from './no-tool-for-joint.ts';
import { notCheckedYet } from './not-checked-yet.ts';
import { notchCutsFrame } from './notch-cuts-frame.ts';
import { nothingToCatchOn } from './nothing-to-catch-on.ts';
import { nothingToMake } from './nothing-to-make.ts';
import { offTheRuler } from './off-the-ruler.ts';
import { offcutLargerThanStock } from './offcut-larger-than-stock.ts';
import { openDoorsMeet } from './open-doors-meet.ts';
import { packerDoesNotFit } from './packer-does-not-fit.ts';
import { pairNotInOne } from './pair-not-in-one.ts';
import { paneDoesNotFit } from './pane-does-not-fit.ts';
import { panelFillsFrame } from './panel-fills-frame.ts';
import { panelLeavesGroove } from './panel-leaves-groove.ts';
import { partLongerThanStock } from './part-longer-than-stock.ts';
import { partNarrowerThanKerf } from './part-narrower-than-kerf.ts';
import { partTooNarrowForMachine } from './part-too-narrow-for-machine.ts';
import { partTooShortForMachine } from './part-too-short-for-machine.ts';
import { partWiderThanStock } from './part-wider-than-stock.ts';
import { partitionTooHigh } from './partition-too-high.ts';
import { patternNeverUsed } from './pattern-never-used.ts';
import { pinHoleTooDeep } from './pin-hole-too-deep.ts';
import { pinHolesTooNear } from './pin-holes-too-near.ts';
import { pinRowMeetsCut } from './pin-row-meets-cut.ts';
import { pinRowOffShelf } from './pin-row-off-shelf.ts';
import { pinRowTooShort } from './pin-row-too-short.ts';
import { pinRowWithoutWood } from './pin-row-without-wood.ts';
import { pinsWithoutSize } from './pins-without-size.ts';
import { priceNegative } from './price-negative.ts';
import { pullOffFront } from './pull-off-front.ts';
import { pullOffStile } from './pull-off-stile.ts';
import { pullRecessTooDeep } from './pull-recess-too-deep.ts';
import { pullScrewTooLong } from './pull-screw-too-long.ts';
import { pullScrewTooShort } from './pull-screw-too-short.ts';
import { pullStrikesNeighbour } from './pull-strikes-neighbour.ts';
import { railNarrowerThanDivider } from './rail-narrower-than-divider.ts';
import { revealLeavesNoLap } from './reveal-leaves-no-lap.ts';
import { ripTooLong } from './rip-too-long.ts';
import { ripTooWide } from './rip-too-wide.ts';
import { rowsOffPitch } from './rows-off-pitch.ts';
import { rulerOdd } from './ruler-odd.ts';
import { runnerGrooveTooDeep } from './runner-groove-too-deep.ts';
import { runnerOutOfPlace } from './runner-out-of-place.ts';
import { saidInsideBraces } from './said-inside-braces.ts';
import { saidTwice } from './said-twice.ts';
import { sameLeadsNowhere } from './same-leads-nowhere.ts';
import { screwBehindGap } from './screw-behind-gap.ts';
import { screwBreaksThrough } from './screw-breaks-through.ts';
import { screwInAir } from './screw-in-air.ts';
import { screwMeetsJoint } from './screw-meets-joint.ts';
import { screwNearEdge } from './screw-near-edge.ts';
import { screwPinsPanel } from './screw-pins-panel.ts';
import { sequenceInSeveralBlanks } from './sequence-in-several-blanks.ts';
import { sequenceLargerThanStock } from './sequence-larger-than-stock.ts';
import { sequenceWithoutOrder } from './sequence-without-order.ts';
import { shareNotPositive } from './share-not-positive.ts';
import { sheetByBoardFoot } from './sheet-by-board-foot.ts';
import { sheetMayNotEnterGroove } from './sheet-may-not-enter-groove.ts';
import { shelfHeightsNotAll } from './shelf-heights-not-all.ts';
import { shelfLeavesCleat } from './shelf-leaves-cleat.ts';
import { shelfOffItsHoles } from './shelf-off-its-holes.ts';
import { shelfOutOfPlace } from './shelf-out-of-place.ts';
import { shelfOverloaded } from './shelf-overloaded.ts';
import { shelfTooLong } from './shelf-too-long.ts';
import { shelvesFillOpening } from './shelves-fill-opening.ts';
import { sidesTooThickForSlides } from './sides-too-thick-for-slides.ts';
import { sizeAbsurd } from './size-absurd.ts';
import { sizeAcross } from './size-across.ts';
import { sizeIncomplete } from './size-incomplete.ts';
import { sizeLooksLikeOtherUnit } from './size-looks-like-other-unit.ts';
import { sizeNegative } from './size-negative.ts';
import { sizeOfWhat } from './size-of-what.ts';
import { sizeSaidInTwoWays } from './size-said-in-two-ways.ts';
import { sizesNotPositive } from './sizes-not-positive.ts';
import { slideOutOfPlace } from './slide-out-of-place.ts';
import { slideTooLong } from './slide-too-long.ts';
import { slidesCompared } from './slides-compared.ts';
import { slidesNeedPacking } from './slides-need-packing.ts';
import { slidesOverloaded } from './slides-overloaded.ts';
import { smallPullOnLongBlank } from './small-pull-on-long-blank.ts';
import { solidPanelCannotMove } from './solid-panel-cannot-move.ts';
import { solidTopCannotMove } from './solid-top-cannot-move.ts';
import { splitWiderThanGap } from './split-wider-than-gap.ts';
import { stileNarrowerThanSide } from './stile-narrower-than-side.ts';
import { stockNeverUsed } from './stock-never-used.ts';
import { stockSizeNotPositive } from './stock-size-not-positive.ts';
import { stockThicknessDiffers } from './stock-thickness-differs.ts';
import { stockWithoutSize } from './stock-without-size.ts';
import { stopLeavesNoJoint } from './stop-leaves-no-joint.ts';
import { stoppedCutNeedsBit } from './stopped-cut-needs-bit.ts';
import { strayMark } from './stray-mark.ts';
import { stretchersTooWide } from './stretchers-too-wide.ts';
import { stripScrewTooShort } from './strip-screw-too-short.ts';
import { tenonOffAThird } from './tenon-off-a-third.ts';
import { textTooLarge } from './text-too-large.ts';
import { thickerThanLumber } from './thicker-than-lumber.ts';
import { thicknessAbsurd } from './thickness-absurd.ts';
import { thicknessIsNominal } from './thickness-is-nominal.ts';
import { thicknessNotKnown } from './thickness-not-known.ts';
import { toeSpaceSmall } from './toe-space-small.ts';
import { tongueTooThick } from './tongue-too-thick.ts';
import { tooFewHinges } from './too-few-hinges.ts';
import { trimLeavesNothing } from './trim-leaves-nothing.ts';
import { unitApart } from './unit-apart.ts';
import { unitsMixedInSum } from './units-mixed-in-sum.ts';
import { unknownName } from './unknown-name.ts';
import { unknownWord } from './unknown-word.ts';
import { valueCircle } from './value-circle.ts';
import { valueNeverUsed } from './value-never-used.ts';
import { valueNotGiven } from './value-not-given.ts';
import { valueNotUnderstood } from './value-not-understood.ts';
import { ventBlocked } from './vent-blocked.ts';
import { ventCornerTooRound } from './vent-corner-too-round.ts';
import { ventLayerShows } from './vent-layer-shows.ts';
import { ventLeavesNoWood } from './vent-leaves-no-wood.ts';
import { ventLedgeTooDeep } from './vent-ledge-too-deep.ts';
import { ventWithoutSize } from './vent-without-size.ts';
import { wallScrewTooShort } from './wall-screw-too-short.ts';
import { wallTooThin } from './wall-too-thin.ts';
import { wordBelongsElsewhere } from './word-belongs-elsewhere.ts';

// The facts differ from entry to entry; whoever looks one up by its code hands back the facts it was made with.
// biome-ignore lint/suspicious/noExplicitAny: see above
type AnyKind = FindingKind<any>;

const kinds: readonly AnyKind[] = [
  cannotFollowInSequence,
  cupBeyondStile,
  dowelHoldsTooLittle,
  hangsOnWall,
  hingesNotPlaced,
  hungCaseNotJoined,
  nailerNotJoined,
  nothingToCatchOn,
  glassNotSaidSafe,
  pairNotInOne,
  paneDoesNotFit,
  caseGainTooDeep,
  kerfNotOfABlade,
  offcutLargerThanStock,
  partNarrowerThanKerf,
  partTooNarrowForMachine,
  pullStrikesNeighbour,
  openDoorsMeet,
  pullRecessTooDeep,
  pullOffFront,
  pullOffStile,
  cleatsTooHigh,
  pinHolesTooNear,
  drawerBottomTooLow,
  partitionTooHigh,
  runnerOutOfPlace,
  pullScrewTooLong,
  pullScrewTooShort,
  hingeSideNotSaid,
  closingEdgeNeedsBevel,
  doorHingedOnNothing,
  hingesAtOtherEdge,
  hingesDoNotFit,
  ripTooLong,
  sequenceInSeveralBlanks,
  sequenceLargerThanStock,
  sequenceWithoutOrder,
  sheetByBoardFoot,
  smallPullOnLongBlank,
  splitWiderThanGap,
  stockSizeNotPositive,
  stockWithoutSize,
  thickerThanLumber,
  tooFewHinges,
  hingeReachAssumed,
  hingeScrewsInEdging,
  hingeThinnerThanGap,
  hingeLeafTooWide,
  cupDistanceOutside,
  cupTooDeep,
  anchorToWall,
  clearanceIsNoFloat,
  edgingAcrossGrain,
  edgingLeavesNoCore,
  faceFrameNotSolid,
  faceFrameTooThin,
  floorIsOpenFrame,
  footCannotTaper,
  hungWithBase,
  hungWithoutNailer,
  hyphenLeftOut,
  insideDrawerMeetsDoor,
  insideDrawerMeetsHinge,
  insidePullMeetsDoor,
  lidHingesNotPlaced,
  lidMeetsWall,
  lidWithoutSupport,
  lidSupportHalfTold,
  lidSupportNotPlaced,
  lidSupportTooStrong,
  lidSupportTooWeak,
  lidCanFall,
  mitreWithoutCorner,
  nailerTooSmall,
  nailerWithoutRoom,
  notchCutsFrame,
  panelFillsFrame,
  panelLeavesGroove,
  pinHoleTooDeep,
  pinRowMeetsCut,
  pinRowOffShelf,
  pinRowTooShort,
  pinRowWithoutWood,
  pinsWithoutSize,
  priceNegative,
  railNarrowerThanDivider,
  rowsOffPitch,
  shelfHeightsNotAll,
  shelfLeavesCleat,
  shelfOffItsHoles,
  shelfOutOfPlace,
  shelfOverloaded,
  solidPanelCannotMove,
  solidTopCannotMove,
  braceNotClosed,
  braceNotOpened,
  cannotBeBoth,
  compartmentsDoNotFit,
  contentsDoNotFit,
  crosscutTooLong,
  crosscutTooWide,
  dividerOutOfPlace,
  doorTooWide,
  doorWiderThanHigh,
  drawerBottomTooThick,
  drawerBoxDoesNotFit,
  drawersWithoutSlides,
  drawerWithoutPlay,
  drawerTooWideForItsDepth,
  drawerCannotBeLiftedIn,
  emptyGroup,
  fileNeverNeeded,
  fileNotFound,
  fileUsesItself,
  frontsDoNotAddUp,
  frontSizeNotMet,
  frontsMeet,
  frontTooLow,
  gapUnusual,
  gradingWithoutEffect,
  featuresMeet,
  trimLeavesNothing,
  wallScrewTooShort,
  wallTooThin,
  jointBreaksThrough,
  jointThroughEdging,
  stoppedCutNeedsBit,
  noToolForJoint,
  dadoTooDeep,
  tenonOffAThird,
  dowelDoesNotSuit,
  stopLeavesNoJoint,
  tongueTooThick,
  jointNotThere,
  jointWithoutSize,
  detailWithoutJoint,
  grooveBreaksOut,
  grooveTooDeep,
  halfMarkedRemark,
  hingeDoorThickness,
  hingeDoorTooHigh,
  hingeDoorTooWide,
  hingeWrongFit,
  lapBeyondEdge,
  limitsDisagree,
  limitWithoutEffect,
  looksLikeDifference,
  looksLikeMixedNumber,
  measuredFarFromPlanned,
  nameDeclaredTwice,
  nameEmpty,
  nameHardToRead,
  nameMissing,
  nameNotClosed,
  nameNotOpened,
  noCutterForGroove,
  notCheckedYet,
  noRoomForCentreRunner,
  nothingToMake,
  offTheRuler,
  packerDoesNotFit,
  partLongerThanStock,
  partTooShortForMachine,
  partWiderThanStock,
  patternNeverUsed,
  revealLeavesNoLap,
  ripTooWide,
  rulerOdd,
  runnerGrooveTooDeep,
  saidTwice,
  sameLeadsNowhere,
  screwMeetsJoint,
  screwBreaksThrough,
  screwNearEdge,
  screwPinsPanel,
  screwBehindGap,
  screwInAir,
  shareNotPositive,
  sheetMayNotEnterGroove,
  sidesTooThickForSlides,
  shelfTooLong,
  shelvesFillOpening,
  sizeAbsurd,
  sizeAcross,
  sizeIncomplete,
  sizeLooksLikeOtherUnit,
  sizeNegative,
  sizeOfWhat,
  sizeSaidInTwoWays,
  sizesNotPositive,
  slidesCompared,
  slidesNeedPacking,
  slidesOverloaded,
  slideTooLong,
  slideOutOfPlace,
  stileNarrowerThanSide,
  stockNeverUsed,
  stockThicknessDiffers,
  strayMark,
  stretchersTooWide,
  stripScrewTooShort,
  textTooLarge,
  thicknessAbsurd,
  thicknessIsNominal,
  thicknessNotKnown,
  toeSpaceSmall,
  unitApart,
  unitsMixedInSum,
  unknownName,
  unknownWord,
  valueCircle,
  valueNeverUsed,
  valueNotGiven,
  valueNotUnderstood,
  ventBlocked,
  ventCornerTooRound,
  ventLayerShows,
  ventLeavesNoWood,
  ventLedgeTooDeep,
  ventWithoutSize,
  saidInsideBraces,
  wordBelongsElsewhere,
];

/** Every entry by its code. */
export const catalogue: ReadonlyMap<string, AnyKind> = new Map(kinds.map((kind) => [kind.code, kind]));
