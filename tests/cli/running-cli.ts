import { spawn, spawnSync } from 'node:child_process';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';

/** Runs the command line as it is shipped, as a process of its own, in a folder of its own. */

export const repository = join(import.meta.dirname, '../..');
export const bundle = join(repository, 'dist/cli.cjs');
if (!existsSync(bundle)) throw new Error(`${bundle} is missing: run npm run build first`);

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface RunOptions {
  readonly input?: string | Uint8Array;
  /** As somebody whom permissions bind; the tests may run as root, whom they do not. */
  readonly asNobody?: boolean;
}

/** A folder with copies of the examples, gone after the test; everything is run from within it. */
export class Bench {
  readonly folder = mkdtempSync(join(tmpdir(), 'fettle-cli-'));

  constructor() {
    for (const name of ['sideboard.fettle', 'shop.fettle']) {
      copyFileSync(join(repository, 'examples', name), this.path(name));
    }
  }

  path(name: string): string {
    return join(this.folder, name);
  }

  write(name: string, content: string | Uint8Array): void {
    mkdirSync(join(this.path(name), '..'), { recursive: true });
    writeFileSync(this.path(name), content);
  }

  read(name: string): string {
    return readFileSync(this.path(name), 'utf8');
  }

  /** The sideboard with some words replaced. The words must be there. */
  sideboard(...changes: readonly (readonly [from: string, to: string])[]): string {
    let text = this.read('sideboard.fettle');
    for (const [from, to] of changes) {
      expect(text).toContain(from);
      text = text.replace(from, to);
    }
    return text;
  }

  run(words: readonly string[], options: RunOptions = {}): Ended {
    const { status, stdout, stderr } = spawnSync(process.execPath, [...this.#beforehand(options), ...words], {
      cwd: this.folder,
      input: options.input ?? '',
      encoding: 'utf8',
      maxBuffer: 1e9,
    });
    return { code: status, out: stdout, err: stderr };
  }

  /** Through a shell, with `$FETTLE` standing for the command. */
  shell(script: string): Ended {
    const command = `fettle() { '${process.execPath}' '${bundle}' "$@"; }; ${script}`;
    const { status, stdout, stderr } = spawnSync('bash', ['-c', command], { cwd: this.folder, encoding: 'utf8' });
    return { code: status, out: stdout, err: stderr };
  }

  start(words: readonly string[]) {
    return spawn(process.execPath, [bundle, ...words], { cwd: this.folder, stdio: ['ignore', 'pipe', 'pipe'] });
  }

  /** Every file below a folder with its content. */
  everythingIn(name: string): Readonly<Record<string, string>> {
    const entries = readdirSync(this.path(name), { recursive: true, withFileTypes: true });
    const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
    return Object.fromEntries(files.sort().map((file) => [file, readFileSync(file, 'utf8')]));
  }

  #beforehand({ asNobody }: RunOptions): readonly string[] {
    if (asNobody !== true || process.getuid?.() !== 0) return [bundle];
    // The repository may lie where nobody else may look.
    const copy = this.path('cli.cjs');
    copyFileSync(bundle, copy);
    // The command line is the other half of the server's bundle.
    copyFileSync(join(bundle, '../server.js'), this.path('server.js'));
    const becomeNobody = this.path('become-nobody.cjs');
    writeFileSync(becomeNobody, 'process.setgroups([]); process.setgid(65534); process.setuid(65534);');
    return ['--require', becomeNobody, copy];
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

/** Refused in one clear line, without a trace. */
export function expectRefusal(ended: Ended, line: string | RegExp): void {
  const lines = ended.err.trimEnd().split('\n');
  expect(lines).toHaveLength(1);
  if (typeof line === 'string') expect(lines[0]).toBe(line);
  else expect(lines[0]).toMatch(line);
  expect(ended.out).toBe('');
  expect(ended.code).toBe(2);
}
