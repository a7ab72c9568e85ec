import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

/**
 * Reads a text the way a stranger's file must be read: never more than the limit, never something that is no text, and
 * always with one clear reason when it cannot be done. Knows nothing of what the text says.
 */

/** The largest text that is read. A piece of furniture takes some three thousand bytes. */
export const largestTextBytes = 4_000_000;

export type ReadText =
  | { readonly kind: 'text'; readonly text: string }
  /** `why` goes behind the name of the file: 'is a folder, not a file'. `missing`: there is nothing of that name. */
  | { readonly kind: 'refused'; readonly why: string; readonly missing: boolean };

/** Never throws. `from` is a path, or 0 for the standard input. */
export function readText(from: string | 0): ReadText {
  let descriptor: number | undefined;
  try {
    descriptor = from === 0 ? 0 : openSync(from, 'r');
    const status = fstatSync(descriptor);
    if (status.isDirectory()) return refused('is a folder, not a file');
    if (status.isFile() && status.size > largestTextBytes) return tooLarge(megabytes(status.size));
    const bytes = readUpTo(descriptor, largestTextBytes + 1);
    return bytes.length > largestTextBytes ? tooLarge(`more than ${megabytes(largestTextBytes)}`) : asText(bytes);
  } catch (error) {
    return { kind: 'refused', why: systemReason(error, 'read'), missing: codeOf(error) === 'ENOENT' };
  } finally {
    if (descriptor !== undefined && descriptor !== 0) closeSync(descriptor);
  }
}

function readUpTo(descriptor: number, most: number): Uint8Array {
  const chunks: Buffer[] = [];
  let length = 0;
  const chunk = Buffer.alloc(65_536);
  while (length < most) {
    const count = readSome(descriptor, chunk);
    if (count === 0) break;
    chunks.push(Buffer.from(chunk.subarray(0, count)));
    length += count;
  }
  return Buffer.concat(chunks);
}

/** A pipe that has nothing yet, and on some systems one that has ended, comes as an error. */
function readSome(descriptor: number, chunk: Buffer): number {
  for (;;) {
    try {
      return readSync(descriptor, chunk);
    } catch (error) {
      const code = codeOf(error);
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 10);
    }
  }
}

function asText(bytes: Uint8Array): ReadText {
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) {
    return refused('is written in UTF-16; save it as UTF-8');
  }
  if (bytes.includes(0)) return refused('is not a text: it holds bytes of value zero');
  try {
    return { kind: 'text', text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return refused('is not written in UTF-8');
  }
}

function tooLarge(size: string): ReadText {
  return refused(`is too large to be a piece: ${size}, the limit is ${megabytes(largestTextBytes)}`);
}

function megabytes(bytes: number): string {
  return `${Math.round(bytes / 100_000) / 10} MB`;
}

function refused(why: string): ReadText {
  return { kind: 'refused', why, missing: false };
}

function codeOf(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error ? String(error.code) : undefined;
}

/** Why the system would not `deed` something, to stand behind its name. */
export function systemReason(error: unknown, deed: 'read' | 'written'): string {
  const code = codeOf(error);
  switch (code) {
    case 'ENOENT':
      return 'is not there';
    case 'EACCES':
    case 'EPERM':
      return `may not be ${deed}: permission is missing`;
    case 'EROFS':
      return 'may not be written: it can only be read';
    case 'EISDIR':
      return 'is a folder, not a file';
    case 'ENOTDIR':
      return `cannot be ${deed}: a part of its path is a file, not a folder`;
    case 'ENAMETOOLONG':
      return 'has too long a name';
    case 'ENOSPC':
    case 'EDQUOT':
      return 'cannot be written: no room is left';
    case 'EFBIG':
      return 'cannot be written: it grows larger than the system allows';
    default:
      return `cannot be ${deed}: ${code ?? (error instanceof Error ? error.message : String(error))}`;
  }
}
