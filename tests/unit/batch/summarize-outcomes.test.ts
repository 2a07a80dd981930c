import { describe, expect, it } from 'vitest';

import { packetsOf, summarizeOutcomes } from '../../../src/batch/index.ts';
import type { Outcome } from '../../../src/batch/index.ts';
import { fridayOutcomes, madePacket, staleReview } from '../../helpers/batch-outcomes.ts';

const openOf = (outcomes: readonly Outcome[], code: string) =>
  summarizeOutcomes(outcomes).open.filter((group) => group.code === code);

describe('the summary of a batch', () => {
  it('counts every packet once, in its language and its state', () => {
    const outcomes = [
      madePacket('A', 'es', [{ code: 'profile' }]),
      madePacket('A', 'en'),
      { ...madePacket('B', 'en', [{ code: 'profile' }]), made: true, state: 'example' } as Outcome,
      { file: 'week/B.yaml', caseReference: 'B', language: 'es', made: false, diagnostics: [] } as const,
      { file: 'week/C.yaml', made: false, diagnostics: [] } as const,
    ];
    expect(summarizeOutcomes(outcomes).languages).toEqual([
      { language: 'en', final: 1, draft: 0, example: 1, notMade: 0 },
      { language: 'es', final: 0, draft: 1, example: 0, notMade: 1 },
    ]);
    const friday = summarizeOutcomes(fridayOutcomes());
    const total = friday.languages.map((each) => each.final + each.draft + each.example + each.notMade);
    expect(total).toEqual([39, 39, 39, 39, 39, 39]);
  });

  it('takes the documents of one packet that are files of their own for one packet', () => {
    const apart = [madePacket('A', 'en'), madePacket('A', 'en'), madePacket('A', 'es')];
    expect(packetsOf(apart)).toHaveLength(2);
    expect(summarizeOutcomes(apart).languages.map(({ final }) => final)).toEqual([1, 1]);
  });

  it('says once for each language that nobody has read its words, and of which documents', () => {
    const words = (documents: 'all' | ('consent' | 'questions')[]) => [{ code: 'words', documents } as const];
    const outcomes = [
      madePacket('A', 'es', words(['consent'])),
      madePacket('B', 'es', words(['consent', 'questions'])),
      madePacket('A', 'ht', words('all')),
    ];
    expect(openOf(outcomes, 'words')).toEqual([
      {
        code: 'words',
        languages: ['es'],
        cases: ['A', 'B'],
        packets: 2,
        clinic: 'clinic.yaml',
        documents: ['consent', 'questions'],
      },
      { code: 'words', languages: ['ht'], cases: ['A'], packets: 1, clinic: 'clinic.yaml', documents: 'all' },
    ]);
  });

  it('names each review that no longer holds once', () => {
    const changed = { code: 'words_changed', reviews: [staleReview] } as const;
    const outcomes = [madePacket('A', 'es', [changed]), madePacket('B', 'es', [changed])];
    expect(openOf(outcomes, 'words_changed')).toMatchObject([{ packets: 2, reviews: [staleReview] }]);
  });

  it('names a text that is not written once, with all its languages, in the order of the file', () => {
    const text = (line: number, field: string) => ({ file: 'clinic.yaml', line, field });
    const lacks = (...texts: readonly ReturnType<typeof text>[]) => [{ code: 'free_text', texts } as const];
    const outcomes = [
      madePacket('A', 'vi', lacks(text(100, 'protocol.visits.sleeve'), text(9, 'protocol.stay.sleeve'))),
      madePacket('A', 'ht', lacks(text(9, 'protocol.stay.sleeve'))),
      madePacket('B', 'ht', lacks(text(9, 'protocol.stay.sleeve'))),
    ];
    expect(openOf(outcomes, 'free_text')).toEqual([
      {
        code: 'free_text',
        languages: ['ht', 'vi'],
        cases: ['A', 'B'],
        packets: 3,
        texts: [
          { ...text(9, 'protocol.stay.sleeve'), languages: ['ht', 'vi'] },
          { ...text(100, 'protocol.visits.sleeve'), languages: ['vi'] },
        ],
      },
    ]);
  });

  it('keeps what belongs to two options, or to two clinics, apart, and joins what belongs to the evidence', () => {
    const form = (option: string) => ({ code: 'study_form', option }) as const;
    const outcomes = [
      madePacket('A', 'en', [form('plication'), { code: 'profile' }, { code: 'past_review' }]),
      madePacket('A', 'es', [form('plication'), { code: 'profile' }, { code: 'past_review' }]),
      madePacket('B', 'en', [form('bypass')]),
      { ...madePacket('C', 'en', [{ code: 'profile' }, { code: 'past_review' }]), clinic: 'other.yaml' },
    ];
    const said = summarizeOutcomes(outcomes).open.map(({ code, clinic, option, packets }) =>
      [code, clinic, option, packets].filter((part) => part !== undefined).join(' '),
    );
    expect(said).toEqual([
      'profile other.yaml 1',
      'profile clinic.yaml 2',
      'study_form clinic.yaml bypass 1',
      'study_form clinic.yaml plication 2',
      'past_review 3',
    ]);
  });

  it('says of what was not made where its first mistake stands, and no word of the message', () => {
    const [refused] = fridayOutcomes().filter(({ file }) => file === 'week/PE-140.yaml');
    expect(refused).toBeDefined();
    const { notMade } = summarizeOutcomes(fridayOutcomes());
    expect(notMade).toEqual([
      { file: 'week/PE-120.yaml', case: 'PE-120', language: 'ar', codes: ['VERIFY_ORDER'] },
      { file: 'week/PE-140.yaml', line: 11, codes: ['CASE_BAD_UNIT'] },
    ]);
  });

  it('has nothing open where all is final', () => {
    expect(summarizeOutcomes([madePacket('A', 'en'), madePacket('B', 'en')])).toMatchObject({
      open: [],
      notMade: [],
    });
  });
});
