import type { Rule } from '../reading.ts';
import { cautionsPresent } from './cautions-present.ts';
import { figuresPresent } from './figures-present.ts';
import { language } from './language.ts';
import { noReplacementGlyph } from './no-replacement-glyph.ts';
import { noUnresolvedKey } from './no-unresolved-key.ts';
import { nothingUnexpected } from './nothing-unexpected.ts';
import { order } from './order.ts';
import { phonesOnEveryPage } from './phones-on-every-page.ts';
import { requiredWords } from './required-words.ts';
import { statementsPresent } from './statements-present.ts';

/** What holds for the words of a packet however it is made: printed, or as a page, whose documents are one page each. */
export const textRules: readonly Rule[] = [
  language,
  figuresPresent,
  cautionsPresent,
  phonesOnEveryPage,
  statementsPresent,
  requiredWords,
  order,
  nothingUnexpected,
  noUnresolvedKey,
  noReplacementGlyph,
];
