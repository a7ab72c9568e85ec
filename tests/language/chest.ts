/** The smallest piece with a face, for fixtures: a case 20" wide, 30" high, 15" deep with whatever stands in its face. */
export function chest(face: string): string {
  return [
    'piece "chest" {',
    '  size 20 wide, 30 high, 15 deep',
    '  case { sides thick 3/4   bottom thick 3/4, between sides }',
    '  face inset, gap 1/8 {',
    ...face
      .trim()
      .split('\n')
      .map((line) => `    ${line.trim()}`),
    '    fronts thick 1/2',
    '  }',
    '}',
  ].join('\n');
}
