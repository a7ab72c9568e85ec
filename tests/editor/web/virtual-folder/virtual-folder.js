// @ts-nocheck
/** Runs in the browser's extension host. A folder in memory, under the scheme `workshop`, filled with what the test serves. */
const vscode = require('vscode');

exports.activate = async (context) => {
  const address = vscode.Uri.joinPath(context.extensionUri, 'files.json').toString(true);
  const files = new Map(Object.entries(await (await fetch(address)).json()).map(([name, text]) => [`/${name}`, bytes(text)]));
  const changed = new vscode.EventEmitter();
  const told = (type, uri) => changed.fire([{ type, uri }]);
  const missing = (uri) => vscode.FileSystemError.FileNotFound(uri);
  context.subscriptions.push(
    vscode.workspace.registerFileSystemProvider(
      'workshop',
      {
        onDidChangeFile: changed.event,
        watch: () => new vscode.Disposable(() => {}),
        stat: (uri) => {
          const file = files.get(uri.path);
          if (file === undefined && uri.path !== '/') throw missing(uri);
          const type = file === undefined ? vscode.FileType.Directory : vscode.FileType.File;
          return { type, ctime: 0, mtime: Date.now(), size: file?.byteLength ?? 0 };
        },
        readDirectory: () => [...files.keys()].map((path) => [path.slice(1), vscode.FileType.File]),
        createDirectory: (uri) => {
          throw vscode.FileSystemError.NoPermissions(uri);
        },
        readFile: (uri) => {
          const file = files.get(uri.path);
          if (file === undefined) throw missing(uri);
          return file;
        },
        writeFile: (uri, content) => {
          const isNew = !files.has(uri.path);
          files.set(uri.path, content);
          told(isNew ? vscode.FileChangeType.Created : vscode.FileChangeType.Changed, uri);
        },
        delete: (uri) => {
          if (!files.delete(uri.path)) throw missing(uri);
          told(vscode.FileChangeType.Deleted, uri);
        },
        rename: (from, to) => {
          const file = files.get(from.path);
          if (file === undefined) throw missing(from);
          files.delete(from.path);
          files.set(to.path, file);
          told(vscode.FileChangeType.Deleted, from);
          told(vscode.FileChangeType.Created, to);
        },
      },
      { isCaseSensitive: true },
    ),
  );
};

function bytes(text) {
  return new TextEncoder().encode(text);
}
