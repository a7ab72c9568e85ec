/**
 * Marks: what a fixture expects under its lines.
 *
 *     drawer "blankets" front 11 high
 *     //                ^^^^^^^^^^^^^ error fronts-do-not-add-up: 3/16" too much
 *
 * Several marks may follow one line. `<` before the carets reaches back to the first word of the line, for what stands
 * where the slashes are; `…` after them says that the finding ends on a later line. Hyphens instead of carets mark a
 * related place: `----- also CODE: words`. A line `// notes not shown` lets notes go unmarked.
 */
export interface Mark {
  readonly kind: 'finding' | 'related';
  readonly severity: string;
  readonly code: string;
  /** Must be contained in the sentence. */
  readonly words: string;
  readonly start: number;
  readonly end: number;
  readonly endsLater: boolean;
}

export interface Marks {
  readonly marks: readonly Mark[];
  readonly notesShown: boolean;
}

const markPattern = /^(\s*\/\/\s*)(<?)([\^]+|-{2,})(…?) (error|warning|note|also) ([a-z-]+): (.*)$/;

export function readMarks(text: string): Marks {
  const marks: Mark[] = [];
  let offset = 0;
  let target = { start: 0, line: '' };
  for (const line of text.split('\n')) {
    const match = markPattern.exec(line);
    if (match === null) {
      if (/^\s*\/\/\s*(<|\^|--)/.test(line)) throw new Error(`this looks like a mark and is none: ${line}`);
      target = { start: offset, line };
    } else {
      const [, before = '', reach = '', carets = '', later = '', severity = '', code = '', words = ''] = match;
      const from = reach === '' ? before.length : target.line.length - target.line.trimStart().length;
      const to = before.length + reach.length + carets.length;
      if (to > target.line.length) throw new Error(`this mark reaches beyond the line above it: ${line}`);
      marks.push({
        kind: severity === 'also' ? 'related' : 'finding',
        severity,
        code,
        words,
        start: target.start + from,
        end: target.start + to,
        endsLater: later !== '',
      });
    }
    offset += line.length + 1;
  }
  return { marks, notesShown: !/^\s*\/\/ notes not shown$/m.test(text) };
}

/** A mark as it would have to be written under the text, for messages of failing tests. */
export function writeMark(text: string, found: Omit<Mark, 'kind' | 'endsLater'>, sign = '^'): string {
  const lineStart = text.lastIndexOf('\n', found.start - 1) + 1;
  const lineEnd = (text.indexOf('\n', found.start) + text.length + 1) % (text.length + 1) || text.length;
  const line = text.slice(lineStart, lineEnd);
  const end = Math.min(found.end, lineEnd);
  const column = found.start - lineStart;
  const length = Math.max(end - found.start, 1);
  const lead =
    column >= 2
      ? `//${' '.repeat(column - 2)}${sign.repeat(length)}`
      : `//<${sign.repeat(Math.max(column + length - 3, 1))}`;
  const later = found.end > lineEnd ? '…' : '';
  return `${line}\n${lead}${later} ${found.severity} ${found.code}: ${found.words}`;
}
