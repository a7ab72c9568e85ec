import type { Noun, StatementSpec } from './phrase.ts';
import { fileNoun } from './piece.ts';

/** All words of the language taken together, wherever they belong. For telling a slip from a name. */
export interface Vocabulary {
  readonly words: ReadonlySet<string>;
  /** Words that a quoted name may follow: `drawer`, `of`, `as`. */
  readonly beforeNames: ReadonlySet<string>;
  /** Words of statements that declare a name. */
  readonly declaring: ReadonlySet<string>;
}

let gathered: Vocabulary | undefined;

export function vocabulary(): Vocabulary {
  if (gathered === undefined) {
    const words = new Set<string>();
    const beforeNames = new Set<string>();
    const declaring = new Set<string>();
    const seen = new Set<Noun>();
    const addNoun = (noun: Noun) => {
      if (seen.has(noun)) return;
      seen.add(noun);
      for (const spec of noun.statements.values()) addStatement(spec);
      if (noun.bare !== undefined) addStatement(noun.bare);
    };
    const addStatement = (spec: StatementSpec) => {
      if (spec.word !== '') words.add(spec.word);
      if (spec.declares !== undefined) {
        beforeNames.add(spec.word);
        declaring.add(spec.word);
      }
      for (const { items } of spec.phrases) {
        items.forEach((item, index) => {
          if (item.kind === 'word') words.add(item.word);
          else if (item.refers || item.slot === 'path') {
            const before = items[index - 1];
            const word = before?.kind === 'word' ? before.word : spec.word;
            if (index === 0 || before?.kind === 'word') beforeNames.add(word);
          }
        });
      }
      const body = spec.body?.();
      if (body !== undefined) addNoun(body);
    };
    addNoun(fileNoun);
    // A statement without a word of its own begins with a name.
    beforeNames.delete('');
    gathered = { words, beforeNames, declaring };
  }
  return gathered;
}
