import type { ChangedText } from '../model/review-record.ts';
import type { ReviewScope } from '../model/review-scope.ts';
import { alignColumns, countOf } from './align-columns.ts';
import { englishName } from './language-names.ts';
import type { LanguageState, ReviewedScope } from './review-state.ts';

export interface Showing {
  /** Under each language every text that changed since it was read, and every text of the clinic that it lacks. */
  readonly each: boolean;
  /** Whether a clinic profile was read, in which the reviews are kept. */
  readonly ledger: boolean;
}

/** One line a language; where no ledger was read, what to give to see the reviews. */
export function showLanguages(states: readonly LanguageState[], { each, ledger }: Showing): string {
  const rows = states.map((state) => [
    state.tag,
    englishName(state.tag),
    countOf(state.texts, 'text'),
    state.untranslated === 0 ? 'all translated' : `${String(state.untranslated)} not translated`,
    ...(ledger ? [clinicTexts(state), reviewsOf(state)] : []),
  ]);
  const lines = alignColumns(rows);
  return [
    ...states.flatMap((state, at) => [lines[at] ?? '', ...(each ? details(state) : [])]),
    ...(ledger ? [] : ['', noLedger]),
  ].join('\n');
}

const noLedger = 'Who has reviewed them stands in a clinic profile: give it with --clinic FILE.';

/** Of texts that the clinic wrote, how many are not there in this language. */
function clinicTexts({ clinic: { texts, unwritten } }: LanguageState): string {
  if (texts === 0) return 'no clinic texts';
  const of = countOf(texts, 'clinic text');
  return unwritten.length === 0 ? `all ${of} written` : `${String(unwritten.length)} of ${of} not written`;
}

function details({ reviews, clinic }: LanguageState): readonly string[] {
  const rows = clinic.unwritten.map(({ file, line, field }) => [
    `${file}:${String(line)}`,
    field,
    'not written in this language',
  ]);
  return [...reviews.flatMap(changesOf), ...alignColumns(rows, '  ')];
}

function reviewsOf({ reviews }: LanguageState): string {
  if (reviews.length === 0) return 'not reviewed: packets stay drafts';
  return reviews.map(reviewLine).join('; ');
}

function reviewLine({ review, state, changed }: ReviewedScope): string {
  const { name, role } = review.by;
  const who = `${scopeText(review.scope)} reviewed by ${name} (${role}) on ${review.on}`;
  if (state === 'stands') return who;
  const what = changed === null ? 'changed since' : `${countOf(changed.length, 'text')} changed since`;
  return `${who}, ${what}: packets are drafts`;
}

function scopeText(scope: ReviewScope): string {
  return scope === 'all' ? 'all' : scope.join(', ');
}

const said: Readonly<Record<ChangedText['change'], string>> = {
  text: 'the translation changed',
  source: 'the English changed',
  both: 'the English and the translation changed',
  new: 'new since then',
  gone: 'no longer there',
};

function changesOf({ changed, state }: ReviewedScope): readonly string[] {
  if (state === 'stands') return [];
  if (changed === null)
    return ['  The record of what was read is not there, so every text must be read again.'];
  return alignColumns(
    changed.map(({ key, change }) => [key, said[change]]),
    '  ',
  );
}
