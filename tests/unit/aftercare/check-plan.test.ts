import { describe, expect, it } from 'vitest';

import { checkPlan, planAftercare } from '../../../src/aftercare/index.ts';
import type { DocumentKind } from '../../../src/model/codes.ts';
import { aftercareInput, makeFact } from '../../helpers/aftercare-inputs.ts';
import type { AftercareChanges } from '../../helpers/aftercare-inputs.ts';

function found(documents: readonly DocumentKind[], changes: AftercareChanges = {}): readonly string[] {
  return checkPlan(planAftercare(aftercareInput(changes)), documents).map(
    ({ code, severity, message }) => `${code} ${severity}: ${message}`,
  );
}

const text = { en: 'Words' };
const says = {
  diet: { sleeve: [{ name: text, from_day: 0, what: text }] },
  follow_up: { sleeve: [{ after: '2 weeks', with: ['nurse'] }] },
};
const now = { warnings: { sleeve: { now: [{ code: 'belly-pain' }] } } };

describe('a plan that would leave a page empty', () => {
  it('refuses warning signs without one to call about at once', () => {
    expect(found(['warning-signs'])[0]).toBe(
      'CLINIC_INCOMPLETE error: nothing says after sleeve when to call at once, so there is no page of warning signs',
    );
    const errors = (protocol: AftercareChanges['protocol']): readonly string[] =>
      found(['warning-signs'], protocol === undefined ? {} : { protocol }).filter((one) =>
        one.includes('error'),
      );
    expect(errors(now)).toEqual([]);
    expect(errors({ warnings: { sleeve: { today: [{ code: 'belly-pain' }] } } })).toHaveLength(1);
  });

  it('refuses a list of vitamins that holds nothing', () => {
    const supplements = { supplements: { sleeve: [{ supplement: 'iron' }] } };
    const tests = { blood_tests: { sleeve: [{ tests: ['iron'], at: ['3 months'] }] } };
    const errors = (protocol: AftercareChanges['protocol'] = {}): number =>
      found(['vitamins'], { protocol }).filter((one) => one.includes('error')).length;
    expect([errors(), errors(supplements), errors(tests)]).toEqual([1, 0, 0]);
  });

  it('warns where the pages for home say nothing on food or visits', () => {
    const warned = (protocol: AftercareChanges['protocol'] = {}): readonly string[] =>
      found(['homecare'], { protocol }).filter((one) => one.includes('neither do the pages'));
    expect(warned()).toHaveLength(2);
    expect(warned(says)).toEqual([]);
  });

  it('says nothing of a document that is not asked for', () => {
    expect(found(['comparison', 'consent'])).toEqual([]);
  });
});

describe('what guidelines leave to the clinic', () => {
  const facts = [
    makeFact({ id: 'supplement.zinc.a', subject: 'zinc', conflict_with: ['supplement.zinc.b'] }),
    makeFact({ id: 'supplement.zinc.b', subject: 'zinc', conflict_with: ['supplement.zinc.a'] }),
    makeFact({ id: 'supplement.iron.a', subject: 'iron', who: 'pregnant', use: 'prescriber' }),
  ];
  const isOpen = (one: string): boolean => one.includes('guidelines leave to the clinic');

  it('is one warning that names each matter once', () => {
    const [warning = ''] = found(['vitamins'], { facts }).filter(isOpen);
    expect(warning.match(/zinc/g)).toHaveLength(1);
    expect(warning).toMatch(/^CLINIC_INCOMPLETE warning/);
  });

  it('is not what holds for some people only', () => {
    expect(found(['vitamins'], { facts }).filter(isOpen).join()).not.toContain('iron');
  });

  it('is settled once the clinic has its own list', () => {
    const protocol = { supplements: { sleeve: [{ supplement: 'calcium' }] } };
    expect(found(['vitamins'], { facts, protocol }).filter(isOpen).join()).not.toContain('zinc');
  });
});
