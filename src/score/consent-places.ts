import type { ConsentBlock, ConsentPlace } from '../model/consent-element.ts';
import type { Block, DocumentTree, Paragraph } from '../model/document.ts';
import type { Locale } from '../model/locale.ts';
import { labelText } from '../model/text-piece.ts';
import { expectedText } from '../model/tree-text.ts';
import { hasWordsOf, isWordsOf, textOf, textsOf, wordsOf } from './words-of.ts';

type OfType<T extends Block['type']> = Extract<Block, { readonly type: T }>;

/** Whether a block of this type says something under these words. */
type Holds<T extends ConsentBlock> = (block: OfType<T>, words: string) => boolean;

const holdsByType: { readonly [T in ConsentBlock]: Holds<T> } = {
  paragraph: (block, words) => hasWordsOf(textOf(block), words),
  facts: ({ items }, words) =>
    items.some(({ label, value }) => isWordsOf(labelText(label), words) && labelText(value).trim() !== ''),
  callout: ({ body }, words) => body.some((paragraph) => hasWordsOf(textOf(paragraph), words)),
  topic: ({ question, blocks }, words) => isWordsOf(question, words) && saysAnything(blocks),
  talk: ({ statements }, words) => statements.some((statement) => isPoint(statement, words)),
  'teach-back': ({ questions }, words) => questions.some((question) => hasWordsOf(textOf(question), words)),
  checklist: ({ rows, columns }, words) =>
    columns.length > 0 && rows.some(({ name }) => isWordsOf(name, words)),
  interpreter: ({ fields }, words) => fields.some(({ label }) => isWordsOf(label, words)),
  signatures: ({ rows }, words) =>
    rows.some(({ fields }) => fields.some(({ label }) => isWordsOf(label, words))),
};

/** Whether a block is the place of an element. */
export function holdsPlace(block: Block, place: ConsentPlace, locale: Locale): boolean {
  return formsOf(place, locale).some((words) => holds(block, place.block, words));
}

function holds(block: Block, type: ConsentBlock, words: string): boolean {
  return isOf(block, type) && checkOf(type)(block, words);
}

/** The block has been found to be of this type, which the compiler cannot follow through a table of functions. */
function checkOf(type: ConsentBlock): (block: Block, words: string) => boolean {
  return holdsByType[type] as (block: Block, words: string) => boolean;
}

function isOf<T extends ConsentBlock>(block: Block, type: T): block is OfType<T> {
  return block.type === type;
}

const plurals = ['zero', 'one', 'two', 'few', 'many', 'other'].map((form) => `_${form}`);

/** The words of a key in each of its plural forms. */
function formsOf({ words, holds: variables = [] }: ConsentPlace, locale: Locale): readonly string[] {
  const { has } = locale.translator;
  const endings = has(`${words}_other`) ? plurals.filter((ending) => has(`${words}${ending}`)) : [''];
  return endings.map((ending) => wordsOf(locale, `${words}${ending}`, variables));
}

/** A point of a talk begins with its words, and has more to say. */
function isPoint(statement: readonly Paragraph[], words: string): boolean {
  const said = textsOf(statement);
  return said.startsWith(words) && said.length > words.length + 1;
}

function saysAnything(blocks: readonly Block[]): boolean {
  return expectedText({ blocks } as DocumentTree).length > 0;
}
