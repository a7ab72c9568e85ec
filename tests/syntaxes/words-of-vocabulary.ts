import { fileNoun, type Noun } from '../../packages/language/src/schema/index.ts';

/** The words the language knows, read off its vocabulary, so that colouring cannot fall behind it. */
export interface VocabularyWords {
  /** Words that begin a statement somewhere. */
  readonly statements: ReadonlySet<string>;
  /** Statement words that are followed by the name of what they declare. */
  readonly declaring: ReadonlySet<string>;
  /** Words that stand inside statements. */
  readonly small: ReadonlySet<string>;
}

export function wordsOfVocabulary(): VocabularyWords {
  const statements = new Set<string>();
  const declaring = new Set<string>();
  const small = new Set<string>();
  const seen = new Set<Noun>();
  const visit = (noun: Noun): void => {
    if (seen.has(noun)) return;
    seen.add(noun);
    const bare = noun.bare === undefined ? [] : [noun.bare];
    for (const spec of [...noun.statements.values(), ...bare]) {
      if (spec.word !== '') statements.add(spec.word);
      if (spec.declares !== undefined) declaring.add(spec.word);
      for (const item of spec.phrases.flatMap((phrase) => phrase.items)) if (item.kind === 'word') small.add(item.word);
      if (spec.body !== undefined) visit(spec.body());
    }
  };
  visit(fileNoun);
  return { statements, declaring, small };
}
