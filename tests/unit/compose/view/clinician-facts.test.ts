import { describe, expect, it } from 'vitest';

import { viewClinician } from '../../../../src/compose/view/view-clinician.ts';
import { makeCase, readShippedEvidence } from '../../../helpers/compare-inputs.ts';
import { fiveOptions, makeComparison } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain } from '../../../helpers/read-tables.ts';

async function background(health: Readonly<Record<string, unknown>>, tag = 'en'): Promise<string> {
  const file = makeCase({ decision: { options: fiveOptions }, health });
  const [line] = viewClinician(await sceneFor(tag, { case: file })).background;
  return plain(line?.markup ?? '');
}

describe('the facts of a case', () => {
  it('are five short ones in a row, the longer ones in a line under them', async () => {
    const { facts } = viewClinician(await sceneFor('en'));
    expect(facts.map(({ label, value }) => `${label}: ${plain(value)}`)).toEqual([
      'Person: Woman, 45',
      'Born: June 2, 1981',
      'Size: 163 cm, 114.5 kg',
      'BMI: 43.1, standard cut-offs',
      'Smoking: never',
    ]);
    expect(await background({})).toBe(
      'Conditions: none. Medicines: none. Earlier: none. Pregnancy: none planned.',
    );
  });

  it('are said in the terms of the trade', async () => {
    const health = {
      conditions: ['sleep-apnoea', 'previous-clot'],
      medicines: ['sglt2-inhibitor', 'anti-inflammatory'],
    };
    expect(await background(health)).toContain(
      'Conditions: sleep apnea; previous venous thromboembolism. Medicines: SGLT2 inhibitor; NSAID.',
    );
    expect(await background(health, 'es')).toContain(
      'Enfermedades: apnea del sueño; tromboembolia venosa previa. Medicinas: inhibidor de SGLT2; AINE.',
    );
  });

  it('say a pregnancy, and nothing of one for a man', async () => {
    expect(await background({ pregnancy: { now: true } })).toContain('Pregnancy: pregnant now.');
    expect(await background({ pregnancy: { planned_within_months: 1 } })).toContain(
      'Pregnancy: planned within 1 month.',
    );
    const comparison = makeComparison(fiveOptions);
    const man = { ...comparison, person: { ...comparison.person, sex: 'male' as const } };
    const [line] = viewClinician(await sceneFor('en', { comparison: man })).background;
    expect(line?.markup).not.toContain('Pregnancy');
  });

  it('say of earlier operations what is known, and events of the past', async () => {
    const bare = { operation: 'sleeve', status: 'converted' };
    const ill = {
      operation: 'band',
      date: '2009-06',
      weight_before: '108 kg',
      lowest_weight: '70 kg',
      trouble: 'slippage',
      status: 'removed',
    };
    const reflux = { ...bare, trouble: 'reflux', status: 'in-place' };
    const text = await background({ earlier_operations: [bare, ill, reflux], history: ['pancreatitis'] });
    expect(text).toContain(
      'Earlier: Sleeve, converted; Stomach band, June 2009, removed, 108.0 kg before it, lowest 70.0 kg, trouble: slippage; Sleeve, in place, trouble: reflux; pancreatitis.',
    );
  });
});

describe('an earlier operation that took something out', () => {
  it('says so to clinicians, and one that did not says nothing', async () => {
    const operations = [
      { operation: 'band', status: 'removed' },
      { operation: 'single-anastomosis-switch', status: 'in-place' },
    ];
    const file = makeCase({ decision: { options: fiveOptions }, health: { earlier_operations: operations } });
    const { reversibility } = readShippedEvidence();
    const said = async (tag: string): Promise<string> => {
      const scene = await sceneFor(tag, { case: file });
      const [line] = viewClinician({ ...scene, evidence: { ...scene.evidence, reversibility } }).background;
      return plain(line?.markup ?? '');
    };
    expect(await said('en')).toContain(
      'Earlier: Stomach band, removed; One-join switch, part of the stomach resected for good, in place.',
    );
    expect(await said('es')).toContain('resección definitiva de parte del estómago, vigente.');
  });
});

describe('the decision of a case', () => {
  it('names an option that is not compared by its code', async () => {
    const decision = {
      options: fiveOptions,
      leaning: { option: 'band', reasons: [{ code: 'can-be-undone' }] },
      advised_against: [{ option: 'sleeve', reasons: [{ text: { en: 'No.' } }] }],
    };
    const view = viewClinician(await sceneFor('en', { case: makeCase({ decision }) }));
    expect(view.decision.map(({ markup }) => plain(markup))).toEqual([
      'Dr. A. Example leans to: band. It can be undone.',
      'Advised against: a sleeve. No.',
    ]);
  });
});
