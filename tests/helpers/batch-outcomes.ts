import type { Outcome } from '../../src/batch/index.ts';
import type { WordsReview } from '../../src/model/words-review.ts';

type Made = Extract<Outcome, { made: true }>;
type Matter = Made['open'][number];

/** A review of the Spanish words that no longer holds. */
export const staleReview: WordsReview = {
  language: 'es',
  scope: 'all',
  by: { name: 'M. Example', role: 'translator', qualification: 'certified for medical texts' },
  on: '2026-10-01',
  digest: '0'.repeat(64),
};

/** A packet of a case; final if nothing is open. */
export function madePacket(caseReference: string, language: string, open: readonly Matter[] = []): Outcome {
  const state = open.length === 0 ? 'final' : 'draft';
  const file = `week/${caseReference}.yaml`;
  const written = undefined;
  const about = { file, caseReference, language, clinic: 'clinic.yaml' };
  return { ...about, made: true, pages: 20, state, open, written, warnings: [] };
}

const languages = ['en', 'es', 'ht', 'vi', 'ar', 'zh-Hans'];
const unread: Matter = { code: 'words', documents: 'all' };
const changed: Matter = { code: 'words_changed', reviews: [staleReview] };
const wordsOf: Readonly<Record<string, readonly Matter[]>> = { en: [], vi: [], es: [changed] };

/** Texts that the clinic wrote in English, Spanish and Vietnamese, and one that it wrote in English alone. */
function textsMissing(language: string): readonly Matter[] {
  const place = (line: number, field: string) => ({ file: 'clinic.yaml', line, field });
  const everywhere = [place(39, 'protocol.stay.sleeve'), place(54, 'protocol.time_off.sleeve')];
  const english = [place(141, 'protocol.driving.sleeve[0].what')];
  if (language === 'en') return [];
  const own = language === 'es' || language === 'vi' ? english : [...everywhere, ...english];
  return [{ code: 'free_text', texts: own }];
}

/** A Friday: forty cases, six languages; one case with a mistake, one packet that did not come back whole. */
export function fridayOutcomes(): readonly Outcome[] {
  const references = Array.from({ length: 39 }, (_, index) => `PE-${String(index + 101)}`);
  const packets = references.flatMap((reference, index) =>
    languages.map((language) =>
      madePacket(reference, language, [
        ...(wordsOf[language] ?? [unread]),
        ...(index < 5 ? textsMissing(language) : []),
        ...(index === 7 ? [{ code: 'study_form', option: 'plication' } as const] : []),
        ...(index > 36 ? [{ code: 'practice', count: 2 } as const] : []),
      ]),
    ),
  );
  const withheld: Outcome = {
    ...{ file: 'week/PE-120.yaml', caseReference: 'PE-120', language: 'ar', made: false },
    diagnostics: [{ code: 'VERIFY_ORDER', severity: 'error', message: 'm' }],
  };
  const span = { file: 'week/PE-140.yaml', line: 11, column: 11 };
  const refused: Outcome = {
    ...{ file: 'week/PE-140.yaml', made: false },
    diagnostics: [{ code: 'CASE_BAD_UNIT', severity: 'error', message: 'm', span }],
  };
  return [
    ...packets.map((packet) =>
      packet.caseReference === 'PE-120' && packet.language === 'ar' ? withheld : packet,
    ),
    refused,
  ];
}
