import { URI } from 'langium';
import { createFettleServices } from '../fettle-module.ts';
import { systemOf } from './answers.ts';
import { writeShop } from './starter-shop.ts';
import { cautions, type FirstDesign, hangings, writePiece } from './write-piece.ts';

/**
 * From everything there is to know to files: the text of the piece, and a shop file beside it where none of those that
 * stand there has what the piece is made of. What is written is read again first, so that it starts without a finding.
 */

export interface NewFile {
  readonly name: string;
  readonly text: string;
}

export interface NewPiece {
  readonly piece: NewFile;
  /** To be written beside it; absent when a file that is there already serves. */
  readonly shop?: NewFile;
  /** Sentences its maker has to know; they stand in the text as well. */
  readonly cautions: readonly string[];
}

/** `beside` are the texts in the folder by the names of their files; none of them is changed. */
export async function makeNewPiece(design: FirstDesign, beside: ReadonlyMap<string, string>): Promise<NewPiece> {
  const taken = new Set([...beside.keys()].map((name) => name.toLowerCase()));
  const name = unusedName(fileStem(design.name), taken);
  const told = { cautions: cautions(design) };
  for (const shop of shopNames()) {
    const standing = beside.get(shop);
    const known = standing === undefined ? undefined : await cleanText(design, shop, standing);
    if (known !== undefined) return { piece: { name, text: known }, ...told };
    if (!taken.has(shop)) {
      const own = writeShop(systemOf(design.ruler));
      const text = (await cleanText(design, shop, own)) ?? writePiece(design, shop);
      return { piece: { name, text }, shop: { name: shop, text: own }, ...told };
    }
  }
  throw new Error('every name for a shop file is taken');
}

/** The usual name first; others where that one holds other stock. */
function* shopNames(): Generator<string> {
  yield 'shop.fettle';
  for (let number = 1; number < 1000; number++)
    yield number === 1 ? 'first-shop.fettle' : `first-shop-${number}.fettle`;
}

/** The first way to hang its doors that is sound with that shop file; undefined where none is. */
async function cleanText(design: FirstDesign, shopName: string, shop: string): Promise<string | undefined> {
  const ways = design.holds.includes('boxes') ? hangings : hangings.slice(0, 1);
  for (const hanging of ways) {
    const text = writePiece(design, shopName, hanging);
    if (await isClean(text, shopName, shop)) return text;
  }
  return undefined;
}

/** Neither an error nor a warning against the piece when it uses that shop file. */
async function isClean(piece: string, shopName: string, shop: string): Promise<boolean> {
  const { shared, Fettle } = createFettleServices();
  const { DocumentBuilder, LangiumDocumentFactory, LangiumDocuments } = shared.workspace;
  const documents = [
    LangiumDocumentFactory.fromString(piece, URI.parse('file:///new/piece.fettle')),
    LangiumDocumentFactory.fromString(shop, URI.parse(`file:///new/${shopName}`)),
  ] as const;
  for (const document of documents) LangiumDocuments.addDocument(document);
  await DocumentBuilder.build([...documents], { validation: false, eagerLinking: false });
  const { findings } = Fettle.evaluation.DocumentEvaluator.evaluate(documents[0]);
  return findings.every(({ severity }) => severity === 'note');
}

/** Names that some system keeps for itself, and those this folder keeps for shop files. */
const reserved = /^(con|prn|aux|nul|com\d|lpt\d|shop|first-shop(-\d+)?)$/;

function fileStem(name: string): string {
  const stem = name
    .toLowerCase()
    .normalize('NFC')
    .replaceAll(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '');
  return reserved.test(stem) || stem === '' ? `piece-${stem}`.replace(/-$/, '') : stem;
}

function unusedName(stem: string, taken: ReadonlySet<string>): string {
  let name = `${stem}.fettle`;
  for (let number = 2; taken.has(name); number++) name = `${stem}-${number}.fettle`;
  return name;
}
