import type { StandingOf } from '../model/comparison.ts';
import type { Standing } from '../model/evidence-rules.ts';
import { isPrintable } from '../model/evidence.ts';

/**
 * How an option stands where the clinic is: the newest entry of each kind that was read on a page. Without any
 * for this jurisdiction the international ones count. A licence never stands for an endorsement.
 */
export function judgeStanding(
  entries: readonly Standing[],
  option: string,
  jurisdiction: string,
): StandingOf {
  const read = entries.filter((entry) => entry.option === option && isPrintable(entry));
  const here = read.filter((entry) => entry.jurisdiction.split(' and ').includes(jurisdiction));
  const used = here.length > 0 ? here : read.filter((entry) => entry.jurisdiction === 'international');
  const endorsed = newest(used, 'endorsed-by-society');
  const licensed = newest(used, 'licensed-by-regulator');
  const study = newest(used, 'under-study');
  const underStudy = study !== undefined && (endorsed === undefined || dateOf(study) >= dateOf(endorsed));
  const shown = [endorsed, licensed, underStudy ? study : undefined].filter((entry) => entry !== undefined);
  return {
    maturity: underStudy ? 'under-study' : (endorsed?.maturity ?? licensed?.maturity ?? 'not-recorded'),
    entries: shown.map(({ id }) => id).sort((a, b) => (a < b ? -1 : 1)),
  };
}

function newest(entries: readonly Standing[], kind: Standing['standing']): Standing | undefined {
  const ofKind = entries.filter(({ standing }) => standing === kind);
  return [...ofKind].sort((a, b) => compareText(dateOf(b), dateOf(a)) || compareText(a.id, b.id))[0];
}

/** ISO dates of any precision sort as text; an entry without a date is the oldest. */
function dateOf({ date }: Standing): string {
  return date ?? '';
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
