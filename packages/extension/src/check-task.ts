import * as vscode from 'vscode';

/**
 * The task `fettle: check`: the command line over all texts of a folder, its lines read into the list of problems. Only
 * where programs can be run; in the browser the language server alone fills that list.
 */

const type = 'fettle';
const mostTexts = 2000;

interface CheckDefinition extends vscode.TaskDefinition {
  readonly task: 'check';
  /** Paths from the folder; all of its texts when absent. */
  readonly files?: readonly string[];
}

/** `program` runs JavaScript, `commandLine` is the program's own file. */
export function provideCheckTask(program: string, commandLine: string): vscode.Disposable {
  const taskFor = async (definition: CheckDefinition, folder: vscode.WorkspaceFolder): Promise<vscode.Task> => {
    const files = definition.files ?? (await textsIn(folder));
    const cwd = folder.uri.fsPath;
    // VS Code is the program where it has no other: told so, it runs as plain Node.
    const execution = new vscode.ProcessExecution(program, [commandLine, 'check', ...files], {
      cwd,
      env: { ELECTRON_RUN_AS_NODE: '1' },
    });
    const task = new vscode.Task(definition, folder, 'check', type, execution, '$fettle');
    task.group = vscode.TaskGroup.Build;
    task.detail = 'Check every text of this folder on the command line';
    task.presentationOptions = { reveal: vscode.TaskRevealKind.Silent, clear: true };
    return task;
  };
  return vscode.tasks.registerTaskProvider(type, {
    provideTasks: async () => {
      const folders = (vscode.workspace.workspaceFolders ?? []).filter(({ uri }) => uri.scheme === 'file');
      const tasks = await Promise.all(
        folders.map(async (folder) => {
          const files = await textsIn(folder);
          return files.length === 0 ? [] : [await taskFor({ type, task: 'check' }, folder)];
        }),
      );
      return tasks.flat();
    },
    resolveTask: async (task) => {
      const definition = readDefinition(task.definition);
      const folder = typeof task.scope === 'object' ? task.scope : vscode.workspace.workspaceFolders?.[0];
      if (definition === undefined || folder === undefined) return undefined;
      // The definition has to be the very one that was asked for, or the editor does not know its task again.
      const resolved = await taskFor(definition, folder);
      resolved.definition = task.definition;
      return resolved;
    },
  });
}

function readDefinition(definition: vscode.TaskDefinition): CheckDefinition | undefined {
  const { files, task } = definition;
  if (definition.type !== type || task !== 'check') return undefined;
  if (files === undefined) return { type, task };
  if (!Array.isArray(files) || !files.every((file) => typeof file === 'string' && !file.startsWith('-')))
    return undefined;
  return { type, task, files };
}

async function textsIn(folder: vscode.WorkspaceFolder): Promise<readonly string[]> {
  const pattern = new vscode.RelativePattern(folder, '**/*.fettle');
  const found = await vscode.workspace.findFiles(pattern, undefined, mostTexts);
  // With the folder before them, no name is taken for an option.
  return found.map((uri) => `.${uri.path.slice(folder.uri.path.replace(/\/$/, '').length)}`).sort();
}
