/** Mistakes planted into a piece with drawers, one at a time: each gives its finding at its words, and nothing else. */
export interface DrawerMistake {
  readonly slip: string;
  /** Words that stand in the text once, and what stands there instead. */
  readonly changes: readonly (readonly [from: string, to: string])[];
  readonly code: string;
  /** What is underlined, and which of several such words where it is not the only one. */
  readonly words: string;
  readonly says: string;
}

/** Free of errors and warnings. The slides and all their figures are invented. */
export const drawerChest = `units inches to 1/32
board "maple" any thickness, 8 wide, 120 long
sheet "panel" nominal 3/4, actual 3/4, 96 long, 48 wide
sheet "thin" nominal 1/4, actual 1/4, 60 long, 60 wide
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side, carries 75 lb {
  hole 7/8 from front   hole 12-1/2 from front   screws 1/2 long, 1/8 thick
}
slide "lifted 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side, lifts in 3/4
slide "long 18" side mount, 18 long, 1-3/4 high, takes 1/2 each side
slide "deep 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side, set back 1, 3/4 free behind
slide "light 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side, carries 20 lb
slide "hidden 14" under mount, 14 long, 1-1/4 high, takes 3/16 each side, takes 9/16 below, sides at most 3/8 thick

piece "Chest" {
  size 30 wide, 20 high, 16 deep
  case {
    sides "panel"
    bottom "panel" between sides
    top "panel" between sides
    back "thin" in groove 1/4 deep, 1/2 in from back edge
    join dado 1/4 deep
  }
  face inset, gap 1/8 {
    row {
      stack opening 14 wide {
        dividers panel of "panel", behind fronts
        drawer "upper" front 6 high
        drawer "lower" rest
      }
      partition "panel", shown
      open "books"
    }
    fronts "panel"
    drawers { sides "maple" thick 1/2   bottom "thin"   corners dovetail   slides "plain 14", 1 above lower edge of front }
  }
  thing "weight" { 2 wide, 2 deep, 2 high   weighs 2 lb }
}
`;

const slides = 'slides "plain 14", 1 above lower edge of front';
const upper = 'drawer "upper" front 6 high';

