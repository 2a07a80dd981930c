import type { KnownCell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import type { Study } from '../../model/study.ts';
import { plainText } from '../markup/escape-text.ts';
import type { Form } from './say-exchange.ts';
import { fewPeopleInWords } from './say-share.ts';
import type { Scene } from './scene.ts';
import { asMarkup, joined, series } from './words.ts';

/**
 * Last year of what is called old: keyhole operations, staplers and prevention of clots have changed what happens to
 * people since about then (common practice).
 */
const lastOldYear = 2005;

/** How sure a figure is, as far as a reader must know it beside the number: the sources say it of every figure. */
const unsure: readonly string[] = ['low', 'very-low'];

/** "This number is not very sure. It is old: from 2005 or before."; null where neither is so. */
export function unsureInWords(scene: Scene, { lead }: KnownCell, form: Form = 'one'): Markup | null {
  const study = scene.evidence.studies.get(lead.study);
  const key = form === 'one' ? 'common.unsure' : 'common.unsure.several';
  const said = joined(
    ...(unsure.includes(lead.certainty) ? [scene.words.say(`${key}.${lead.certainty}`)] : []),
    ...(study !== undefined && isOld(study)
      ? [scene.words.say(`${key}.old`, { year: String(lastOldYear) })]
      : []),
  );
  return said.markup === '' ? null : said;
}

/** The same as a mark in a line that has no room for a sentence: "not very sure, an old number"; null as above. */
function unsureMark({ words, evidence }: Scene, { lead }: KnownCell): string | null {
  const study = evidence.studies.get(lead.study);
  const said = [
    ...(unsure.includes(lead.certainty) ? [words.plain(`common.unsure.mark.${lead.certainty}`)] : []),
    ...(study !== undefined && isOld(study) ? [words.plain('common.unsure.mark.old')] : []),
  ];
  return said.length === 0 ? null : plainText(series(words, 'items', said.map(asMarkup)).markup);
}

/** "193 lb (not very sure)". */
export function withMark(scene: Scene, cell: KnownCell, words: Markup): Markup {
  const mark = unsureMark(scene, cell);
  return mark === null ? words : scene.words.say('common.unsure.marked', { words, mark });
}

/** "This counts only people who did not have it before."; null where the figure may count others too. */
export function newOnlyInWords(
  { words, records }: Scene,
  { lead }: KnownCell,
  form: Form = 'one',
): Markup | null {
  if (records.get(lead.record)?.new_only !== true) return null;
  return words.say(form === 'one' ? 'common.new_only' : 'common.new_only_several');
}

/** The same behind on how few people it stands, in one paragraph. */
export function soundnessInWords(scene: Scene, cell: KnownCell): Markup | null {
  const parts = [fewPeopleInWords(scene, cell), unsureInWords(scene, cell)].filter((part) => part !== null);
  return parts.length === 0 ? null : joined(...parts);
}

/** By the years of its people; what was published by then had its people before. */
function isOld({ years, citation }: Study): boolean {
  const last = years?.to ?? citation.year;
  return last !== undefined && last <= lastOldYear;
}
