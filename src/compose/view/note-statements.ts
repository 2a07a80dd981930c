import type { IndicationNote } from '../../model/comparison.ts';
import { definitionStatement, theCase } from '../../model/statement.ts';

const advised = definitionStatement('indication-recommended-2022');
const considered = definitionStatement('indication-consider-2022');
const advisedAsian = definitionStatement('indication-asian-2022');
const obesityAsian = definitionStatement('asian-obesity-2022');

/** What each note on thresholds stands on; those that only repeat the case stand on the case. */
export const noteStatements: { readonly [K in IndicationNote]: readonly string[] } = {
  'under-35': [advised],
  'under-30': [considered],
  'asian-27-5': [advisedAsian],
  'asian-25': [obesityAsian, advisedAsian],
  'under-18-5': [theCase],
  adolescent: [theCase],
  pregnant: [theCase],
  'low-after-operation': [theCase],
};
