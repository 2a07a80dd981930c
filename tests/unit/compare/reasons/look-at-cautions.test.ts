import { describe, expect, it } from 'vitest';

import type { Caution } from '../../../../src/model/evidence-rules.ts';
import type { ReasonCheck } from '../../../../src/model/reason-check.ts';
import { check } from '../../../helpers/check-reason.ts';
import { makeCaution } from '../../../helpers/compare-inputs.ts';

const warnOf = (id: string, options: readonly string[], more: object = {}): Caution =>
  makeCaution({ id, when: { condition: 'sleep-apnoea' }, options, ...more });

describe('an option that is said to be safer with an illness', () => {
  /** Judged for the sleeve, among operations unless said otherwise. */
  const weigh = (
    cautions: readonly Caution[],
    options: readonly string[] = ['sleeve', 'bypass', 'band', 'no-operation'],
  ): ReasonCheck =>
    check('safer-with-other-illness', {
      changes: { health: { conditions: ['sleep-apnoea'] }, decision: { options } },
      evidence: { cautions },
    });

  it('is so where the illness warns of each other operation', () => {
    const found = weigh([warnOf('lungs', ['bypass']), warnOf('port', ['band'])]);
    expect(found.verdict).toBe('supported');
    expect(found.findings).toEqual([
      {
        find: 'fewer-cautions',
        means: 'supports',
        mine: [],
        others: [
          { option: 'bypass', cautions: ['lungs'] },
          { option: 'band', cautions: ['port'] },
        ],
      },
    ]);
  });

  it('is not shown to be where it warns of some of them only', () => {
    expect(weigh([warnOf('lungs', ['bypass'])]).verdict).toBe('cannot-tell');
  });

  it('is not shown to be where it warns of every operation alike, or of none', () => {
    expect(weigh([warnOf('lungs', ['sleeve', 'bypass', 'band'])])).toMatchObject({
      verdict: 'cannot-tell',
      findings: [{ mine: [], others: [{ cautions: [] }, { cautions: [] }] }],
    });
    expect(weigh([warnOf('lungs', ['semaglutide'])]).verdict).toBe('cannot-tell');
  });

  it('is neither safer nor less safe where one thing warns of it and another of the others', () => {
    const found = weigh([warnOf('mask', ['sleeve']), warnOf('lungs', ['bypass']), warnOf('port', ['band'])]);
    expect(found).toMatchObject({ verdict: 'cannot-tell', findings: [{ mine: ['mask'] }] });
    expect(weigh([warnOf('mask', ['sleeve']), warnOf('lungs', ['bypass'])]).verdict).toBe('cannot-tell');
  });

  it('is less safe where a warning of it spares at least one other operation', () => {
    expect(weigh([warnOf('lungs', ['sleeve', 'bypass'])])).toMatchObject({
      verdict: 'contradicted',
      findings: [{ mine: ['lungs'], others: [{ cautions: [] }, { cautions: [] }] }],
    });
  });

  it('has nothing to be safer than where it is the only operation', () => {
    expect(weigh([warnOf('lungs', ['semaglutide'])], ['sleeve', 'semaglutide']).verdict).toBe('cannot-tell');
    expect(weigh([warnOf('lungs', ['sleeve'])], ['sleeve', 'semaglutide']).verdict).toBe('cannot-tell');
  });

  it('is judged by illnesses, not by medicines, and by what was read', () => {
    const changes = {
      health: { conditions: ['sleep-apnoea'], medicines: ['aspirin'], smoking: 'current' },
      decision: { options: ['sleeve', 'bypass'] },
    };
    const judge = (more: object): string =>
      check('safer-with-other-illness', {
        changes,
        evidence: { cautions: [warnOf('one', ['bypass'], more)] },
      }).verdict;
    expect(judge({})).toBe('supported');
    expect(judge({ when: { condition: 'sleep-apnoea', smoking: 'current' } })).toBe('supported');
    expect(judge({ when: { medicine: 'aspirin' } })).toBe('cannot-tell');
    expect(judge({ basis: 'practice' })).toBe('cannot-tell');
    expect(judge({ seen: 'memory' })).toBe('cannot-tell');
    expect(judge({ effect: 'needs-check' })).toBe('cannot-tell');
  });

  it('names the cautions in one order, whatever that of the evidence', () => {
    const ids = ['lungs', 'breath', 'mask', 'airway'];
    const sorted = ['airway', 'breath', 'lungs', 'mask'];
    const options = ['sleeve', 'bypass', 'no-operation'];
    expect(
      weigh(
        ids.map((id) => warnOf(id, ['sleeve'])),
        options,
      ).findings,
    ).toMatchObject([{ mine: sorted }]);
    expect(
      weigh(
        ids.map((id) => warnOf(id, ['bypass'])),
        options,
      ).findings,
    ).toMatchObject([{ others: [{ option: 'bypass', cautions: sorted }] }]);
  });
});

