import type { Paragraph } from '../../model/document.ts';
import { countWords } from '../../model/word-forms.ts';
import { foundAt, missing, notApplicable, unless } from '../check.ts';
import type { Check } from '../check.ts';
import { ofType } from '../pages.ts';
import type { Pages, Placed } from '../pages.ts';
import { textOf } from '../words-of.ts';
import { countingTables, hasFigure, peopleRows, unique } from './chances.ts';
import { boardsUnder } from './options.ts';

/** Where a document gives the risk of something: drawn people, counts in a table, figures in the record of a talk. */
function risks(pages: Pages): readonly Placed[] {
  const talks = ofType(pages.reader, 'talk').filter(({ block }) => hasFigure(block.statements.flat()));
  return [...unique(peopleRows(pages).map(({ strip }) => strip)), ...countingTables(pages), ...talks];
}

/** What each risk is a risk of is said in words before it is counted. */
export const riskExplained: Check = (pages) => {
  const all = risks(pages);
  return all.length === 0
    ? notApplicable
    : unless(
        all.filter((risk) => !isExplained(risk)),
        all,
      );
};

function isExplained({ block, topic }: Placed): boolean {
  const over = topic?.blocks.slice(0, topic.blocks.indexOf(block)) ?? [];
  return [...(topic?.intro ?? []), ...over].some((one) => one.type === 'paragraph' && textOf(one) !== '');
}

/** Both sides stand in the packet: what may go wrong, and what is gained. */
export const risksAndBenefits: Check = (pages) => {
  const harms = risks(pages);
  if (harms.length === 0) return notApplicable;
  const gains: readonly Placed[] = [
    ...(pages.reader.some(({ kind }) => kind === 'comparison')
      ? boardsUnder(pages, 'comparison.weight.question', ['time'])
      : []),
    ...ofType(pages.reader, 'line-board'),
  ];
  return gains.length === 0 ? missing : foundAt([...harms.slice(0, 1), ...gains.slice(0, 1)]);
};

/** A chance is drawn and said, or said under a sentence that explains its number, or within a sentence. */
export const chanceShownTwice: Check = (pages) => {
  const all = risks(pages);
  if (all.length === 0) return notApplicable;
  const bare = peopleRows(pages).filter(({ row }) => !hasFigure(row.words));
  return unless(
    [
      ...bare.map(({ strip }) => strip),
      ...all.filter(
        ({ block }) =>
          block.type === 'talk' && !block.statements.flat().filter(hasOwnFigure).every(isSentence),
      ),
    ],
    all,
  );
};

function hasOwnFigure(statement: Paragraph): boolean {
  return hasFigure([statement]);
}

/** Words beside the figure say of what it is; with those within it, as in "out of", they are three at least. */
function isSentence(statement: Paragraph): boolean {
  const beside = statement.inlines.filter(({ type }) => type === 'text').map(({ value }) => value);
  const all = textOf(statement).replace(/\d/gu, ' ');
  return countWords(beside.join(' ')) > 0 && countWords(all) >= 3;
}
