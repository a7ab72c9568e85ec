import type { Cell, FaceDesign, FrontCell, GroupCell, PieceDesign } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { describe, expect, test } from 'vitest';
import { check } from '../harness/check.ts';
import { checkFix } from '../harness/check-fix.ts';
import { openFixture } from '../harness/workbench.ts';

/** What the words for fits, frames, anchors, gradings and measured sizes come to in a design. */

async function designOf(face: string, frame = ''): Promise<PieceDesign> {
  const text = `piece "case" {
  size 30 wide, 24 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides   ${frame} }
  ${face}
}`;
  const workbench = await openFixture({ files: [{ name: 'case.fettle', text }] });
  const [piece] = evaluateDocument(workbench.services, workbench.document('case.fettle')).pieces;
  if (piece === undefined) throw new Error('no piece is read');
  return piece.evaluation.design;
}

async function faceOf(face: string): Promise<FaceDesign> {
  const design = await designOf(face);
  if (design.face === undefined) throw new Error('no face is read');
  return design.face;
}

const inches = (figure: { readonly length: { readonly exactInches: string } } | undefined) =>
  figure?.length.exactInches;

function frontCalled(cell: Cell, name: string): FrontCell {
  const waiting: Cell[] = [cell];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (next.kind === 'front' && next.name === name) return next;
    if (next.kind === 'row' || next.kind === 'stack') waiting.push(...next.cells);
  }
  throw new Error(`no front "${name}"`);
}

function group(cell: Cell): GroupCell {
  if (cell.kind !== 'row' && cell.kind !== 'stack') throw new Error('no row or stack');
  return cell;
}

describe('how fronts sit', () => {
  test.each([
    ['inset, gap 1/16', 'inset', '1/16'],
    ['inset', 'inset', '3/32'],
    ['overlay full, gap 1/4', 'overlay', '1/4'],
    ['overlay half', 'overlay', '1/8'],
    ['lipped 3/8', 'lipped', '1/16'],
  ])('face %s', async (words, kind, gap) => {
    const { fit } = await faceOf(`face ${words} { door "a"   fronts thick 3/4 }`);
    expect([fit.kind, inches(fit.gap)]).toEqual([kind, gap]);
  });

  test('half a gap is the reveal where none is said', async () => {
    const { fit } = await faceOf('face overlay full, gap 1/4 { door "a"   fronts thick 3/4 }');
    expect(fit.kind === 'overlay' && [fit.how, inches(fit.reveal), fit.reveal.reason.kind]).toEqual([
      'full',
      '1/8',
      'assumed',
    ]);
  });

  test('by an amount, or by a lip', async () => {
    const by = (await faceOf('face overlay 3/8 { door "a" }')).fit;
    expect(by.kind === 'overlay' && by.how === 'by' && inches(by.by)).toBe('3/8');
    const lip = (await faceOf('face lipped 5/16 { door "a" }')).fit;
    expect(lip.kind === 'lipped' && inches(lip.lip)).toBe('5/16');
  });

  test('one front says its own; gap and reveal are those of the face', async () => {
    const { root } = await faceOf(`face inset, gap 1/16, reveal 1/32 {
      drawer "a" front 5 high, overlay full
      drawer "b" rest
    }`);
    const { fit } = frontCalled(root, 'a');
    expect(fit?.kind === 'overlay' && [fit.how, inches(fit.gap), inches(fit.reveal)]).toEqual(['full', '1/16', '1/32']);
    expect(frontCalled(root, 'b').fit).toBeUndefined();
  });

  test('a lid is a front', async () => {
    const { root } = await faceOf('face inset { lid "top"   fronts thick 3/4 }');
    expect(frontCalled(root, 'top')).toMatchObject({ what: 'lid', leaves: 1 });
  });
});

