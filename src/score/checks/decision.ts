import { every, foundAt, missing } from '../check.ts';
import type { Check } from '../check.ts';
import { comparisonOf, ofType } from '../pages.ts';
import { textOf, wordsOf } from '../words-of.ts';
import { boards, boardsUnder, namingAll, optionNames, rowNames } from './options.ts';

/** The cover names the weight and the BMI, with their numbers. */
export const conditionNamed: Check = (pages) => {
  const bmi = wordsOf(pages.locale, 'clinician-sheet.facts.bmi');
  return foundAt(
    ofType(comparisonOf(pages), 'cover').filter(({ block }) => {
      const lead = textOf({ inlines: block.lead });
      return lead.includes(bmi) && /\d/u.test(lead);
    }),
  );
};

/** The cover asks which, and goes on in words. */
export const decisionStated: Check = (pages) =>
  foundAt(
    ofType(comparisonOf(pages), 'cover').filter(
      ({ block }) => /[?？؟]$/u.test(block.question) && textOf({ inlines: block.lead }) !== '',
    ),
  );

/** Two options or more, doing nothing new among them, each in words. */
export const optionsListed: Check = (pages) => {
  const names = optionNames(pages);
  const nothing = wordsOf(pages.locale, 'options.no-operation.name');
  if (names.length < 2 || !names.includes(nothing)) return missing;
  return foundAt(namingAll(pages, boardsUnder(pages, 'comparison.choices.question')));
};

/** Weight afterwards has a row for each option, also where it is not known. */
export const goodPoints: Check = (pages) =>
  foundAt(namingAll(pages, boardsUnder(pages, 'comparison.weight.question', ['time'])));

/** Some harm of the first month or of later has a row for each option. */
export const badPoints: Check = (pages) =>
  foundAt(
    namingAll(pages, [
      ...boards(pages).filter(({ block }) => block.type === 'strip' && block.layout === 'people'),
      ...boardsUnder(pages, 'comparison.first_month.question'),
      ...boardsUnder(pages, 'comparison.first_month.question_death'),
      ...boardsUnder(pages, 'comparison.later.question'),
    ]),
  );

/** What each asks of a person, and what stays for life. */
export const lifeWithEach: Check = (pages) => {
  const asks = namingAll(pages, boardsUnder(pages, 'comparison.asks.question'));
  const of = (type: 'strip' | 'table') => foundAt(asks.filter(({ block }) => block.type === type));
  return every(of('table'), of('strip'));
};

/** Doing nothing new is said what weight it leads to, and what is not known of it. */
export const nothingDone: Check = (pages) => {
  const nothing = wordsOf(pages.locale, 'options.no-operation.name');
  const under = (key: string, variables: readonly string[] = []) =>
    foundAt(boardsUnder(pages, key, variables).filter((board) => rowNames(board).includes(nothing)));
  return every(under('comparison.weight.question', ['time']), under('comparison.unknown.question'));
};

/** A short table holds what is gained and what may go wrong, a row an option. */
export const sideBySide: Check = (pages) =>
  foundAt(
    namingAll(pages, boardsUnder(pages, 'comparison.short.question')).filter(
      ({ block }) => block.type === 'table' && block.columns.length >= 3,
    ),
  );
