import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { openFixture } from '../harness/workbench.ts';
import { example } from '../sideboard.ts';

/** The examples carry their hinges and pulls, and nothing is wrong with them. */

const shops = ['shop', 'metric-shop'];

async function hardwareOf(name: string) {
  const files = [name, ...shops].map((each) => example(`${each}.fettle`));
  const workbench = await openFixture({ files });
  const { pieces, findings } = evaluateDocument(workbench.services, workbench.document(`${name}.fettle`));
  const hardware = pieces.flatMap(({ evaluation }) => evaluation.hardware);
  const count = (kind: string) => hardware.filter((each) => each.kind === kind).length;
  return {
    hinges: count('hinge'),
    pulls: count('pull'),
    told: findings.flatMap(({ severity, code, sentence }) => (severity === 'note' ? [] : [`${code}: ${sentence}`])),
  };
}

describe.each([
  // Two pairs of doors on two knives each leaf; four drawers and four leaves with a knob.
  { name: 'sideboard', hinges: 8, pulls: 8 },
  // A pair 42" high or so on three butts each leaf; two drawers with two knobs, two leaves with one.
  { name: 'linen-press', hinges: 6, pulls: 6 },
  // A pair 60" high or so on three cups each leaf; three drawers behind it and two leaves with a knob.
  { name: 'pantry', hinges: 6, pulls: 5 },
  { name: 'vanity', hinges: 4, pulls: 4 },
  { name: 'wall-cupboard', hinges: 4, pulls: 2 },
  // Seven drawers with two knobs each.
  { name: 'chest', hinges: 0, pulls: 14 },
])('$name', ({ name, hinges, pulls }) => {
  it(`has ${hinges} hinges and ${pulls} pulls, and nothing is wrong`, async () => {
    expect(await hardwareOf(name)).toEqual({ hinges, pulls, told: [] });
  });
});
