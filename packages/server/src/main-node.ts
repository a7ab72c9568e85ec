import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { ClientFiles } from './client-files.ts';
import { FilesByPlace } from './files-by-place.ts';
import { startFettleServer } from './start-server.ts';

/** Entry of the server as a process: talks over what its command line says, reads this machine's files itself. */
const connection = createConnection(ProposedFeatures.all);
startFettleServer(connection, new FilesByPlace(NodeFileSystem.fileSystemProvider(), new ClientFiles(connection)));
