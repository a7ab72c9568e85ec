import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  linkSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { systemReason } from './read-text.ts';

/**
 * Puts a set of files into a folder, all of them or none. They are written into a folder of their own first, on the same
 * disk, and moved from there: every file is whole at any moment, and when one cannot be put in its place, those already
 * moved go back. Only a machine that stops dead between two of the moves can leave some new beside some old.
 */

export interface FileToWrite {
  readonly name: string;
  readonly content: string;
}

export type Written =
  | { readonly kind: 'written'; readonly paths: readonly string[] }
  /** Nothing has changed. `why` goes behind `name`. */
  | { readonly kind: 'refused'; readonly name: string; readonly why: string };

/**
 * Never throws. The folder is made if it is not there. Files of other names in it stay. Ending the process politely
 * (Ctrl-C, SIGTERM) waits for the files: all of this happens in one go.
 */
export function writeWhole(folder: string, files: readonly FileToWrite[]): Written {
  const waitForFiles = () => {};
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  for (const signal of signals) process.on(signal, waitForFiles);
  try {
    const refusal = whyNotInto(folder, files);
    if (refusal !== undefined) return refusal;
    return existsSync(folder) ? moveIntoFolder(folder, files) : makeFolder(folder, files);
  } finally {
    for (const signal of signals) process.off(signal, waitForFiles);
  }
}

/** What can be seen beforehand is said beforehand. */
function whyNotInto(folder: string, files: readonly FileToWrite[]): Written | undefined {
  try {
    if (!statSync(folder).isDirectory()) return { kind: 'refused', name: folder, why: 'is a file, not a folder' };
  } catch (error) {
    const why = systemReason(error, 'written');
    return why === 'is not there' ? undefined : { kind: 'refused', name: folder, why };
  }
  for (const { name } of files) {
    const path = join(folder, name);
    try {
      if (lstatSync(path, { throwIfNoEntry: false })?.isDirectory()) {
        return { kind: 'refused', name: path, why: 'is a folder and stands in the way' };
      }
    } catch (error) {
      // A folder that may be listed but not entered.
      return { kind: 'refused', name: folder, why: systemReason(error, 'written') };
    }
  }
  return undefined;
}

/** The folder is not there yet: it appears with all that is in it. */
function makeFolder(folder: string, files: readonly FileToWrite[]): Written {
  const parent = dirname(resolve(folder));
  let firstMade: string | undefined;
  let aside: string | undefined;
  try {
    firstMade = mkdirSync(parent, { recursive: true });
    aside = mkdtempSync(join(parent, `.${basename(folder).slice(0, 60)}-unfinished-`));
    const whole = join(aside, 'whole');
    mkdirSync(whole);
    for (const file of files) writeThrough(join(whole, file.name), file.content);
    renameSync(whole, folder);
    rmSync(aside, { recursive: true, force: true });
    return { kind: 'written', paths: files.map(({ name }) => join(folder, name)) };
  } catch (error) {
    removeQuietly(firstMade ?? aside);
    return { kind: 'refused', name: folder, why: systemReason(error, 'written') };
  }
}

/** The folder is there and keeps what else is in it. */
function moveIntoFolder(folder: string, files: readonly FileToWrite[]): Written {
  let aside: string | undefined;
  let at = folder;
  const undo: (() => void)[] = [];
  try {
    aside = mkdtempSync(join(folder, '.unfinished-'));
    const replaced = join(aside, 'replaced');
    mkdirSync(replaced);
    for (const { name, content } of files) {
      at = join(folder, name);
      writeThrough(join(aside, name), content);
    }
    for (const { name } of files) {
      at = join(folder, name);
      const target = at;
      const old = join(replaced, name);
      if (lstatSync(target, { throwIfNoEntry: false }) === undefined) {
        undo.push(() => rmSync(target, { force: true }));
      } else {
        keepAside(target, old);
        undo.push(() => renameSync(old, target));
      }
      renameSync(join(aside, name), target);
    }
    removeQuietly(aside);
    return { kind: 'written', paths: files.map(({ name }) => join(folder, name)) };
  } catch (error) {
    for (const step of undo.reverse()) quietly(step);
    removeQuietly(aside);
    return { kind: 'refused', name: at, why: systemReason(error, 'written') };
  }
}

/** To the disk, so that a move never shows a file whose content is still on its way. */
function writeThrough(path: string, content: string): void {
  const descriptor = openSync(path, 'wx');
  try {
    writeFileSync(descriptor, content);
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
}

/** A second name for the old file, so that its first is never without one; a copy where the disk knows no second names. */
function keepAside(path: string, aside: string): void {
  try {
    linkSync(path, aside);
  } catch {
    copyFileSync(path, aside);
  }
}

function removeQuietly(path: string | undefined): void {
  if (path !== undefined) quietly(() => rmSync(path, { recursive: true, force: true }));
}

/** For tidying up after something else has failed or is done: what is left over then is a nuisance, not a failure. */
function quietly(step: () => void): void {
  try {
    step();
  } catch {
    // The folder that stays is called unfinished.
  }
}
