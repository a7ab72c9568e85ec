/**
 * Colours a text by the grammar in syntaxes/, with the very engine the editor uses, and writes down each coloured word
 * with its class: `drawer:statement "cards":declaration front:measure 5:number high:measure`.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import oniguruma from 'vscode-oniguruma';
import textmate from 'vscode-textmate';

const grammarFile = new URL('../../syntaxes/fettle.tmLanguage.json', import.meta.url);

/** Scope, as far as a colour theme looks at it, and the class it stands for; the first that matches counts. */
const classes: readonly (readonly [scope: string, name: string])[] = [
  ['comment.', 'comment'],
  ['constant.numeric.length', 'length'],
  ['constant.numeric', 'number'],
  ['entity.name.declaration', 'declaration'],
  ['string.quoted', 'name'],
  ['keyword.control.statement', 'statement'],
  ['keyword.other.relation', 'relation'],
  ['support.constant.measure', 'measure'],
  ['storage.type.unit', 'unit'],
  ['variable.parameter', 'word'],
  ['keyword.operator', 'operator'],
  ['punctuation.', ''],
];

export interface ColouredWord {
  readonly text: string;
  /** Empty for punctuation, `plain` for what the grammar does not know. */
  readonly colour: string;
}

async function loadGrammar(): Promise<textmate.IGrammar> {
  const wasm = readFileSync(createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm'));
  await oniguruma.loadWASM(wasm);
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async () => textmate.parseRawGrammar(readFileSync(grammarFile, 'utf8'), grammarFile.pathname),
  });
  const grammar = await registry.loadGrammar('source.fettle');
  if (grammar === null) throw new Error('the grammar does not load');
  return grammar;
}

let grammar: Promise<textmate.IGrammar> | undefined;

/** Line by line; white space is left out. */
export async function colour(text: string): Promise<readonly (readonly ColouredWord[])[]> {
  grammar ??= loadGrammar();
  const loaded = await grammar;
  let state = textmate.INITIAL;
  return text.split('\n').map((line) => {
    const { tokens, ruleStack } = loaded.tokenizeLine(line, state);
    state = ruleStack;
    return tokens.flatMap(({ startIndex, endIndex, scopes }) => {
      const word = line.slice(startIndex, endIndex).trim();
      return word === '' ? [] : [{ text: word, colour: classOf(scopes) }];
    });
  });
}

function classOf(scopes: readonly string[]): string {
  const known = classes.find(([scope]) => scopes.some((each) => each.startsWith(scope)));
  return known?.[1] ?? 'plain';
}

export function written(words: readonly ColouredWord[]): string {
  return words.map(({ text, colour: name }) => (name === '' ? text : `${text}:${name}`)).join(' ');
}
