/** Slips in how a piece is joined, one at a time, and the one finding that each gives. The words between « and » are blamed. */
export interface PlantedJoint {
  readonly slip: string;
  readonly text: string;
  readonly code: string;
}

interface Words {
  readonly shop?: string;
  readonly box: string;
  readonly face?: string;
}

function piece({ shop = '', box, face = '' }: Words): string {
  return `${shop}\npiece "box" {\n  units inches to 1/64\n  size 24 wide, 20 high, 12 deep\n  case { ${box} }\n  ${face}\n}\n`;
}

const bottom = (words: string, more = '', sides = 'sides thick 3/4') =>
  piece({ box: `${sides}   bottom thick 3/4, between sides, ${words}   ${more}` });
const fromShop = (shop: string, words: string) =>
  piece({ shop, box: `sides thick 3/4   bottom thick 3/4, between sides, ${words}` });
const twoStacks = (left: string, right: string) =>
  piece({
    box: 'sides thick 3/4   bottom thick 3/4, between sides',
    face: `face { row {
    stack { open "a" share 1   divider panel thick 3/4, shown, ${left}   open "b" share 1 }
    partition thick 3/4, shown
    stack { open "c" share 1   divider panel thick 3/4, shown, ${right}   open "d" share 1 }
  } }`,
  });

const back = 'back thick 1/4 in groove 1/4 deep, 3/4 in from back edge';

export const plantedJoints: readonly PlantedJoint[] = [
  { slip: 'a dado deeper than half of the side', text: bottom('«in dado 1/2 deep»'), code: 'dado-too-deep' },
  {
    slip: 'dadoes of a whole case deeper than half',
    text: piece({ box: 'sides thick 3/4   bottom thick 3/4, between sides   join «dado 7/16 deep»' }),
    code: 'dado-too-deep',
  },
  {
    slip: 'a groove for a panel that takes more than half of its stile',
    text: piece({
      box: 'sides thick 3/4, frame-and-panel { stiles 5/8 wide   top-rail 2 wide   bottom-rail 2 wide   «panel» thick 1/4 in groove 3/8 deep }   bottom thick 3/4, between sides',
    }),
    code: 'dado-too-deep',
  },
  { slip: 'a dado deeper than the side is thick', text: bottom('«in dado 7/8 deep»'), code: 'joint-breaks-through' },
  {
    slip: 'a dado just as deep as the side is thick',
    text: bottom('«in dado 3/4 deep»'),
    code: 'joint-breaks-through',
  },
  { slip: 'a tenon longer than the side is thick', text: bottom('«by tenons 3/4 long»'), code: 'joint-breaks-through' },
  {
    slip: 'a tenon that nearly comes out',
    text: bottom('«by tenons 5/8 long», tenons 1/4 thick'),
    code: 'wall-too-thin',
  },
  {
    slip: 'tenons longer than the stiles of a face frame are wide',
    text: piece({
      box: 'sides thick 3/4   bottom thick 3/4, between sides   frame thick 3/4, «by tenons 2 long» { stiles 1-3/4 wide   top-rail 2 wide   bottom-rail 2 wide }',
    }),
    code: 'joint-breaks-through',
  },
  {
    slip: 'dowels from both faces of a partition at one height',
    text: twoStacks('by dowels', '«by dowels»'),
    code: 'features-meet',
  },
  {
    slip: 'dadoes from both faces that leave nothing',
    text: twoStacks('in dado 3/8 deep', '«by dowels»'),
    code: 'features-meet',
  },
  {
    slip: 'a dowel in the groove of the back',
    text: bottom('«by dowels», first 11-1/8 in', back),
    code: 'features-meet',
  },
  {
    slip: 'a dowel close behind the groove of the back',
    text: bottom('«by dowels», first 11-1/2 in', back),
    code: 'wall-too-thin',
  },
  { slip: 'dowels at the very edge', text: bottom('«by dowels», first 1/4 in, 4 apart'), code: 'wall-too-thin' },
  {
    slip: 'a dado through the edging of the sides',
    text: bottom('«in dado 1/4 deep»', '', 'sides thick 3/4 { edging thick 1/4, at front }'),
    code: 'joint-through-edging',
  },
  {
    slip: 'a stopped dado and a blade',
    text: fromShop('cutter "stack" blade, cuts 1/4 to 7/8 wide', '«in dado 1/4 deep», stopped 3/8 from front'),
    code: 'stopped-cut-needs-bit',
  },
  {
    slip: 'a bit wider than the panel',
    text: fromShop('cutter "bit" bit, cuts 7/8 wide', '«in dado 1/4 deep»'),
    code: 'no-tool-for-joint',
  },
  {
    slip: 'a blade that does not reach so deep',
    text: fromShop('cutter "stack" blade, cuts 1/4 to 7/8 wide, at most 3/16 deep', '«in dado 1/4 deep»'),
    code: 'no-tool-for-joint',
  },
  {
    slip: 'a tenon thicker than any chisel',
    text: fromShop('cutter "1/4 chisel" chisel, cuts 1/4 wide', '«by tenons 3/8 long», tenons 3/8 thick'),
    code: 'no-tool-for-joint',
  },
  { slip: 'a tenon like paper', text: bottom('«by tenons 3/8 long», tenons 1/8 thick'), code: 'tenon-off-a-third' },
  {
    slip: 'a tenon nearly as thick as its stock',
    text: bottom('«by tenons 3/8 long», tenons 1/2 thick'),
    code: 'tenon-off-a-third',
  },
  {
    slip: 'a dowel like a match',
    text: fromShop('dowel "pin" 3/16 thick, 1 long', '«by dowels "pin"»'),
    code: 'dowel-does-not-suit',
  },
  {
    slip: 'a dowel as thick as a thumb',
    text: fromShop('dowel "peg" 1/2 thick, 1-1/2 long', '«by dowels "peg"»'),
    code: 'dowel-does-not-suit',
  },
  {
    slip: 'a stop as long as the bottom is deep',
    text: bottom('«in dado 1/4 deep», stopped 12 from front'),
    code: 'stop-leaves-no-joint',
  },
  {
    slip: 'a tongue without shoulders',
    text: bottom('«in dado 1/4 deep», tongue 3/4 thick'),
    code: 'tongue-too-thick',
  },
  {
    slip: 'a dado and no sides to take it',
    text: piece({ box: 'plinth 3 high, thick 3/4   bottom thick 3/4, «in dado 1/4 deep»' }),
    code: 'joint-not-there',
  },
  { slip: 'a dado without depth', text: bottom('in dado «0» deep'), code: 'joint-without-size' },
  { slip: 'a tenon shorter than nothing', text: bottom('by tenons «-1/2» long'), code: 'joint-without-size' },
  { slip: 'fasteners no distance apart', text: bottom('by dowels, «0» apart'), code: 'joint-without-size' },
  { slip: 'a stop and no dado', text: bottom('«stopped 3/8 from front»'), code: 'detail-without-joint' },
  { slip: 'a row of nothing', text: bottom('in dado 1/4 deep, «4 apart»'), code: 'detail-without-joint' },
];
