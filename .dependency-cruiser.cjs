/**
 * Import directions: who may know whom. The rooms and their arrows are drawn in DEVELOPERS.md; here they are enforced.
 * Imports of types count like any other, except that a circle needs values all round.
 */

/** Each room with the rooms it may import, and the packages from the registry it may use. */
const rooms = {
  findings: { rooms: [], packages: [], node: false },
  engine: { rooms: ['findings'], packages: ['fraction.js', 'yalps'], node: false },
  drawings: { rooms: ['findings', 'engine'], packages: ['papaparse'], node: false },
  language: {
    rooms: ['findings', 'engine'],
    packages: ['langium', 'chevrotain', 'vscode-languageserver', 'vscode-languageserver-[a-z]+', 'vscode-jsonrpc'],
    node: false,
  },
  protocol: { rooms: [], packages: [], node: false },
  server: {
    rooms: ['findings', 'engine', 'drawings', 'language', 'protocol'],
    packages: ['langium', 'vscode-languageserver', 'vscode-languageserver-[a-z]+', 'vscode-jsonrpc', 'vscode-uri'],
    node: true,
  },
  extension: { rooms: ['protocol'], packages: ['vscode', '@types/vscode', 'vscode-languageclient'], node: true },
  preview: { rooms: ['protocol'], packages: [], node: false },
  cli: { rooms: ['findings', 'engine', 'drawings', 'language'], packages: ['commander', 'langium'], node: true },
};

const named = (names) => (names.length === 0 ? '(?!)' : `(${names.join('|')})`);

const directions = Object.entries(rooms).map(([room, may]) => ({
  name: `${room}-knows-only-its-rooms`,
  comment: `${room} may import ${may.rooms.length === 0 ? 'no other room' : may.rooms.join(', ')}`,
  severity: 'error',
  from: { path: `^packages/${room}/` },
  to: { path: '^packages/', pathNot: `^packages/${named([room, ...may.rooms])}/` },
}));

const packages = Object.entries(rooms).map(([room, may]) => ({
  name: `${room}-uses-only-its-packages`,
  comment: `${room} may use ${may.packages.length === 0 ? 'nothing' : may.packages.join(', ')} from the registry`,
  severity: 'error',
  from: { path: `^packages/${room}/` },
  to: { path: 'node_modules/', pathNot: `node_modules/(@types/)?${named(may.packages)}/` },
}));

const withoutNode = Object.keys(rooms).filter((room) => !rooms[room].node);

module.exports = {
  forbidden: [
    ...directions,
    ...packages,
    {
      name: 'nobody-imports-past-an-index',
      comment: 'a room offers what its src/index.ts exports and nothing else',
      severity: 'error',
      from: { path: '^packages/([^/]+)/' },
      to: { path: '^packages/', pathNot: ['^packages/$1/', '^packages/[^/]+/src/index\\.ts$'] },
    },
    {
      name: 'pure-rooms-know-no-system',
      comment: `${withoutNode.join(', ')} run in browsers and workers too`,
      severity: 'error',
      from: { path: `^packages/${named(withoutNode)}/` },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'no-cycles',
      comment: 'a circle of imports has no first file to load; one that a type closes is only drawn, never loaded',
      severity: 'error',
      from: { pathNot: 'node_modules' },
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'everything-resolves',
      comment: 'an import that leads nowhere',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^vscode$' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)(dist|out|generated)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
      extensions: ['.ts', '.mjs', '.js', '.json'],
    },
  },
};
