import { role } from './edition.ts';
import type { Edition } from './edition.ts';

const small = role(18, 23, 400);

/**
 * Large print: the sizes of a patient's page times 18/13, rounded, and nothing under 18, headers, footers and the edges
 * of a draft included. One thing under another over the whole width, which is more than that of other pages: some 58
 * letters of 18 points.
 */
export const largeEdition: Edition = {
  edition: 'large-print',
  density: 'patient',
  flow: 'stacked',
  scale: 18 / 13,
  width: 522,
  nameWidth: 522,
  measure: 522,
  type: {
    decision: role(44, 50, 700),
    pageTitle: role(38, 43, 700),
    topic: role(27, 32, 700),
    continued: role(18, 23, 700),
    lean: role(23, 29, 700),
    number: role(22, 27, 700),
    smallHeading: role(21, 26, 700),
    tableNumber: role(21, 26, 700),
    lead: role(19, 26, 400),
    body: role(18, 25, 400),
    strong: role(18, 25, 700),
    cell: role(18, 24, 400),
    name: role(19, 25, 700),
    tableHead: role(18, 24, 600),
    small,
    label: role(18, 23, 600),
    labelStrong: role(18, 23, 700),
    frameHead: role(30, 35, 700),
    frameItem: role(22, 28, 400),
    phone: role(29, 34, 700),
    emergency: role(46, 51, 700),
    dayNote: small,
    fridgeTitle: role(46, 51, 700),
    header: role(18, 22, 400),
    footer: role(18, 22, 400),
    edge: role(18, 22, 700),
  },
  space: {
    betweenTopics: 34,
    afterCover: 30,
    betweenBlocks: 22,
    afterPageTitle: 6,
    afterSmallHeading: 8,
    topicRule: 3,
    ruleToQuestion: 10,
    questionToIntro: 5,
    headToRows: 12,
    betweenParagraphs: 9,
    cellPadding: 9,
    cellShrink: 4,
    betweenSteps: 11,
    betweenBullets: 9,
    betweenNotes: 8,
    noteAfterStrip: 14,
    betweenFrames: 16,
    frameShrink: 4,
  },
  rules: { tableHead: 1.6, tableTop: 0, row: 0.8, facts: 1.6 },
  page: {
    bodyTop: 72,
    belowBody: 108,
    underHeader: 8,
    footerLines: 3,
    header: 36,
    footer: 22,
    tallFooter: 18,
    overFooter: 12,
    edgeInset: 11,
  },
};
