import {
  mayBeShopOfNewPiece,
  type NewFile,
  type NewPieceParams,
  type NewPieceProblemParams,
  type NewPieceQuestion,
  type NewPieceStep,
  newPieceProblemRequest,
  newPieceRequest,
} from '@fettle/protocol';
import * as vscode from 'vscode';
import { type Answer, type Asked, askOne, askSeveral, askWords } from './asking.ts';

/** `fettle.newPiece`: asks, writes what the server makes of the answers, and opens it with its picture. */

export interface NewPieceHost {
  request<T>(method: string, params: object): Promise<T>;
  showPicture(uri: vscode.Uri): Promise<unknown>;
  readonly log: vscode.LogOutputChannel;
}

type Beside = NewPieceParams['beside'];

/** `target` is the folder it was asked for in, where it was asked for in one. */
export async function newPiece(host: NewPieceHost, target?: unknown): Promise<void> {
  const folder = await folderFor(target);
  if (folder === undefined) return;
  try {
    const beside = await textsIn(folder);
    const made = await askAll(host, beside, folder);
    if (made !== undefined) await open(host, folder, made);
  } catch (error) {
    host.log.error('A new piece could not be written', error instanceof Error ? error : String(error));
    const log = 'Show the Log';
    const words = 'The new piece could not be written. Nothing that was there has changed.';
    if ((await vscode.window.showErrorMessage(words, log)) === log) host.log.show();
  }
}

type Made = Extract<NewPieceStep, { readonly kind: 'made' }>;

/** Undefined when it was left. Going back asks again with the earlier answer in place. */
async function askAll(host: NewPieceHost, beside: Beside, folder: vscode.Uri): Promise<Made | undefined> {
  const usualMeasure = vscode.workspace.getConfiguration('fettle.newPiece', folder).get('measures', 'inches-32');
  const given: { readonly id: string; readonly value: unknown }[] = [];
  const earlier = new Map<string, unknown>();
  for (;;) {
    const answers = Object.fromEntries(given.map(({ id, value }) => [id, value]));
    const params: NewPieceParams = { answers, usualMeasure, beside };
    const next = await host.request<NewPieceStep>(newPieceRequest, params);
    if (next.kind === 'made') return next;
    const { question } = next;
    const { step, steps } = next;
    const asked: Asked = { title: 'New Piece', prompt: question.prompt, step, steps, back: given.length > 0 };
    const answer = await ask(host, params, question, asked, earlier.get(question.id));
    switch (answer.kind) {
      case 'answer':
        earlier.set(question.id, answer.value);
        given.push({ id: question.id, value: answer.value });
        break;
      case 'back':
        given.pop();
        break;
      case 'left':
        return undefined;
      default:
        answer satisfies never;
    }
  }
}

async function ask(
  host: NewPieceHost,
  params: NewPieceParams,
  question: NewPieceQuestion,
  asked: Asked,
  earlier: unknown,
): Promise<Answer<unknown>> {
  if (question.kind === 'words') {
    const problem = async (words: string) => {
      const about: NewPieceProblemParams = { ...params, question: question.id, answer: words };
      return (await host.request<string | null>(newPieceProblemRequest, about)) ?? undefined;
    };
    return await askWords(asked, typeof earlier === 'string' ? earlier : question.suggestion, problem);
  }
  const before = Array.isArray(earlier)
    ? earlier.map(String)
    : typeof earlier === 'string'
      ? [earlier]
      : question.chosen;
  const choose = question.kind === 'several' ? askSeveral : askOne;
  return await choose(asked, question.options, before);
}

/** The folder pointed at, the only one that is open, or the one that is chosen of several. */
async function folderFor(target: unknown): Promise<vscode.Uri | undefined> {
  if (target instanceof vscode.Uri) return target;
  const folders = vscode.workspace.workspaceFolders ?? [];
  if (folders.length === 1) return folders[0]?.uri;
  if (folders.length > 1) {
    return (await vscode.window.showWorkspaceFolderPick({ placeHolder: 'Where should the new piece stand?' }))?.uri;
  }
  const openFolder = 'Open a Folder';
  const words = 'A piece and its shop file stand in a folder. Open one, then start the new piece there.';
  if ((await vscode.window.showInformationMessage(words, openFolder)) === openFolder) {
    await vscode.commands.executeCommand('workbench.action.files.openFolder');
  }
  return undefined;
}

async function textsIn(folder: vscode.Uri): Promise<Beside> {
  const entries = await vscode.workspace.fs.readDirectory(folder);
  const names = entries.map(([name]) => name).filter((name) => name.toLowerCase().endsWith('.fettle'));
  return await Promise.all(
    names.map(async (name) => {
      if (!mayBeShopOfNewPiece(name)) return { name };
      // Opened rather than read from the disk: what is not saved yet holds as well.
      const document = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder, name));
      return { name, text: document.getText() };
    }),
  );
}

async function open(host: NewPieceHost, folder: vscode.Uri, { cautions, piece, shop }: Made): Promise<void> {
  const uri = vscode.Uri.joinPath(folder, piece.name);
  const edit = new vscode.WorkspaceEdit();
  const create = ({ name, text }: NewFile) => {
    // Never over a file that has come to stand there meanwhile.
    edit.createFile(vscode.Uri.joinPath(folder, name), { overwrite: false, contents: new TextEncoder().encode(text) });
  };
  if (shop !== undefined) create(shop);
  create(piece);
  if (!(await vscode.workspace.applyEdit(edit))) throw new Error(`${uri.toString()} could not be created`);
  await vscode.window.showTextDocument(await vscode.workspace.openTextDocument(uri));
  await host.showPicture(uri);
  if (cautions.length > 0) void vscode.window.showInformationMessage(cautions.join(' '));
}