export const drawerMistakes: readonly DrawerMistake[] = [
  {
    slip: 'a box too wide',
    changes: [[slides, `${slides}   box 13-1/2 wide`]],
    code: 'drawer-box-does-not-fit',
    words: '13-1/2',
    says: '1/2" too wide',
  },
  {
    slip: 'a box that its slides do not reach',
    changes: [[slides, `${slides}   box 12-3/4 wide`]],
    code: 'drawer-box-does-not-fit',
    words: '12-3/4',
    says: 'too narrow',
  },
  {
    slip: 'slides longer than the case is deep',
    changes: [['slides "plain 14"', 'slides "long 18"']],
    code: 'slide-too-long',
    words: '"long 18"',
    says: 'too long',
  },
  {
    slip: 'slides set back, that want room behind as well',
    changes: [['slides "plain 14"', 'slides "deep 14"']],
    code: 'slide-too-long',
    words: '"deep 14"',
    says: 'needs 15-3/4" of depth, behind the front there is 14-1/2": 1-1/4" too long',
  },
  {
    slip: 'no partition beside the drawers',
    changes: [['partition "panel", shown\n', '']],
    code: 'screw-in-air',
    words: '"plain 14"',
    says: 'the front screw of the right slide of "upper" finds no wood within 3" behind it, and 3 more likewise',
  },
  {
    slip: 'slides beside panels that are set back',
    changes: [
      [
        'sides "panel"\n',
        'sides "maple" thick 3/4, frame-and-panel {\n      stiles 2-1/2 wide   top-rail 2 wide   bottom-rail 2 wide\n      panel "thin" in groove 3/8 deep\n    }\n',
      ],
      ['1 above lower edge', '3 above lower edge'],
      ['screws 1/2 long', 'screws 3/8 long'],
    ],
    code: 'screw-behind-gap',
    words: '"plain 14"',
    says: '1/4" of air',
  },
  {
    slip: 'a bottom too low over a runner under the middle',
    changes: [
      [slides, 'runners centre, 1 high, 1-1/2 wide, of "maple"'],
      ['bottom "thin"   corners', 'bottom "thin", 1/2 up   corners'],
    ],
    code: 'no-room-for-centre-runner',
    words: 'runners',
    says: 'the centre runner is 1" high, under the bottom of "upper" there is 3/4": 1/4" too little',
  },
  {
    slip: 'a bottom on the edges of a box that runs on its middle',
    changes: [
      [slides, 'runners centre, 1 high, 1-1/2 wide, of "maple"'],
      ['bottom "thin"   corners', 'bottom "thin", applied   corners'],
    ],
    code: 'no-room-for-centre-runner',
    words: 'runners',
    says: 'there is 1/4": 3/4" too little',
  },
  {
    slip: 'compartments wider than their drawer',
    changes: [[upper, `${upper} { compartments of "thin" { compartment 8 wide   compartment 4 wide } }`]],
    code: 'compartments-do-not-fit',
    words: '4',
    says: '2 compartments and the partitions between them take 12-1/4" across, inside the box of "upper" there is 12": 1/4" too much',
  },
  {
    slip: 'a thing in a compartment too narrow for it',
    changes: [
      [upper, `${upper} { compartments of "thin" { compartment 1-1/2 wide { holds "weight" }   compartment } }`],
    ],
    code: 'contents-do-not-fit',
    words: 'holds "weight"',
    says: '"weight" is 1/2" too wide for compartment 1 of "upper"',
  },
  {
    slip: 'screws of the member on the box as long as its side is thick',
    changes: [['hole 12-1/2 from front   screws', 'hole 12-1/2 from front   hole 2 from front, in box   screws']],
    code: 'screw-breaks-through',
    words: '"plain 14"',
    says: 'the screw in the box of the left slide of "upper" and 3 more, 1/2" long, go through the left box side of "upper"',
  },
  {
    slip: 'screws that end within the runners',
    changes: [
      ['board "maple"', 'screw "No. 4" 3/8 long, pilot 5/64, clearance 1/8\nboard "maple"'],
      [slides, 'runners 3/4 high, thick 1/4, of "maple", by screws "No. 4"'],
    ],
    code: 'strip-screw-too-short',
    words: '"No. 4"',
    says: '"No. 4" is 3/8" long and goes through 1/4" of runner before it holds: it has to be 1/2" long, 1/8" more',
  },
  {
    slip: 'packers behind wooden runners',
    changes: [[slides, 'runners 3/4 high, thick 1/4, of "maple"   packers 1/4 of "maple"']],
    code: 'detail-without-joint',
    words: 'packers',
    says: "'packers' tells of slides beside the box, and none is asked for here",
  },
  {
    slip: 'a comparison of slides with none',
    changes: [[slides, 'runners 3/4 high, thick 1/4, of "maple"   compare "lifted 14"']],
    code: 'detail-without-joint',
    words: '"lifted 14"',
    says: "'compare' tells of slides that are chosen, and none is asked for here",
  },
  {
    slip: 'a load beyond the rating, where the stronger slides have longer screws',
    changes: [
      ['slides "plain 14"', 'slides "light 14"'],
      [upper, `${upper} { holds 12 "weight" }`],
      [
        'slide "lifted 14"',
        'slide "stout 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side, carries 90 lb { hole 7/8 from front   hole 12-1/2 from front   screws 1-1/4 long, 1/8 thick }\nslide "lifted 14"',
      ],
    ],
    code: 'slides-overloaded',
    words: '"light 14"',
    says: 'rated for 20 lb',
  },
  {
    slip: 'screws through packers into a solid panel',
    changes: [
      [
        'sides "panel"\n',
        'sides "maple" thick 1, frame-and-panel {\n      stiles 2-1/2 wide   top-rail 2 wide   bottom-rail 2 wide\n' +
          '      panel "maple" thick 3/8, in groove 3/8 deep, float 1/16 each side\n    }\n',
      ],
      [slides, 'slides "plain 14", 3 above lower edge of front   packers of "maple"'],
      ['screws 1/2 long', 'screws 5/8 long'],
    ],
    code: 'screw-pins-panel',
    words: '"plain 14"',
    says:
      'the rear screw of the left slide of "upper" and 1 more, 5/8" long, go through 5/16" of packer and 5/16" into ' +
      'the panel of the left side',
  },
  {
    slip: 'screws at the very edge of a packer that a rail leaves little room',
    changes: [
      [
        'sides "panel"\n',
        'sides "maple" thick 3/4, frame-and-panel {\n      stiles 2-1/2 wide   top-rail 2 wide   bottom-rail 2-11/16 wide\n' +
          '      panel "thin" in groove 3/8 deep\n    }\n',
      ],
      [slides, 'slides "plain 14", 1 above lower edge of front   packers of "maple"'],
      ['screws 1/2 long', 'screws 3/8 long'],
    ],
    code: 'screw-near-edge',
    words: '"plain 14"',
    says: 'the packer behind the left slide of "lower"',
  },
  {
    slip: 'packers where nothing stands back',
    changes: [[slides, `${slides}   packers 1/4 of "maple"`]],
    code: 'packer-does-not-fit',
    words: 'packers',
    says: 'have nothing to fill',
  },
  {
    slip: 'screws as long as the side is thick',
    changes: [['screws 1/2 long', 'screws 3/4 long']],
    code: 'screw-breaks-through',
    words: '"plain 14"',
    says: '3/4" long, go through the left side: behind it there is 3/4" of wood, its tip would show',
  },
  {
    slip: 'a rear screw in the groove of the back',
    changes: [
      ['hole 12-1/2 from front', 'hole 14-1/2 from front'],
      ['size 30 wide', 'size 20 wide'],
      ['stack opening 14 wide', 'stack'],
      ['partition "panel", shown\n      open "books"\n', ''],
    ],
    code: 'screw-meets-joint',
    words: '"plain 14"',
    says: 'the rear screw of the left slide of "upper" and 3 more run into the groove for the back',
  },
  {
    slip: 'drawers on both sides of a partition, with screws at one height',
    changes: [
      [
        'open "books"',
        'stack { dividers panel of "panel", behind fronts   drawer "a" front 6 high   drawer "b" rest }',
      ],
    ],
    code: 'screw-meets-joint',
    words: '"plain 14"',
    says: 'the front screw of the right slide of "upper" and 3 more run into the front screw of the left slide of "a"',
  },
  {
    slip: 'screws in the dado of the divider',
    changes: [
      ['1 above lower edge of front', '0 above lower edge of opening'],
      ['hole 7/8 from front   hole 12-1/2 from front', 'hole 7/8 from front, 0 up   hole 12-1/2 from front, 0 up'],
    ],
    code: 'screw-meets-joint',
    words: '"plain 14"',
    says: 'run into the dado for the',
  },
  {
    slip: 'slides above their opening',
    changes: [['1 above lower edge', '5 above lower edge']],
    code: 'slide-out-of-place',
    words: '5',
    says: 'too high',
  },
  {
    slip: 'slides under their opening, on a front that laps the divider',
    changes: [['1 above lower edge', '0 above lower edge']],
    code: 'slide-out-of-place',
    words: '0',
    says: 'the slides of "upper" reach below its opening: 5/16" too low',
  },
  {
    slip: 'slides whose screw line lies under the box',
    changes: [[slides, 'slides "plain 14", screw line 7/8 above lower edge of opening   clear 1 below']],
    code: 'slide-out-of-place',
    words: '7/8',
    says: 'have their middle below the side of the box: 1/8" too low',
  },
  {
    slip: 'no height to lift the box in',
    changes: [['slides "plain 14"', 'slides "lifted 14"']],
    code: 'drawer-cannot-be-lifted-in',
    words: '"lifted 14"',
    says: '"upper" is lifted 3/4" onto "lifted 14", over its box there is 1/2" free: 1/4" too little',
  },
  {
    slip: 'a load beyond the rating',
    changes: [
      ['slides "plain 14"', 'slides "light 14"'],
      [upper, `${upper} { holds 12 "weight" }`],
    ],
    code: 'slides-overloaded',
    words: '"light 14"',
    says: 'rated for 20 lb',
  },
  {
    slip: 'sides thicker than the slides under them take',
    changes: [[slides, 'slides "hidden 14"']],
    code: 'sides-too-thick-for-slides',
    words: '1/2',
    says: '"hidden 14" goes under sides of at most 3/8", these are 1/2" thick: 1/8" too thick',
  },
  {
    slip: 'a box lower than its slides',
    changes: [[slides, `${slides}   box 1-1/2 high`]],
    code: 'drawer-box-does-not-fit',
    words: '1-1/2',
    says: '1/4" too low',
  },
  {
    slip: 'a front too low for the slides behind it',
    changes: [[upper, 'drawer "upper" front 2-1/2 high']],
    code: 'drawer-box-does-not-fit',
    words: '2-1/2',
    says: 'too low',
  },
];
