import type { Mistake } from './mistakes.ts';

/** Mistakes with what stands behind a door, planted into the pantry one at a time. */
export const insideMistakes: readonly Mistake[] = [
  {
    slip: 'drawers that clear half an arm of a hinge',
    into: 'pantry',
    from: '1-1/16 clear each side',
    to: '«1/2» clear each side',
    code: 'inside-drawer-meets-hinge',
  },
  {
    slip: 'hinges that do not open to a right angle',
    into: 'pantry',
    from: 'opens 110 degrees',
    to: 'opens 85 degrees',
    at: '1-1/16',
    code: 'inside-drawer-meets-door',
  },
  {
    slip: 'hinges whose open door stands far in',
    into: 'pantry',
    from: 'opens 110 degrees',
    to: 'opens 110 degrees, open door 1-1/2 into opening',
    at: '1-1/16',
    code: 'inside-drawer-meets-door',
  },
  {
    slip: 'no room for the knobs behind the door',
    into: 'pantry',
    from: '1 behind door',
    to: '«1/2» behind door',
    code: 'inside-pull-meets-door',
  },
  {
    slip: 'fronts so far back that the slides reach through the back',
    into: 'pantry',
    from: '1 behind door',
    to: '2 behind door',
    at: '"side mount 16"',
    code: 'slide-too-long',
  },
  {
    slip: 'packers that are thicker than the room for them',
    into: 'pantry',
    from: 'packers of "maple"',
    to: '«packers» 1-1/4 of "maple"',
    code: 'packer-does-not-fit',
  },
  {
    slip: 'no packers',
    into: 'pantry',
    from: '      packers of "maple"\n',
    to: '',
    at: '"side mount 16"',
    code: 'screw-behind-gap',
  },
  {
    slip: 'a front behind the door that lies on the case',
    into: 'pantry',
    from: 'drawer "tins"   front 5 high',
    to: '«drawer "tins"» overlay full, front 5 high',
    code: 'cannot-be-both',
  },
  {
    slip: 'shelves over the whole opening beside drawers in it',
    into: 'pantry',
    from: 'inside, 1 behind',
    to: '«shelves» 2 fixed\n      inside, 1 behind',
    code: 'cannot-be-both',
  },
  {
    slip: 'a clearance below nothing',
    into: 'pantry',
    from: '1 behind door',
    to: '«-1» behind door',
    code: 'size-negative',
  },
];
