import * as vscode from 'vscode';

/** `fettle.picture.openWith`: whether a text that is opened brings its picture along. Once for each opening. */
export function openPictureWithText(show: (uri: vscode.Uri) => unknown): vscode.Disposable {
  const opened = new Set<string>();
  const look = (editor: vscode.TextEditor | undefined) => {
    if (editor?.document.languageId !== 'fettle' || editor.document.uri.scheme === 'git') return;
    const { uri } = editor.document;
    if (opened.has(uri.toString())) return;
    opened.add(uri.toString());
    const setting = vscode.workspace.getConfiguration('fettle.picture', uri).get<unknown>('openWith');
    if (setting === 'text') void show(uri);
  };
  const listeners = vscode.Disposable.from(
    vscode.window.onDidChangeActiveTextEditor(look),
    vscode.workspace.onDidCloseTextDocument(({ uri }) => opened.delete(uri.toString())),
  );
  look(vscode.window.activeTextEditor);
  return listeners;
}
