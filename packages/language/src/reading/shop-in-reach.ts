import type { ShopOffer } from '@fettle/engine';
import type { LangiumDocument, LangiumDocuments } from 'langium';
import type { Statement } from '../generated/ast.ts';
import { fileDeclarations, specOf } from '../names/declarations.ts';
import type { NameKind } from '../schema/index.ts';
import { readHinge } from './read-doors.ts';
import { readScrew } from './read-joints.ts';
import { readCutter, readMachine, readSlide, readStock } from './read-shop.ts';

/**
 * Everything the shop files in reach have to offer, read when it is first asked for. Each piece gets an offer of its
 * own that remembers what was asked, so that an evaluation is kept for as long as the lists it looked at stay the same.
 */
export class ShopInReach {
  readonly #documents: LangiumDocuments;
  readonly #files: readonly LangiumDocument[];
  readonly #lists = new Map<OfferList, ReadList>();

  constructor(documents: LangiumDocuments, files: readonly LangiumDocument[]) {
    this.#documents = documents;
    this.#files = files;
  }

  /** `asked` collects the lists that whoever uses the offer looks at. */
  offer(asked: Set<OfferList>): ShopOffer {
    const entries = <List extends OfferList>(list: List): Entries<List> => {
      asked.add(list);
      return this.#list(list).entries as Entries<List>;
    };
    return {
      get slides() {
        return entries('slides');
      },
      get hinges() {
        return entries('hinges');
      },
      get cutters() {
        return entries('cutters');
      },
      get machines() {
        return entries('machines');
      },
      get stocks() {
        return entries('stocks');
      },
      get screws() {
        return entries('screws');
      },
    };
  }

  /** Two lists with the same words and the same figures have the same key, wherever they stand. */
  key(list: OfferList): string {
    return this.#list(list).key;
  }

  #list(list: OfferList): ReadList {
    const known = this.#lists.get(list);
    if (known !== undefined) return known;
    const statements = this.#files.flatMap((file) => statementsOf(file, list));
    const entries = statements.flatMap((each) => readers[list](each, this.#documents) ?? []);
    // The words alone are not enough: a named value or the units of the file may change what they mean.
    const words = statements.map((each) => each.$cstNode?.text ?? '');
    const read = { entries, key: JSON.stringify([words, entries]) };
    this.#lists.set(list, read);
    return read;
  }
}

export type OfferList = keyof ShopOffer;
type Entries<List extends OfferList> = NonNullable<ShopOffer[List]>;

interface ReadList {
  readonly entries: readonly object[];
  readonly key: string;
}

const kinds: Readonly<Record<OfferList, NameKind>> = {
  slides: 'slide',
  hinges: 'hinge',
  cutters: 'tool',
  machines: 'tool',
  stocks: 'stock',
  screws: 'screw',
};
const readers: {
  readonly [List in OfferList]: (
    statement: Statement,
    documents: LangiumDocuments,
  ) => Entries<List>[number] | undefined;
} = {
  slides: readSlide,
  hinges: readHinge,
  cutters: readCutter,
  machines: readMachine,
  stocks: readStock,
  screws: readScrew,
};

function statementsOf(file: LangiumDocument, list: OfferList): readonly Statement[] {
  const all = [...(fileDeclarations(file).get(kinds[list])?.values() ?? [])].map(({ statement }) => statement);
  const word = list === 'cutters' ? 'cutter' : list === 'machines' ? 'machine' : undefined;
  return word === undefined ? all : all.filter((each) => specOf(each).spec.word === word);
}
