import type { Mistake } from './mistakes.ts';

const supports = '      support torsion, 2 of them, carries 125 inch-pounds\n';

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
    slip: 'screws that go through the lid',
    into: 'blanket-chest',
    from: 'lid "cherry" thick 7/8, 7/8 from wall {\n      overhang 3/4 at front, 3/4 at ends\n      hinges "lid butt 3"',
    to: 'lid "cherry" thick 1/2, 7/8 from wall {\n      overhang 3/4 at front, 3/4 at ends\n      hinges «"lid butt 3"»',
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
];
