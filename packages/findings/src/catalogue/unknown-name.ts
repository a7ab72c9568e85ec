import { defineFinding, type Say } from '../finding.ts';

function knownNames(known: number, names: readonly string[], say: Say): string {
  const said = names.map((name) => say.name(name));
  const last = said.pop();
  if (last === undefined || known > names.length) {
    return `${known} others are known${last === undefined ? '' : `, among them ${[...said, last].join(', ')}`}`;
  }
  return said.length === 0 ? `only ${last} is known` : `${said.join(', ')} and ${last} are known`;
}

function oneOf(said: readonly string[]): string {
  return [said.slice(0, -1).join(', '), said.at(-1)].filter((each) => each !== '').join(' or ');
}

/** A quoted name that nothing declares. */
export const unknownName = defineFinding<{
  readonly name: string;
  /** 'stock', 'slide', … in the reader's words. */
  readonly what: string;
  readonly nearest: string;
  /** Whether any file is used that could declare it. */
  readonly known: number;
  /** A few of those that are. */
  readonly names?: readonly string[];
  /** Names of which it is the beginning, where none is near. */
  readonly longer?: readonly string[];
}>({
  code: 'unknown-name',
  severity: 'error',
  title: 'A name that nothing declares',
  headline: (facts, say) =>
    facts.nearest === '' && facts.longer === undefined
      ? `no ${facts.what} is called ${say.name(facts.name)}; ` +
        (facts.known === 0
          ? `no ${facts.what} is declared in this text or in a file it uses`
          : knownNames(facts.known, facts.names ?? [], say))
      : `no ${facts.what} is called ${say.name(facts.name)}; ` +
        `did you mean ${oneOf((facts.longer ?? [facts.nearest]).map((name) => say.name(name)))}?`,
  brief: (facts, say) => `no ${facts.what} ${say.name(facts.name)}`,
  related: { nearest: (values, say) => `${say.name(String(values['name']))} is declared here` },
  mends: { 'use-nearest': (values, say) => `Write ${say.name(String(values['name']))}` },
  help: `
A name in quotes stands for something that is declared once: stock and hardware in a shop file, a front in the piece.
This one is declared nowhere, neither here nor in a file that this text uses. Most often it is a slip of the pen.

\`\`\`fettle wrong
use "shop.fettle"
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides "birch plie" }
}
\`\`\`

\`\`\`fettle right
use "shop.fettle"
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides "birch ply" }
}
\`\`\`
`,
});
