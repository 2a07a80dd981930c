import { beforeAll, describe, expect, it } from 'vitest';

import { findOpenPoints } from '../../src/compose/index.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { OpenCase, Prepared } from '../../src/index.ts';
import { makePacket } from '../../src/index.ts';
import { readBack } from '../../src/verify/read-back.ts';
import { consentAbout } from '../helpers/consent-cases.ts';
import { reviewOf } from '../helpers/words-review.ts';
import { demand, makeExample, openExample } from '../helpers/example-packets.ts';

// A packet is final when nothing is missing: it carries no mark of a draft, and its fields may be signed.

const reference = 'QB-1128';

type Study = NonNullable<OpenCase['clinic']['under_study'][string]>;

interface Setting {
  readonly prepared: Prepared;
  readonly open: OpenCase;
}

/** The example of a consent as if its clinic had approved everything and every word and reference had been checked. */
async function complete(example = reference, change = (text: string) => text): Promise<Setting> {
  const { prepared, open } = await openExample(example, (text) =>
    change(text.replace('example: true\n', '')),
  );
  const reviewed = [...prepared.locales.values()].map((locale) => reviewOf(locale));
  const studies = new Map(
    [...prepared.evidence.studies].map(([id, study]) => {
      const { citation_unseen: unseen, ...confirmed } = study;
      return [id, unseen === undefined ? study : confirmed];
    }),
  );
  const cautions = Object.fromEntries(open.comparison.cautions.map(({ id }) => [id, 'confirmed' as const]));
  return {
    prepared: { ...prepared, evidence: { ...prepared.evidence, studies } },
    open: {
      ...open,
      clinic: { ...open.clinic, cautions, reviewed, approved: { by: 'M. Example', on: '2026-10-01' } },
    },
  };
}

async function textOf(pdf: Uint8Array): Promise<string> {
  return ((await readBack(pdf))?.pages ?? []).join(' ').replace(/\s+/g, ' ');
}

describe('a packet to which nothing is missing', () => {
  let setting: Setting;
  let text = '';

  beforeAll(async () => {
    setting = await complete();
    text = await textOf(demand(await makePacket(setting.prepared, setting.open, 'en')).pdf);
  });

  it('is final, and nothing in it says draft, example or what is open', () => {
    expect(identifyPacket(setting.prepared, setting.open, 'en').state).toBe('final');
    expect(text).toContain('What do I say yes and no to?');
    expect(text).not.toMatch(/Draft|Do not sign here|Example|points? (is|are) open/);
  });

  it('is the same packet that as an example says so', async () => {
    const example = await textOf((await makeExample(reference, 'en')).pdf);
    expect(example).toContain('Example. This person is invented.');
    expect(example).toContain('Draft. Do not sign here.');
  });

  it.each<[string, (given: Setting) => Setting]>([
    [
      'words that nobody has reviewed',
      ({ prepared, open }) => ({ prepared, open: { ...open, clinic: { ...open.clinic, reviewed: [] } } }),
    ],
    [
      'words that changed after somebody had reviewed them',
      ({ prepared, open }) => {
        const reviewed = open.clinic.reviewed.map((review) => ({ ...review, digest: '0'.repeat(64) }));
        return { prepared, open: { ...open, clinic: { ...open.clinic, reviewed } } };
      },
    ],
    [
      'a profile that nobody has approved',
      ({ prepared, open }) => ({ prepared, open: { ...open, clinic: { ...open.clinic, approved: null } } }),
    ],
    [
      'a text of the person that is not in its language',
      ({ prepared, open }) => {
        const decision = { ...open.case.decision, matters_most: [{ text: { es: 'Quiero caminar.' } }] };
        return { prepared, open: { ...open, case: { ...open.case, decision } } };
      },
    ],
    [
      'a line on the time at home that is not in its language',
      ({ prepared, open }) => {
        const { protocol } = open.clinic;
        const driving = { ...protocol.driving, sleeve: [{ what: { es: 'No maneje.' } }] };
        return {
          prepared,
          open: { ...open, clinic: { ...open.clinic, protocol: { ...protocol, driving } } },
        };
      },
    ],
    [
      'evidence whose review is due',
      ({ prepared, open }) => ({
        prepared: { ...prepared, evidence: { ...prepared.evidence, nextReview: '2026-01-01' } },
        open,
      }),
    ],
  ])('is a draft with %s', async (_what, spoil) => {
    const { prepared, open } = spoil(await complete());
    expect(identifyPacket(prepared, open, 'en').state).toBe('draft');
    const locale = prepared.locales.get('en');
    if (locale === undefined) throw new Error('no locale');
    expect(findOpenPoints({ ...open, evidence: prepared.evidence, locale })).toHaveLength(1);
  });
});

describe('a record of the talk about an option under study', () => {
  const chosen = (): Promise<Setting> => complete('QB-1115', consentAbout('plication'));

  /** The same with another entry of the clinic on the study, or with none. */
  async function withStudy(change: (study: Study) => Study | undefined): Promise<Setting> {
    const { prepared, open } = await chosen();
    const { plication: study, ...others } = open.clinic.under_study;
    if (study === undefined) throw new Error('the clinic names no study');
    const plication = change(study);
    const under_study = plication === undefined ? others : { ...others, plication };
    return { prepared, open: { ...open, clinic: { ...open.clinic, under_study } } };
  }

  it('is final where the clinic names the form that was approved, and says who watches over the study', async () => {
    const { prepared, open } = await chosen();
    expect(identifyPacket(prepared, open, 'en').state).toBe('final');
    const text = await textOf(demand(await makePacket(prepared, open, 'en')).pdf);
    expect(text).toContain('Stomach folding is under study');
    expect(text).toContain('The Tarrow Ferry Research Ethics Board');
    expect(text).toContain('you also sign the form of the study: “Study consent, version 3”.');
    expect(text).toContain('You can say no and still have a usual operation.');
    expect(text).not.toMatch(/Draft|Do not sign here/);
  });

  it.each<[string, (study: Study) => Study | undefined, string]>([
    ['has no approval form', (study) => ({ ...study, form: null }), 'The approval form is still missing.'],
    [
      'has no entry of the clinic',
      () => undefined,
      'Your clinic has not yet told us who watches over this study.',
    ],
  ])('is no final, and cannot be signed, where it %s', async (_what, change, said) => {
    const { prepared, open } = await withStudy(change);
    expect(identifyPacket(prepared, open, 'en').state).toBe('draft');
    const text = await textOf(demand(await makePacket(prepared, open, 'en')).pdf);
    expect(text).toContain(said);
    expect(text).toContain('Draft. Do not sign here.');
    expect(text).toContain('Stomach folding is under study, and the approval form is missing.');
    expect(text).toMatch(/Needs the clinic .*Name of the approved form; without it nothing is final/);
  });

  it('is no final either where the option under study was offered and another was chosen', async () => {
    const { prepared, open } = await complete('QB-1115', consentAbout('sleeve'));
    const { plication: study } = open.clinic.under_study;
    if (study === undefined) throw new Error('the clinic names no study');
    const clinic = { ...open.clinic, under_study: { plication: { ...study, form: null } } };
    expect(identifyPacket(prepared, open, 'en').state).toBe('final');
    expect(identifyPacket(prepared, { ...open, clinic }, 'en').state).toBe('draft');
  });
});
