import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';

import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { OpenCase, Prepared } from '../../src/index.ts';
import { makePacket } from '../../src/index.ts';
import { loadFonts } from '../../src/render/fonts.ts';
import { checkConsent, conditionsOf } from '../../src/score/check-consent.ts';
import { consentAbout } from '../helpers/consent-cases.ts';
import { demand, openExample } from '../helpers/example-packets.ts';
import { pageFaults, planPagesOf } from '../helpers/page-faults.ts';

const letter = fc.constantFrom('a', 'e', 'i', 'l', 'm', 'n', 'o', 'r', 's', 'z', 'w', 'é', 'ñ', 'ü');

/** Names as long as the formats allow, of few long words or many short ones. */
function name(most: number, longestWord: number): fc.Arbitrary<string> {
  const word = fc
    .string({ unit: letter, minLength: 1, maxLength: longestWord })
    .map((text) => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`);
  return fc
    .array(word, { minLength: 1, maxLength: 30 })
    .map((words) => words.join(' ').slice(0, most).trim());
}

const language = fc.constantFrom('en', 'es');
const chosen = fc.constantFrom('semaglutide', 'sleeve', 'plication', 'lifestyle', 'no-operation');
const conditions = fc.constantFrom<OpenCase['case']['health']['conditions']>([], ['knee-arthritis']);

const changes = fc.record({
  patient: name(80, 24),
  clinic: name(80, 24),
  surgeon: name(80, 24),
  form: fc.option(name(80, 24)),
  oversight: name(120, 20),
  matters: fc.array(name(120, 20), { maxLength: 4 }),
  leaning: fc.boolean(),
  interpreter: fc.constantFrom<OpenCase['case']['interpreter']>(
    { needed: false },
    { needed: true },
    { needed: true, language: 'es' },
  ),
  day: fc.constantFrom<string | undefined>(undefined, '2027-01-14'),
  conditions,
});
type Changes = typeof changes extends fc.Arbitrary<infer T> ? T : never;

async function opened(option: string, change: Changes): Promise<{ prepared: Prepared; open: OpenCase }> {
  const { prepared, open } = await openExample('QB-1115', consentAbout(option));
  const { clinic } = open;
  const { decision, plan, health, patient } = open.case;
  const { plication: study } = clinic.under_study;
  if (study === undefined) throw new Error('the clinic names no study');
  const asked: OpenCase['case'] = {
    ...open.case,
    patient: { ...patient, name: change.patient },
    health: { ...health, conditions: change.conditions },
    interpreter: change.interpreter,
    plan: { surgeon: plan.surgeon, ...(change.day !== undefined && { operation_date: change.day }) },
    decision: {
      ...decision,
      matters_most: change.matters.map((text) => ({ text: { en: text, es: text } })),
      leaning: change.leaning ? decision.leaning : null,
      advised_against: change.leaning ? decision.advised_against : [],
    },
  };
  const oversight = { en: change.oversight, es: change.oversight };
  return {
    prepared,
    open: {
      ...open,
      case: asked,
      clinic: {
        ...clinic,
        clinic: { ...clinic.clinic, name: change.clinic },
        surgeons: clinic.surgeons.map((one) => ({ ...one, name: change.surgeon })),
        second_opinion: [],
        under_study: { plication: { ...study, form: change.form, oversight } },
      },
    },
  };
}

beforeAll(async () => {
  await loadFonts();
});

describe('the record of the talk with any names, and whatever a case leaves empty', () => {
  it('lacks no element, and its pages are whole', async () => {
    await fc.assert(
      fc.asyncProperty(language, chosen, changes, async (tag, option, change) => {
        const { prepared, open } = await opened(option, change);
        const identity = identifyPacket(prepared, open, tag);
        const { documents } = demand(composePacket(prepared, open, identity));
        const checked = checkConsent({
          documents,
          locale: identity.locale,
          elements: prepared.evidence.consentElements,
          conditions: conditionsOf(open),
        });
        expect(checked.length).toBeGreaterThan(20);
        expect(checked.filter(({ outcome }) => outcome === 'lost').map(({ element }) => element.id)).toEqual(
          [],
        );
        const plans = await planPagesOf(documents.filter(({ kind }) => kind === 'consent'));
        expect(plans.flatMap(pageFaults)).toEqual([]);
      }),
      { numRuns: 6, endOnFailure: true },
    );
  });

  it('comes back whole when the finished file is read again', async () => {
    await fc.assert(
      fc.asyncProperty(language, chosen, changes, async (tag, option, change) => {
        const { prepared, open } = await opened(option, change);
        const { verification } = demand(await makePacket(prepared, open, tag));
        expect(verification.passed).toBe(true);
      }),
      { numRuns: 2, endOnFailure: true },
    );
  });
});
