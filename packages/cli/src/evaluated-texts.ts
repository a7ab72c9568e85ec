import { resolve } from 'node:path';
import { createFettleServices, type EvaluatedDocument, evaluateDocument } from '@fettle/language';
import { type LangiumDocument, type LangiumDocuments, URI } from 'langium';
import { GuardedFiles } from './guarded-files.ts';
import { readText } from './read-text.ts';

/** Takes what was named on the command line to evaluated documents. Knows nothing of how they are shown. */

export interface NamedText {
  /** As the maker wrote it; '-' is the standard input. */
  readonly name: string;
  /** Where the text stands, or would stand: what it `use`s is looked for beside it. */
  readonly path: string;
}

export interface EvaluatedText extends NamedText {
  readonly document: LangiumDocument;
  readonly evaluated: EvaluatedDocument;
}

export interface Refusal {
  readonly name: string;
  /** Goes behind the name. */
  readonly why: string;
}

export interface EvaluatedTexts {
  /** In the order given, each once. */
  readonly texts: readonly EvaluatedText[];
  readonly refusals: readonly Refusal[];
  /** These and whatever they use. */
  readonly documents: LangiumDocuments;
}

/** What cannot be read or worked out is among the refusals; the others are there all the same. Never throws on any text. */
export async function evaluateTexts(named: readonly NamedText[]): Promise<EvaluatedTexts> {
  const files = new GuardedFiles();
  const { shared, Fettle } = createFettleServices({ fileSystemProvider: () => files });
  const { DocumentBuilder, LangiumDocumentFactory, LangiumDocuments: documents } = shared.workspace;
  const refusals: Refusal[] = [];
  const parsed: (NamedText & { readonly document: LangiumDocument })[] = [];

  for (const each of named) {
    const uri = URI.file(resolve(each.path));
    if (documents.hasDocument(uri)) continue;
    const read = shared.ServiceRegistry.hasServices(uri)
      ? readText(each.name === '-' ? 0 : each.path)
      : { kind: 'refused' as const, why: await whyNoFettleText(each) };
    if (read.kind === 'refused') {
      refusals.push({ name: nameOf(each), why: read.why });
      continue;
    }
    const document = LangiumDocumentFactory.fromString(read.text, uri);
    documents.addDocument(document);
    parsed.push({ ...each, document });
  }

  // Names are looked up by the evaluation itself; what the parser library would check again is not asked for.
  await DocumentBuilder.build(
    parsed.map(({ document }) => document),
    { validation: false, eagerLinking: false },
  );

  const texts: EvaluatedText[] = [];
  for (const each of parsed) {
    try {
      texts.push({ ...each, evaluated: evaluateDocument(Fettle, each.document) });
    } catch (error) {
      const cause = error instanceof Error ? error.message.split('\n')[0] : String(error);
      refusals.push({ name: nameOf(each), why: `could not be worked out, a fault of the program: ${cause}` });
    }
  }
  for (const [path, why] of files.refused) refusals.push({ name: path, why });
  return { texts, refusals, documents };
}

/** A folder or a file that is not there is told as such, whatever its name ends in. */
async function whyNoFettleText(each: NamedText): Promise<string> {
  const read = each.name === '-' ? undefined : readText(each.path);
  if (read?.kind === 'refused') return read.why;
  return each.name === '-'
    ? 'needs a name that ends in .fettle after --as'
    : 'does not end in .fettle; to read it all the same, pass it as - with --as NAME.fettle';
}

function nameOf(each: NamedText): string {
  return each.name === '-' ? 'standard input' : each.name;
}
