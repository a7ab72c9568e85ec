import * as vscode from 'vscode';

/** One question of several, with its place among them and a way back. Knows nothing of what is asked for. */

export type Answer<T> = { readonly kind: 'answer'; readonly value: T } | { readonly kind: 'back' | 'left' };

export interface Asked {
  readonly title: string;
  readonly prompt: string;
  readonly step: number;
  readonly steps: number;
  /** There is something to go back to. */
  readonly back: boolean;
}

export interface Choice {
  readonly id: string;
  readonly label: string;
  readonly detail: string;
}

/** `problem` is asked at every key; what has one is not taken. */
export async function askWords(
  asked: Asked,
  value: string,
  problem: (words: string) => Promise<string | undefined>,
): Promise<Answer<string>> {
  const box = vscode.window.createInputBox();
  box.prompt = asked.prompt;
  box.value = value;
  box.valueSelection = [0, value.length];
  let latest = 0;
  const check = async (words: string) => {
    const turn = ++latest;
    const found = await problem(words);
    // A slow answer about earlier words must not stand against later ones.
    if (turn === latest) box.validationMessage = found;
    return found;
  };
  box.onDidChangeValue((words) => void check(words));
  return await shown(box, asked, async () => {
    const words = box.value;
    return (await check(words)) === undefined ? words : undefined;
  });
}

export async function askOne(
  asked: Asked,
  choices: readonly Choice[],
  chosen: readonly string[],
): Promise<Answer<string>> {
  const list = listOf(asked, choices);
  list.activeItems = list.items.filter(({ id }) => chosen.includes(id));
  return await shown(list, asked, async () => list.activeItems[0]?.id);
}

/** At least one. */
export async function askSeveral(
  asked: Asked,
  choices: readonly Choice[],
  chosen: readonly string[],
): Promise<Answer<readonly string[]>> {
  const list = listOf(asked, choices);
  list.canSelectMany = true;
  list.selectedItems = list.items.filter(({ id }) => chosen.includes(id));
  return await shown(list, asked, async () => {
    const ids = list.selectedItems.map(({ id }) => id);
    if (ids.length > 0) return ids;
    list.placeholder = `${asked.prompt} Choose at least one`;
    return undefined;
  });
}

function listOf(
  asked: Asked,
  choices: readonly Choice[],
): vscode.QuickPick<vscode.QuickPickItem & { readonly id: string }> {
  const list = vscode.window.createQuickPick<vscode.QuickPickItem & { readonly id: string }>();
  list.placeholder = asked.prompt;
  list.matchOnDetail = true;
  list.items = choices.map(({ detail, id, label }) => ({ id, label, detail }));
  return list;
}

/** Shows it until it is answered, left by Escape, or gone back from. `take` answers nothing for what cannot be taken. */
async function shown<T>(
  input: vscode.InputBox | vscode.QuickPick<vscode.QuickPickItem & { readonly id: string }>,
  asked: Asked,
  take: () => Promise<T | undefined>,
): Promise<Answer<T>> {
  input.title = asked.title;
  input.step = asked.step;
  input.totalSteps = asked.steps;
  input.ignoreFocusOut = true;
  input.buttons = asked.back ? [vscode.QuickInputButtons.Back] : [];
  try {
    return await new Promise<Answer<T>>((resolve, reject) => {
      input.onDidTriggerButton((button) => {
        if (button === vscode.QuickInputButtons.Back) resolve({ kind: 'back' });
      });
      input.onDidHide(() => resolve({ kind: 'left' }));
      input.onDidAccept(() => {
        take().then((value) => {
          if (value !== undefined) resolve({ kind: 'answer', value });
        }, reject);
      });
      input.show();
    });
  } finally {
    input.dispose();
  }
}
