/**
 * Fixtures: texts of the language that open in the editor as they are. A line `// file: shop.fettle` starts the next
 * file; `<|>` is the caret; comments made of carets under a line are marks. Knows nothing of the language itself.
 */

export interface FixtureFile {
  readonly name: string;
  readonly text: string;
}

export interface Caret {
  readonly file: string;
  readonly offset: number;
}

export interface Fixture {
  readonly files: readonly FixtureFile[];
  readonly caret: Caret | undefined;
}

const caretMark = '<|>';
const firstFile = 'piece.fettle';

/** Splits a fixture into its files, the first of which is `piece.fettle` unless it is named, and takes the caret out. */
export function readFixture(source: string): Fixture {
  const files: FixtureFile[] = [];
  let name = firstFile;
  let lines: string[] = [];
  let begun = false;
  const end = () => {
    // Nothing before the first `// file:` line means that this line names the first file.
    if (begun || lines.some((line) => line.trim() !== '')) files.push({ name, text: lines.join('\n') });
    lines = [];
  };
  for (const line of dedent(source).split('\n')) {
    const next = /^\/\/ file: (\S+)$/.exec(line)?.[1];
    if (next === undefined) {
      lines.push(line);
      continue;
    }
    end();
    name = next;
    begun = true;
  }
  end();
  return takeCaret(files.length === 0 ? [{ name: firstFile, text: '' }] : files);
}

function takeCaret(files: readonly FixtureFile[]): Fixture {
  let caret: Caret | undefined;
  const without = files.map((file) => {
    const offset = file.text.indexOf(caretMark);
    if (offset < 0) return file;
    if (caret !== undefined || file.text.includes(caretMark, offset + 1)) throw new Error('a fixture has one caret');
    caret = { file: file.name, offset };
    return { ...file, text: file.text.replace(caretMark, '') };
  });
  return { files: without, caret };
}

/** Takes off the line break after the opening backtick and the indentation that all lines share. */
export function dedent(source: string): string {
  const lines = source
    .replace(/^\n/, '')
    .replace(/\n[ \t]*$/, '\n')
    .split('\n');
  const indents = lines.filter((line) => line.trim() !== '').map((line) => line.length - line.trimStart().length);
  const shared = Math.min(...indents, Number.MAX_SAFE_INTEGER);
  return lines.map((line) => line.slice(shared)).join('\n');
}