describe('a caution about what a reason speaks of', () => {
  const reflux = { health: { conditions: ['reflux'] } };

  it('counts although something else of the person calls it up too', () => {
    const smoker = { health: { conditions: ['reflux'], smoking: 'current' } };
    const both = makeCaution({ when: { condition: 'reflux', smoking: 'current' } });
    expect(check('reflux-worse', { changes: smoker, evidence: { cautions: [both] } }).verdict).toBe(
      'supported',
    );
  });

  it('counts before one that holds the option up, and that before usual practice', () => {
    const warns = makeCaution({ id: 'warns' });
    const favours = makeCaution({ id: 'favours', options: ['bypass'], favours: ['sleeve'] });
    const practice = makeCaution({ id: 'practice', basis: 'practice' });
    const said = (cautions: readonly Caution[]): unknown =>
      check('reflux-worse', { changes: reflux, evidence: { cautions } }).findings[1];
    expect(said([practice, favours, warns])).toEqual({
      find: 'cautions',
      said: 'warned',
      means: 'supports',
      cautions: ['warns'],
    });
    expect(said([practice, favours])).toMatchObject({ said: 'favoured', cautions: ['favours'] });
    expect(said([practice])).toMatchObject({ said: 'practice', means: 'nothing', cautions: ['practice'] });
  });

  it('bears nothing out where it is about a choice that is not compared', () => {
    const favours = makeCaution({ id: 'favours', options: ['band'], favours: ['sleeve'] });
    expect(check('reflux-better', { changes: reflux, evidence: { cautions: [favours] } })).toMatchObject({
      verdict: 'cannot-tell',
      findings: [{}, { said: 'favoured', means: 'nothing', cautions: ['favours'] }],
    });
    const compared = { ...reflux, decision: { options: ['sleeve', 'bypass', 'band'] } };
    expect(check('reflux-better', { changes: compared, evidence: { cautions: [favours] } }).verdict).toBe(
      'supported',
    );
  });

  it('is named with all others that say so, in one order', () => {
    const cautions = ['c', 'a', 'd', 'b'].map((id) => makeCaution({ id }));
    expect(check('reflux-worse', { changes: reflux, evidence: { cautions } }).findings[1]).toMatchObject({
      cautions: ['a', 'b', 'c', 'd'],
    });
  });
});

describe('an option that no caution speaks of', () => {
  const spared = (code: string, why: string, options: readonly string[] = ['sleeve']) => ({
    code,
    by_row: ['bypass'],
    others: [{ options: [...options], why }],
  });
  const medicines = { health: { medicines: ['anti-inflammatory', 'aspirin'] } };
  const judge = (...cautionCoverage: ReturnType<typeof spared>[]): string =>
    check('keeps-pain-medicine', { changes: medicines, evidence: { cautionCoverage } }).verdict;

  it('is spared only where the reason is known for each medicine that the person takes', () => {
    const [one, two] = [spared('anti-inflammatory', 'no cut edge'), spared('aspirin', 'no cut edge')];
    expect(judge(one, two)).toBe('supported');
    expect(judge(one)).toBe('cannot-tell');
    expect(judge(one, spared('aspirin', 'not known'))).toBe('cannot-tell');
    expect(judge(spared('anti-inflammatory', 'not known'), two)).toBe('cannot-tell');
    expect(judge(one, spared('aspirin', 'no cut edge', ['band']))).toBe('cannot-tell');
    const [band] = spared('aspirin', 'nothing is cut', ['band']).others;
    const apart = { ...two, others: [...(band === undefined ? [] : [band]), ...two.others] };
    expect(judge(one, apart)).toBe('supported');
  });

  it('is not spared where the person has nothing of what the reason is about', () => {
    const found = check('fewer-vitamins', { evidence: { cautionCoverage: [spared('b12-deficiency', 'x')] } });
    expect(found.findings[1]).toEqual({ find: 'cautions', said: 'silent', means: 'nothing', cautions: [] });
  });

  it('is spared by what the person has, not by every illness that the reason could speak of', () => {
    const found = check('reflux-worse', {
      changes: { health: { conditions: ['reflux'] } },
      evidence: { cautionCoverage: [spared('reflux', 'nothing is cut')] },
    });
    expect(found).toMatchObject({
      verdict: 'cannot-tell',
      findings: [{}, { said: 'spared', means: 'nothing', cautions: [] }],
    });
  });
});
