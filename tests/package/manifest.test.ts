/**
 * What the manifest promises: that every command can be found and run, that what is limited somewhere is said, that
 * settings have sensible words, that the problem matcher reads the command line, and that pictures of the walkthrough
 * tell the truth.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { showLength } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { describe, expect, test } from 'vitest';
import { Bench } from '../cli/running-cli.ts';
import { openFixture } from '../language/harness/workbench.ts';

const repository = join(import.meta.dirname, '../..');
const manifest = JSON.parse(readFileSync(join(repository, 'package.json'), 'utf8'));
const { contributes } = manifest;
const commands: readonly string[] = contributes.commands.map(({ command }: { command: string }) => command);

function source(...names: readonly string[]): string {
  return names.map((name) => readFileSync(join(repository, 'packages/extension/src', name), 'utf8')).join('\n');
}

describe('commands', () => {
  test('titles are short, in title case, and say what is done', () => {
    for (const { category, title } of contributes.commands) {
      expect(category).toBe('Fettle');
      expect(title).toMatch(/^[A-Z][a-z]+ ((the|an) )?[A-Z]/);
      expect(title.length).toBeLessThanOrEqual(40);
    }
  });

  test('menus, keys and the walkthrough speak only of commands that there are', () => {
    const inMenus = Object.values(contributes.menus)
      .flat()
      .map((entry) => (entry as { command?: string }).command);
    const inKeys = contributes.keybindings.map(({ command }: { command: string }) => command);
    const inSteps = contributes.walkthroughs
      .flatMap(({ steps }: { steps: readonly object[] }) => steps)
      .flatMap((step: object) =>
        [...JSON.stringify(step).matchAll(/[oO]?n?[cC]ommand:(fettle\.\w+)/g)].map(([, id]) => id),
      );
    for (const command of [...inMenus, ...inKeys, ...inSteps].filter((each) => each !== undefined)) {
      expect(commands).toContain(command);
    }
    expect(inSteps).toContain('fettle.newPiece');
  });

  test('whatever needs a text or a picture is not offered without one', () => {
    const offered = new Map(
      contributes.menus.commandPalette.map(({ command, when }: { command: string; when: string }) => [command, when]),
    );
    const anywhere = commands.filter((command) => !offered.has(command));
    expect(anywhere).toEqual(['fettle.newPiece', 'fettle.openExample', 'fettle.restartServer', 'fettle.showLog']);
    for (const when of offered.values()) expect(when).toMatch(/editorLangId == fettle|activeWebviewPanelId/);
  });
});

test('every setting has a description, a default, and is read somewhere', () => {
  const code = source('commands/new-piece.ts', 'preview-panels.ts', 'open-with-text.ts');
  const server = ['scheduling.ts', 'shown-lengths.ts'].map((name) =>
    readFileSync(join(repository, 'packages/server/src', name), 'utf8'),
  );
  for (const [id, setting] of Object.entries<Record<string, unknown>>(contributes.configuration.properties)) {
    expect(setting['description'] ?? setting['markdownDescription'], id).toBeTruthy();
    expect(setting['default'], id).toBeDefined();
    if (setting['enum'] !== undefined) expect(setting['enum'], id).toContain(setting['default']);
    expect([code, ...server].join('\n'), id).toContain(id.split('.').at(-1));
  }
});

test('folders that are not trusted, and those of no machine, are declared as what they are: all but the task', () => {
  const { untrustedWorkspaces, virtualWorkspaces } = manifest.capabilities;
  expect(untrustedWorkspaces.supported).toBe('limited');
  expect(virtualWorkspaces.supported).toBe('limited');
  for (const { description } of [untrustedWorkspaces, virtualWorkspaces]) expect(description).toMatch(/task/);
  // Only the task runs a program or asks for a path of this machine; the browser's entry has neither.
  const rest = source(
    'extension.ts',
    'activate-web.ts',
    'serve-files.ts',
    'commands/new-piece.ts',
    'open-with-text.ts',
  );
  expect(rest).not.toMatch(/fsPath|ProcessExecution|child_process|ShellExecution/);
  expect(source('activate-web.ts')).not.toContain('provideCheckTask');
  expect(source('check-task.ts')).toMatch(/scheme === 'file'/);
});

test('the problem matcher reads errors and warnings off the command line, and nothing else; notes are no problems', () => {
  const [matcher] = contributes.problemMatchers;
  const { pattern } = matcher;
  const read = (line: string) => {
    const found = new RegExp(pattern.regexp).exec(line);
    return found === null
      ? undefined
      : {
          file: found[pattern.file],
          line: found[pattern.line],
          severity: found[pattern.severity],
          code: found[pattern.code],
        };
  };
  const bench = new Bench();
  try {
    bench.write('two words.fettle', bench.sideboard(['drawer "blankets" rest', 'drawer "blankets" front 11 high']));
    const { out } = bench.run(['check', './two words.fettle', './shop.fettle']);
    const lines = out.trimEnd().split('\n');
    const findings = lines.filter((line) => !line.startsWith('    ') && !/:\d+ note /.test(line));
    expect(lines.filter((line) => read(line) !== undefined)).toEqual(findings);
    expect(findings.map(read)).toContainEqual({
      file: './two words.fettle',
      line: expect.stringMatching(/^\d+$/),
      severity: 'error',
      code: 'fronts-do-not-add-up',
    });
  } finally {
    bench.remove();
  }
});

describe('the walkthrough', () => {
  const steps: readonly { readonly id: string; readonly media: { readonly svg: string; readonly altText: string } }[] =
    contributes.walkthroughs[0].steps;
  const wordsIn = (name: string) =>
    [
      ...readFileSync(join(repository, `packages/extension/media/walkthrough/${name}.svg`), 'utf8').matchAll(
        /<text[^>]*>([^<]*)</g,
      ),
    ].map(([, words]) => (words ?? '').replaceAll('&lt;', '<').replaceAll('&amp;', '&'));

  test('has four or five steps, each with a picture and words for who cannot see it; the last is one’s own piece', () => {
    expect(steps.length).toBeGreaterThanOrEqual(4);
    expect(steps.length).toBeLessThanOrEqual(5);
    for (const { media } of steps) expect(media.altText.length).toBeGreaterThan(20);
    expect(steps.at(-1)?.id).toBe('own');
  });

  test('the text it shows fits, and what it says of fronts that are too high is what Fettle says', async () => {
    const text = wordsIn('text').join('\n');
    expect(source('commands/open-example.ts')).toContain(`\`${text}\n\``);
    const findings = async (words: string) => {
      const workbench = await openFixture({ files: [{ name: 'chest.fettle', text: words }] });
      return evaluateDocument(workbench.services, workbench.document('chest.fettle')).findings;
    };
    expect((await findings(text)).filter(({ severity }) => severity !== 'note')).toEqual([]);
    const wrong = text.replace('drawer "blankets" rest', 'drawer "blankets" front 14 high');
    const [told] = (await findings(wrong)).filter(({ severity }) => severity === 'error');
    const shown = wordsIn('findings');
    expect(shown.slice(3, 5).join(' ')).toBe(told?.sentence);
    expect(told?.fixes.map(({ title }) => title)).toEqual(expect.arrayContaining(shown.slice(5)));
  });

  test('the cut list it shows is that of the text it shows: its marks, and how long each part is', async () => {
    const workbench = await openFixture({ files: [{ name: 'chest.fettle', text: wordsIn('text').join('\n') }] });
    const [piece] = evaluateDocument(workbench.services, workbench.document('chest.fettle')).pieces;
    if (piece === undefined) throw new Error('the walkthrough shows no piece');
    const { parts, design } = piece.evaluation;
    const made = [...parts]
      .sort((a, b) => a.mark.localeCompare(b.mark, 'en'))
      .map((part) => {
        const word = ['side', 'bottom', 'front'].find((each) => part.label.includes(each)) ?? part.label;
        return [part.mark, word, showLength(part.length.length, design.units)];
      });
    expect(wordsIn('bench')).toEqual(['Front elevation', 'Cut list', ...made.flat()]);
  });

  test('its words are read as they stand: titles and descriptions know no signs for code', () => {
    const { title, description } = contributes.walkthroughs[0];
    const said = [title, description, ...contributes.walkthroughs[0].steps.flatMap(wordsOfStep)];
    expect(said.length).toBeGreaterThan(10);
    expect(said.filter((words) => words.includes('`'))).toEqual([]);
  });

  // What marks the place where one has the focus need not stand out from the ground as much as letters must.
  test.each(['text', 'findings', 'picture', 'bench', 'own-piece'])(
    'the letters of %s have a colour for letters',
    (name) => {
      const picture = readFileSync(join(repository, `packages/extension/media/walkthrough/${name}.svg`), 'utf8');
      const colours = [...picture.matchAll(/<text[^>]* fill="var\(--vscode-([A-Za-z-]+),/g)].map(
        ([, colour]) => colour,
      );
      expect(colours).toHaveLength(wordsIn(name).length);
      expect(colours.filter((colour) => colour !== 'foreground' && colour !== 'editorError-foreground')).toEqual([]);
    },
  );
});

function wordsOfStep(step: { readonly title: string; readonly description: string }): readonly string[] {
  return [step.title, step.description];
}
