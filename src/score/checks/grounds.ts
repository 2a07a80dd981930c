import type { List } from '../../model/document.ts';
import { every, foundAt, unless } from '../check.ts';
import type { Check, Finding } from '../check.ts';
import { comparisonOf, ofType, sourcesOf } from '../pages.ts';
import type { Pages, Placed } from '../pages.ts';
import { hasWordsOf, isWordsOf, textsOf, wordsOf } from '../words-of.ts';
import { sourcedFigures, unique } from './chances.ts';

/** Lists of the sources under a question. */
function listsUnder(pages: Pages, key: string): readonly Placed<List>[] {
  const words = wordsOf(pages.locale, key);
  return ofType(sourcesOf(pages), 'list').filter(
    ({ topic, block }) => topic !== undefined && isWordsOf(topic.question, words) && block.items.length > 0,
  );
}

/** Lists on who made this and how old it is, with an item that holds these words. */
function releaseSays(pages: Pages, words: string): Finding {
  return foundAt(
    listsUnder(pages, 'sources.release_question').filter(
      ({ block }) => words !== '' && block.items.some((item) => hasWordsOf(textsOf(item), words)),
    ),
  );
}

/** The studies by name, in a list. */
export const studiesCited: Check = (pages) => foundAt(listsUnder(pages, 'sources.studies_question'));

/** The day of the pages on the cover, and the day of the figures among the sources. */
export const dated: Check = (pages) =>
  every(
    foundAt(ofType(comparisonOf(pages), 'cover').filter(({ block }) => /\d{4}/u.test(block.date))),
    releaseSays(pages, pages.locale.formatter.date(pages.evidence.date)),
  );

/** When it is looked at again, and by whom it was made. */
export const reviewDated: Check = (pages) =>
  every(
    releaseSays(pages, pages.locale.formatter.date(pages.evidence.nextReview)),
    releaseSays(pages, localText(pages, pages.evidence.madeBy)),
  );

export const fundingSaid: Check = (pages) => releaseSays(pages, localText(pages, pages.evidence.paidBy));

function localText({ locale }: Pages, text: Readonly<Record<string, string | undefined>>): string {
  return (text[locale.tag] ?? text['en'] ?? '').replace(/\s+/gu, ' ').trim();
}

/** How figures were chosen, in more than one rule. */
export const methodSaid: Check = (pages) =>
  foundAt(listsUnder(pages, 'sources.how.question').filter(({ block }) => block.items.length > 1));

/** By a formula: where none is checked, the pages say so, and how long their sentences are. */
export const readingLevelSaid: Check = (pages) =>
  foundAt(
    pages.readings.some(({ results }) => results.length > 0)
      ? listsUnder(pages, 'sources.reading.question')
      : [],
  );

/** Every figure says how sure it is. */
export const certaintySaid: Check = (pages) => {
  const degrees = ['high', 'moderate', 'low', 'very-low'].map((degree) =>
    wordsOf(pages.locale, `sources.certainties.${degree}`),
  );
  const rows = sourcedFigures(pages);
  return unless(
    rows.filter(({ said }) => !degrees.some((degree) => said.includes(degree))).map(({ strip }) => strip),
    unique(rows.map(({ strip }) => strip)),
  );
};

/** Bars with their ends or pictures with the uncertain part, and how sure each figure is. */
export const uncertaintyShown: Check = (pages) => {
  const interval = wordsOf(pages.locale, 'sources.interval', ['range', 'of']);
  const drawn = ofType(comparisonOf(pages), 'strip').filter(({ block }) =>
    block.rows.some(({ picture }) =>
      picture?.type === 'people' ? picture.may > 0 : picture?.type === 'range' && picture.low !== undefined,
    ),
  );
  const said = sourcedFigures(pages).filter((row) => hasWordsOf(row.said, interval));
  return every(foundAt([...drawn, ...said.slice(0, 1).map(({ strip }) => strip)]), certaintySaid(pages));
};
