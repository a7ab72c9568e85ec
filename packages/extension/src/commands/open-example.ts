import * as vscode from 'vscode';

/** `fettle.openExample`: a small piece that needs no shop file, as a text of one's own that is not saved anywhere yet. */

const example = `piece "Chest" {
  size 30 wide, 30 high, 18 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 3/32 {
    stack {
      drawer "shirts"   front 7 high
      drawer "jumpers"  front 9 high
      drawer "blankets" rest
    }
    fronts thick 3/4
  }
}
`;

export async function openExample(showPicture: (uri: vscode.Uri) => Promise<unknown>): Promise<void> {
  const document = await vscode.workspace.openTextDocument({ language: 'fettle', content: example });
  await vscode.window.showTextDocument(document);
  await showPicture(document.uri);
}
