import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { PacketTree } from '../../model/packet.ts';
import { expectedAlternatives } from '../../model/tree-pictures.ts';
import { expectedText, repeatedTexts } from '../../model/tree-text.ts';
import type { WebPageWords } from '../../model/web-page.ts';
import { compactText } from '../normalize-text.ts';
import { finding } from '../reading.ts';
import type { WebPage } from './read-page.ts';
import { textOfPart } from './read-web-document.ts';

/** Everything that the rules of a page may look at. */
export interface WebReading {
  readonly page: WebPage;
  readonly packet: PacketTree;
  readonly words: WebPageWords;
}

export type WebRule = (reading: WebReading) => readonly Diagnostic[];

/** Every picture says in words what it shows, in the order of the tree, and no picture is there that the tree has not. */
export const alternativesPresent: WebRule = ({ page, packet }) =>
  packet.documents.flatMap((tree, index) => {
    const wanted = expectedAlternatives(tree).map(compactText);
    const found = page.alternatives.filter(({ document }) => document === index);
    const said = found.map(({ text }) => compactText(text));
    const wrong = wanted.findIndex((text, at) => text !== said[at]);
    if (wrong >= 0) {
      const detail = `text alternative ${wrong + 1} of ${wanted.length}`;
      return [finding('VERIFY_STATEMENT_ABSENT', { tree, page: index + 1, detail })];
    }
    if (said.length === wanted.length) return [];
    return [finding('VERIFY_UNEXPECTED_TEXT', { tree, page: index + 1, detail: 'text alternative' })];
  });

/** What is said a second time is said in the tree a first time: captions, and the axis beside a bar. */
export const repeatedOnlyIfSaid: WebRule = ({ page, packet }) =>
  packet.documents.flatMap((tree, index) => {
    const known = new Set(
      [...expectedText(tree), ...repeatedTexts(tree)].map(({ text }) => compactText(text)),
    );
    const strange = page.texts.filter(
      ({ document, repeated, text }) =>
        repeated && document === index && compactText(text) !== '' && !known.has(compactText(text)),
    );
    return strange.length === 0
      ? []
      : [finding('VERIFY_UNEXPECTED_TEXT', { tree, page: index + 1, detail: 'repeated' })];
  });

/** Ways around the page and its foot are there, say what they must, and nothing stands outside the parts of the page. */
export const pageParts: WebRule = ({ page, packet, words }) => {
  const headings = packet.documents.map((_, index) =>
    page.headings.filter(({ document }) => document === index),
  );
  const titles = headings.map((own, index) => own[0]?.text ?? packet.documents[index]?.title ?? '');
  const ofPage: readonly (readonly [string, string])[] = [
    ['skip', words.skip],
    ['clinic', packet.author],
    ['documents', titles.join('')],
    ['about', words.about.join('')],
  ];
  return [
    ...ofPage
      .filter(([part, text]) => compactText(textOfPart(page, null, part)) !== compactText(text))
      .map(([part]) => finding('VERIFY_STATEMENT_ABSENT', { at: part })),
    ...packet.documents.flatMap((tree, index) => {
      const links = headings[index]?.filter(({ level }) => level === 2).map(({ text }) => text) ?? [];
      const listed = compactText(textOfPart(page, index, 'parts'));
      const right = listed === '' || listed === compactText([words.parts, ...links].join(''));
      const up = compactText(textOfPart(page, index, 'up')) === compactText(words.up);
      return right && up ? [] : [finding('VERIFY_STATEMENT_ABSENT', { tree, at: right ? 'up' : 'parts' })];
    }),
    ...strayTexts(page),
  ];
};

const partsOfDocument = ['head', 'parts', 'body', 'foot', 'up'];
const partsOfPage = ['skip', 'clinic', 'documents', 'about'];

function strayTexts(page: WebPage): readonly Diagnostic[] {
  const stray = page.texts.filter(({ document, part, text }) => {
    const known = document === null ? partsOfPage : partsOfDocument;
    return compactText(text) !== '' && (part === null || !known.includes(part));
  });
  return stray.length === 0
    ? []
    : [finding('VERIFY_UNEXPECTED_TEXT', { detail: 'outside the parts of the page' })];
}

/** Each document has one heading of the first level, which comes first, and no level is skipped. */
export const headingOrder: WebRule = ({ page, packet }) =>
  packet.documents.flatMap((tree, index) => {
    const levels = page.headings.filter(({ document }) => document === index).map(({ level }) => level);
    const skips = levels.some((level, at) => level > (levels[at - 1] ?? 0) + 1);
    const firsts = levels.filter((level) => level === 1).length;
    const right = !skips && firsts === Math.min(1, levels.length);
    return right ? [] : [finding('VERIFY_ORDER', { tree, page: index + 1, detail: 'levels of headings' })];
  });

/** The page has as many documents as the packet, each in its language. */
export const documentsPresent: WebRule = ({ page, packet }) => {
  const wanted = packet.documents.map(({ language }) => language);
  if (page.languages.length !== wanted.length)
    return [
      finding('VERIFY_PAGE_COUNT', { detail: `${page.languages.length} documents of ${wanted.length}` }),
    ];
  const wrong = page.languages.findIndex((language, index) => language !== wanted[index]);
  return wrong < 0 ? [] : [finding('VERIFY_LANGUAGE', { detail: `document ${wrong + 1}` })];
};
