import { chancesHonest } from './chances-honest.ts';
import { commonWordsOwn } from './common-words-own.ts';
import { glossaryHolds } from './glossary-holds.ts';
import { keysMatch } from './keys-match.ts';
import { markupSafe } from './markup-safe.ts';
import { pluralFormsComplete } from './plural-forms-complete.ts';
import { termsHold } from './terms-hold.ts';
import { sentencesShort } from './sentences-short.ts';
import { variablesMatch } from './variables-match.ts';
import type { WordsRule } from './rule.ts';

export const wordsRules: readonly WordsRule[] = [
  keysMatch,
  termsHold,
  variablesMatch,
  pluralFormsComplete,
  markupSafe,
  chancesHonest,
  commonWordsOwn,
  sentencesShort,
  glossaryHolds,
];