describe('what is between fronts', () => {
  const mode = async (fit: string, kind: 'row' | 'stack', words = '') => {
    const word = kind === 'row' ? 'partition' : 'divider';
    const { root } = await faceOf(`face ${fit} { ${kind} { door "a"   ${word} thick 3/4${words}   door "b" } }`);
    const [divider] = group(root).dividers;
    return [divider?.mode, divider?.anchor];
  };

  test.each([
    ['inset', 'row', 'shown'],
    ['inset', 'stack', 'behind'],
    ['overlay full', 'row', 'behind'],
    ['overlay half', 'stack', 'behind'],
    ['overlay 1/4', 'row', 'shown'],
    ['overlay 1/4', 'stack', 'shown'],
    ['lipped 1/4', 'stack', 'shown'],
  ] as const)('%s in a %s is %s where nothing is said', async (fit, kind, expected) => {
    expect(await mode(fit, kind)).toEqual([expected, 'centre']);
  });

  test.each([
    ['row', 'left face on gap', 'start'],
    ['row', 'right face on gap', 'end'],
    ['stack', 'upper face on gap', 'start'],
    ['stack', 'lower face on gap', 'end'],
    ['stack', 'centred on gap', 'centre'],
  ] as const)('in a %s, %s', async (kind, words, anchor) => {
    expect(await mode('inset', kind, `, ${words}`)).toEqual(['behind', anchor]);
  });

  test('a face that the divider does not have is said, and the other one offered', async () => {
    await check(`
      piece "case" {
        size 30 wide, 24 high, 12 deep
        case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
        face inset {
          stack {
            drawer "a"
            divider thick 3/4, behind fronts, left face on gap
      //                                      ^^^^^^^^^^^^^^^^ error unknown-word: 'left face on gap' means nothing in a stack; did you mean 'upper face on gap'?
            drawer "b"
          }
          fronts thick 3/4
        }
      }
    `);
  });

  test('dividers that are all alike and lack their thickness are said once', async () => {
    await check(`
      piece "case" {
        size 30 wide, 24 high, 12 deep
        case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
        face inset {
          stack {
            dividers panel
      //    ^^^^^^^^ error thickness-not-known: the dividers have no thickness: no stock is named and no thickness is given
            drawer "a"
            drawer "b"
            drawer "c"
          }
          fronts thick 3/4
        }
      }
    `);
  });
});

describe('a face frame', () => {
  test('has its members as written, and as usual where nothing is said', async () => {
    const design = await designOf(
      'face overlay 3/8 { door "a" }',
      'frame thick 3/4 { stiles 1-3/4 wide   top-rail 2 wide }',
    );
    const { frame } = design.carcase;
    expect([frame?.thickness, frame?.stiles, frame?.topRail, frame?.bottomRail].map(inches)).toEqual([
      '3/4',
      '7/4',
      '2',
      '3/2',
    ]);
    expect(frame?.bottomRail.reason.kind).toBe('assumed');
  });
});

describe('sizes', () => {
  test('graded by a ratio; a row is one step', async () => {
    const { root } = await faceOf(`face inset {
      stack graded by ratio 5/4 {
        row { drawer "a"   drawer "b" }
        drawer "c"
        drawer "d" front 5 high
        drawer "e"
      }
    }`);
    const asked = group(root).cells.map(({ along }) =>
      along.kind === 'graded-by-ratio' ? [along.ratio.toString(), along.step] : along.kind,
    );
    expect(asked).toEqual([['5/4', 0], ['5/4', 1], 'fixed', ['5/4', 2]]);
  });

  test('a measured front', async () => {
    const { root } = await faceOf('face inset { drawer "a" front 5 high, measured front 5-1/16 high   drawer "b" }');
    const { along, measuredFront, measured } = frontCalled(root, 'a');
    expect([along.kind, inches(measuredFront), measuredFront?.reason.kind, measured]).toEqual([
      'fixed',
      '81/16',
      'measured',
      undefined,
    ]);
  });

  test('a space alone that asks for a size is held against the face', async () => {
    const { root } = await faceOf('face inset { drawer "a" front 5 high }');
    expect(group(root).cells.map((cell) => cell.name)).toEqual(['a']);
  });

  test('a share of nothing is said', async () => {
    await check(`
      piece "case" {
        size 30 wide, 24 high, 12 deep
        case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
        face inset {
          drawer "a" share 0
      //             ^^^^^^^ error share-not-positive: a share of 0 leaves nothing: a share has to be more than 0
          drawer "b" rest
          fronts thick 3/4
        }
      }
    `);
  });

  test('a ratio of nothing is said', async () => {
    await check(`
      piece "case" {
        size 30 wide, 24 high, 12 deep
        case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
        face inset {
          stack graded by ratio 0 {
      //        ^^^^^^^^^^^^^^^^^ error share-not-positive: a share of 0 leaves nothing: a share has to be more than 0
            drawer "a"
            drawer "b"
          }
          fronts thick 3/4
        }
      }
    `);
  });
});

test('a lap that is too wide is mended in the text', async () => {
  const text = (lap: string) => `
      piece "case" {
        size 30 wide, 24 high, 12 deep
        case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
        face overlay ${lap}, gap 1/8 {
          row { door "a"   partition thick 3/4   door "b" }
          fronts thick 3/4
        }
      }
    `;
  await checkFix(text('<|>1/2'), 'Lap 5/16"', text('5/16"'));
});

test.each([
  ['inches', '3/4"'],
  ['mm', '18 mm'],
  ['cm', '18 mm'],
])('a thickness that nothing tells is proposed in the units of the piece: %s', async (units, thickness) => {
  const text = (said: string) => `
      piece "case" {
        units ${units}
        size 60 cm wide, 50 cm high, 30 cm deep
        case { <|>sides${said}   bottom thick 18 mm, between sides }
      }
    `;
  await checkFix(text(''), `Add 'thick ${thickness}'`, text(` thick ${thickness}`).replace('<|>', ''));
});
