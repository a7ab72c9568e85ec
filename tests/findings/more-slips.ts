import { catalogue } from '@fettle/findings';
import { helpBlocks } from './help-blocks.ts';

/** Help examples in a shop that has something better: with it comes a way out that the page alone does not have. */
export interface BetterShop {
  readonly code: string;
  readonly source: string;
}

const better: readonly {
  readonly code: string;
  readonly declared: string;
  readonly piece?: readonly [string, string];
}[] = [
  { code: 'hinge-door-thickness', declared: 'hinge "thin butt" doors 1/2 to 7/8 thick' },
  { code: 'hinge-door-too-high', declared: 'hinge "tall butt" doors at most 40 high' },
  { code: 'hinge-door-too-wide', declared: 'hinge "wide butt" doors at most 24 wide' },
  { code: 'hinge-wrong-fit', declared: 'hinge "inset butt" for inset doors' },
  {
    code: 'cup-too-deep',
    declared:
      'hinge "flat cup" concealed, cup 35mm wide, cup 8mm deep, cup 3mm to 6mm from edge, overlay 12mm more than cup distance',
  },
  {
    code: 'cup-distance-outside',
    declared:
      'hinge "half cup" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, overlay 5mm more than cup distance',
  },
  {
    code: 'cup-beyond-stile',
    declared:
      'hinge "small cup" concealed, cup 26mm wide, cup 10mm deep, cup 3mm to 6mm from edge, overlay 12mm more than cup distance',
  },
  {
    code: 'hinges-not-placed',
    declared:
      'hinge "cup" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, overlay 12mm more than cup distance',
  },
  {
    code: 'runner-out-of-place',
    declared: '',
    piece: ['runners 7 high, thick 1/4', 'runners 3/4 high, thick 1/4, 5-1/2 above lower edge of box'],
  },
  {
    code: 'pane-does-not-fit',
    declared: '',
    piece: ['in rabbet 3/8 wide, rabbet 3/8 deep, clearance 3/8', 'in rabbet 2 wide, rabbet 3/8 deep, clearance 1/8'],
  },
  { code: 'lid-hinges-not-placed', declared: 'hinge "whole butt" butt, 3 long, leaf 1/2 wide, 5/32 closed' },
  {
    code: 'lid-support-not-placed',
    declared: '',
    piece: [
      'torsion, 2 of them, carries 60 inch-pounds',
      'stay, 3 of them, carries 60 inch-pounds { hole 3 forward   hole 3 forward, 2 down   screws 1/2 long }',
    ],
  },
  {
    code: 'hinges-at-other-edge',
    declared: '',
    piece: ['door "front" hinged left { hinges "butt" at right }', 'doors "front" { pair   hinges "butt" at right }'],
  },
  {
    code: 'hinges-at-other-edge',
    declared: 'hinge "second butt" butt, 2 long, leaf 5/8 wide, 5/32 closed',
    piece: ['hinges "butt" at right', 'hinges "butt", "second butt" at right'],
  },
  {
    code: 'drawer-without-play',
    declared:
      'hinge "cup" concealed, cup 35mm wide, cup 12mm deep, gap and cup distance 1/4 together, opens 165 degrees, open door 1/4 into opening, stands 0 into opening',
    piece: [
      'drawer "tools" { box 18-1/2 wide }',
      'door "tools" hinged left { hinges "cup"   inside, 5/32 clear at left { drawer "pegs" { clear 1/8 below } } }',
    ],
  },
  {
    code: 'drawer-without-play',
    declared: '',
    piece: ['box 18-1/2 wide', 'clear 0 above'],
  },
  {
    code: 'drawer-without-play',
    declared: '',
    piece: ['box 18-1/2 wide', 'box 10-1/4 high   clear 1/4 below, 0 above'],
  },
  { code: 'hinge-leaf-too-wide', declared: 'hinge "narrow butt" butt, 2 long, leaf 1/2 wide, 5/32 closed' },
  { code: 'hinge-thinner-than-gap', declared: 'hinge "thick butt" butt, 2 long, leaf 5/8 wide, 5/32 closed' },
  {
    code: 'hinge-screws-in-edging',
    declared: 'hinge "long screws" butt, 2 long, leaf 5/8 wide, 5/32 closed, screws 5/8 long, 3 screws in each leaf',
  },
  { code: 'hinges-do-not-fit', declared: 'hinge "short butt" butt, 2 long, leaf 5/8 wide, 5/32 closed' },
  { code: 'door-hinged-on-nothing', declared: 'hinge "knife" knife, 2 long, leaf 3/8 wide, 5/32 closed' },
  {
    code: 'pane-does-not-fit',
    declared: '',
    piece: ['rabbet 3/8 deep, clearance 3/8', 'rabbet 1/16 deep, clearance 1/8'],
  },
  {
    code: 'pane-does-not-fit',
    declared: '',
    piece: ['rabbet 3/8 deep, clearance 3/8', 'rabbet 11/16 deep, clearance 1/8'],
  },
  {
    code: 'nothing-to-catch-on',
    declared: '',
    piece: [
      'doors "linen" rest { catch magnet, at bottom }   drawer "sheets" front 7 high',
      'drawer "sheets" front 7 high   doors "linen" rest { catch magnet, at top }',
    ],
  },
  {
    code: 'closing-edge-needs-bevel',
    declared: '',
    piece: ['hinges "butt" }', 'hinges "butt", closing edge bevelled 1/32 }'],
  },
  { code: 'part-longer-than-stock', declared: 'sheet "long panel" nominal 3/4, actual 3/4, 144 long, 48 wide' },
  {
    code: 'sequence-larger-than-stock',
    declared: 'sheet "wide ply" nominal 3/4, actual 3/4, 96 long, 60 wide',
  },
  { code: 'part-wider-than-stock', declared: 'sheet "wide board" nominal 3/4, actual 3/4, 96 long, 36 wide' },
  {
    code: 'drawer-too-wide-for-its-depth',
    declared: 'slide "side mount 18" side mount, 18 long, takes 1/2 each side',
    piece: ['12 deep', '24 deep'],
  },
  {
    code: 'shelf-too-long',
    declared: '',
    piece: ['shelves 2 adjustable', 'shelves 2 adjustable, thick 1/2'],
  },
  {
    code: 'face-frame-not-solid',
    declared: 'board "maple" any thickness, 8 wide, 120 long',
    piece: ['frame "ply" {', 'frame "ply" thick 3/4 {'],
  },
  {
    code: 'notch-cuts-frame',
    declared: '',
    piece: [
      'stiles 2 wide }\n    bottom "ply" between sides\n    toe-space 4 high, 3 deep',
      'stiles 4 wide }\n    bottom "ply" between sides\n    toe-space 4 high, 4 deep',
    ],
  },
  {
    code: 'slides-overloaded',
    declared: 'slide "strong 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side, carries 100 lb',
  },
  {
    code: 'drawer-cannot-be-lifted-in',
    declared: '',
    piece: ['slides "plain 14"', 'slides "plain 14"   box 9-5/8 high'],
  },
  {
    code: 'drawer-cannot-be-lifted-in',
    declared: '',
    piece: ['slides "plain 14"', 'slides "plain 14"   clear 1/2 above'],
  },
  {
    code: 'packer-does-not-fit',
    declared: '',
    piece: ['hole 12 from front', 'hole 1 from front'],
  },
  { code: 'solid-panel-cannot-move', declared: '', piece: ['glued in', 'float 0 each side'] },
  {
    code: 'hung-case-not-joined',
    declared: '',
    piece: [
      `top "ply" between sides
    bottom "ply" between sides
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    hung on wall
    nailers 3 wide of "ply", by screws`,
      'back "ply" applied   hung on wall',
    ],
  },
];

