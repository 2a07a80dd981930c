import { describe, expect, it } from 'vitest';

import { viewConsent } from '../../../../src/compose/view/view-consent.ts';
import type { ConsentView } from '../../../../src/compose/view/view-consent.ts';
import type { Case } from '../../../../src/model/case.ts';
import { makeCase } from '../../../helpers/compare-inputs.ts';
import { fiveOptions } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

async function consentOf(
  chosen: string,
  changes: Partial<Pick<Case, 'interpreter' | 'plan'>> = {},
): Promise<ConsentView> {
  const input = makeCase({ decision: { options: fiveOptions, chosen } });
  return viewConsent(await sceneFor('en', { case: { ...input, ...changes } }));
}

const plain = (markup: string | undefined): string =>
  (markup ?? '').replace(/<[^>]*>/g, '').replaceAll('\u00a0', ' ');
const pointOf = (view: ConsentView, start: string): string =>
  view.talk.map(({ markup }) => plain(markup)).find((words) => words.startsWith(start)) ?? '';
const factOf = (view: ConsentView, label: string): string | undefined =>
  view.facts.find((fact) => fact.label === label)?.value.replaceAll('\u00a0', ' ');

describe('the record of the talk', () => {
  it('names the other choices and what happens without treatment', async () => {
    const view = await consentOf('sleeve');
    expect(pointOf(view, 'My other choices.')).toBe(
      'My other choices. We also spoke of a gastric bypass, stomach folding, semaglutide, and no new treatment.',
    );
    expect(pointOf(view, 'What happens if I do nothing new.')).toContain('256 lb (116 kg)');
  });

  it('says the weight with its time, each harm out of 1,000 with its time, and ties both to their records', async () => {
    const view = await consentOf('sleeve');
    expect(pointOf(view, 'What it can do for me.')).toContain(
      'Weight after 5 years, on average: 206 lb (93 kg).',
    );
    const early = view.talk.find(({ markup }) => markup.includes('What can go wrong at first.'));
    expect(plain(early?.markup)).toMatch(/A leak, in the first month: \d+ out of 1,000\./);
    expect(early?.markup).toMatch(/<fig cell="sleeve\/leak\/30d" records="sleeve\.leak\.study-a">/);
    expect(plain(early?.markup)).not.toMatch(/out of 100\b/);
    expect(pointOf(view, 'What can go wrong later.')).toContain('Reflux, within 5 years: 310 out of 1,000.');
  });

  it('says that nothing is known where nothing is', async () => {
    const view = await consentOf('plication');
    expect(pointOf(view, 'What it can do for me.')).toBe(
      'What it can do for me. No study tells how weight changes for people like you.',
    );
  });

  it('says what undoing takes in the words of the comparison', async () => {
    expect(pointOf(await consentOf('sleeve'), 'Can it be undone?')).toMatch(
      /^Can it be undone\? Partly\. The part /,
    );
  });

  it('asks for an interpreter’s signature only where one is needed, and names the language', async () => {
    expect((await consentOf('sleeve')).interpreter).toBeNull();
    const spanish = await consentOf('sleeve', { interpreter: { needed: true, language: 'es' } });
    expect(spanish.interpreter).toContain('Spanish');
    expect(factOf(spanish, 'Language of the talk')).toBe('Spanish, with an interpreter');
    expect((await consentOf('sleeve', { interpreter: { needed: true } })).interpreter).not.toContain(
      'undefined',
    );
  });

  it('has the panel of an option under study, and of no other', async () => {
    expect((await consentOf('plication')).study).toHaveLength(1);
    expect((await consentOf('sleeve')).study).toEqual([]);
  });

  it('names the date of the operation, or that there is none yet', async () => {
    expect(factOf(await consentOf('sleeve'), 'Planned for')).toBe('not set yet');
    const plan = { surgeon: 'surgeon-1', operation_date: '2027-01-14' };
    expect(factOf(await consentOf('sleeve', { plan }), 'Planned for')).toBe('January 14, 2027');
  });
});
