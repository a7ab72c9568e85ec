import type { Mistake } from './mistakes.ts';

const supports = `      support torsion, 2 of them, carries 125 inch-pounds, 6 from sides, costs 24 each {
        hole 1-1/4 forward
        hole 4 forward
        hole 1 down
        hole 3 down
        screws 5/8 long, 1/8 thick
      }
`;

const hungAndHeld = `lid "cherry" thick 7/8, 7/8 from wall {
      overhang 3/4 at front, 3/4 at ends
      hinges "lid butt 3", 3 of them
${supports}`;

/** The supports of the example, with one of their words changed. */
function supported(from: string, to: string): { readonly from: string; readonly to: string } {
  return { from: supports, to: supports.replace(from, to).replace('support', '«support»') };
}

/** Mistakes with a lid, planted into the blanket chest one at a time. */
export const lidMistakes: readonly Mistake[] = [
  {
    slip: 'a chest too near to the wall',
    into: 'blanket-chest',
    from: '7/8 from wall',
    to: '«1/2» from wall',
    code: 'lid-meets-wall',
  },
  {
    slip: 'a lid that is to lean back',
    into: 'blanket-chest',
    from: '7/8 from wall',
    to: 'opens 105 degrees, «7/8» from wall',
    code: 'lid-meets-wall',
  },
  {
    slip: 'nothing that holds the lid',
    into: 'blanket-chest',
    from: supports,
    to: '',
    at: 'lid "cherry"',
    code: 'lid-without-support',
  },
  {
    slip: 'one support where two are needed',
    into: 'blanket-chest',
    from: 'support torsion, 2 of them',
    to: '«support» torsion, 1 of them',
    code: 'lid-support-too-weak',
  },
  {
    slip: 'hinge screws that go through the lid',
    into: 'blanket-chest',
    from: hungAndHeld,
    to: hungAndHeld
      .replace('thick 7/8', 'thick 1/2')
      .replace('"lid butt 3"', '«"lid butt 3"»')
      .replace('carries 125', 'carries 60')
      .replace('screws 5/8', 'screws 3/8'),
    code: 'screw-breaks-through',
  },
  {
    slip: 'supports for a lighter lid',
    into: 'blanket-chest',
    from: 'support torsion, 2 of them, carries 125',
    to: '«support» torsion, 2 of them, carries 60',
    code: 'lid-support-too-weak',
  },
  {
    slip: 'a top as well as a lid',
    into: 'blanket-chest',
    from: 'lid "cherry" thick 7/8, 7/8 from wall {',
    to: 'top "cherry" thick 7/8, over sides { slotted behind }\n    «lid "cherry"» thick 7/8, 7/8 from wall {',
    code: 'cannot-be-both',
  },
  {
    slip: 'a lid that hangs on nothing',
    into: 'blanket-chest',
    from: '      hinges "lid butt 3", 3 of them\n',
    to: '',
    at: 'lid "cherry"',
    code: 'lid-hinges-not-placed',
  },
  {
    slip: 'hinges of a lid whose leaves nobody knows',
    into: 'blanket-chest',
    from: 'hinges "lid butt 3"',
    to: 'hinges «"frame cup"»',
    code: 'lid-hinges-not-placed',
  },
  {
    slip: 'supports that do not say what they carry',
    into: 'blanket-chest',
    from: 'support torsion, 2 of them, carries 125 inch-pounds',
    to: '«support» torsion, 2 of them',
    code: 'lid-support-half-told',
  },
  {
    slip: 'supports that do not say how they hold',
    into: 'blanket-chest',
    from: 'support torsion, 2',
    to: '«support» 2',
    code: 'lid-support-half-told',
  },
  {
    slip: 'supports for a far heavier lid, which lift it by themselves',
    into: 'blanket-chest',
    from: 'support torsion, 2 of them, carries 125',
    to: '«support» torsion, 2 of them, carries 200',
    code: 'lid-support-too-strong',
  },
  {
    slip: 'supports of which nobody says how long their screws are',
    into: 'blanket-chest',
    ...supported('        screws 5/8 long, 1/8 thick\n', ''),
    code: 'lid-support-not-placed',
  },
  {
    slip: 'screws of supports that come out of the lid and of the back',
    into: 'blanket-chest',
    ...supported('screws 5/8', 'screws 1'),
    code: 'screw-breaks-through',
  },
  {
    slip: 'a support screwed to the very edge of the back',
    into: 'blanket-chest',
    ...supported('1 down', '1/8 down'),
    code: 'screw-near-edge',
  },
  {
    slip: 'supports whose screws are in front of the lid',
    into: 'blanket-chest',
    ...supported('hole 4 forward', 'hole 24 forward'),
    code: 'screw-in-air',
  },
  {
    slip: 'three stays on two sides',
    into: 'blanket-chest',
    from: supports,
    to: supports
      .replace('support torsion, 2', '«support» stay, 3')
      .replace('1 down', '6 forward, 2 down')
      .replace('3 down', '4 forward, 2 down'),
    code: 'lid-support-not-placed',
  },
];