/** Rows of pin holes that run into the joints at the ends of their opening. */
function shelvesOver(pins: string): string {
  return `piece "box" {
    size 24 wide, 30 high, 12 deep
    case { sides thick 3/4   bottom thick 3/4, between sides }
    face inset {
      stack {
        open "above" rest { shelves 1 adjustable { pins ${pins} } }
        divider panel thick 3/4, shown, in dado 1/4 deep
        open "below" rest { shelves 1 adjustable { pins ${pins} } }
      }
    }
  }`;
}

/** A vent as wide as its door, and one that stands too high in it. */
function doorWithVent(vent: string): string {
  return `piece "box" {
    size 18 wide, 20 high, 16 deep
    case { sides thick 3/4   bottom thick 3/4, between sides }
    face inset, gap 1/8 { door "onions" rest, hinged left { vent ${vent} }   fronts thick 3/4 }
  }`;
}

export const inBetterShops: readonly BetterShop[] = [
  {
    code: 'word-belongs-elsewhere',
    source: `piece "box" {
      size 24 wide, 30 high, 12 deep
      case { sides thick 3/4   bottom thick 3/4, between sides }
      gap 1/16
      face inset { open "all" rest }
    }`,
  },
  {
    code: 'word-belongs-elsewhere',
    source: `piece "box" {
      size 24 wide, 30 high, 12 deep
      case { sides thick 3/4   bottom thick 3/4, between sides }
      stack { open "all" rest }
    }`,
  },
  {
    code: 'word-belongs-elsewhere',
    source: `piece "box" {
      size 24 wide, 30 high, 12 deep
      case { sides thick 3/4 }
      bottom thick 3/4, between sides
      face inset { open "all" rest }
    }`,
  },
  { code: 'vent-leaves-no-wood', source: doorWithVent('16 wide, 2 high, 4 up') },
  { code: 'vent-leaves-no-wood', source: doorWithVent('6 wide, 2 high, 17 up') },
  { code: 'pin-row-meets-cut', source: shelvesOver('lowest 1/16 up, highest 10 up') },
  { code: 'pin-row-meets-cut', source: shelvesOver('lowest 2-1/4 up, highest 14-1/4 up') },
  ...better.map(({ code, declared, piece: [from, to] = ['', ''] }) => {
    const entry = catalogue.get(code);
    const page = entry && helpBlocks(entry).find((block) => block.kind === 'wrong');
    if (page === undefined || !page.source.includes(from)) throw new Error(`the page of ${code} has changed`);
    return { code, source: `${declared}\n${page.source.replace(from, to)}` };
  }),
  {
    code: 'drawer-box-does-not-fit',
    source: `
      slide "high slide" side mount, 12 long, 2 high, takes 1/2 each side
      slide "low slide" side mount, 12 long, 1 high, takes 1/2 each side
      piece "box" {
        size 20 wide, 30 high, 15 deep
        case { sides thick 3/4   bottom thick 3/4, between sides }
        face inset, gap 1/8 {
          drawer "pens" opening 2 high
          door "front" rest
          fronts thick 3/4
          drawers { sides thick 1/2   bottom thick 1/4   slides "high slide" }
        }
      }
    `,
  },
];
