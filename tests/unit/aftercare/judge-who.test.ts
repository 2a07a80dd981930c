import { describe, expect, it } from 'vitest';
import { judgeWho } from '../../../src/aftercare/judge-who.ts';
import { whoCodes } from '../../../src/model/aftercare-codes.ts';
import { personCodes } from '../../../src/model/protocol-codes.ts';
import { makeCase } from '../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../helpers/compare-inputs.ts';

const date = '2026-12-14';

function judge(changes: CaseChanges): (who: (typeof whoCodes)[number]) => string {
  return (who) => judgeWho(who, makeCase(changes), date);
}

const man = { patient: { sex: 'male' } };

describe('whether words are for a person', () => {
  it('is for everybody what is for everybody, and for nobody what was measured in others', () => {
    expect(judge({})('adults')).toBe('yes');
    expect(judge({})('everyone')).toBe('yes');
    expect(judge({})('measured-group')).toBe('no');
  });

  it.each([
    ['never', 'no', 'no'],
    ['former', 'no', 'yes'],
    ['current', 'yes', 'yes'],
    ['not-asked', 'unknown', 'unknown'],
  ])('smoking %s: smokes %s, ever %s', (smoking, smokes, ever) => {
    const of = judge({ health: { smoking } });
    expect([of('smokes'), of('ever-smoked')]).toEqual([smokes, ever]);
  });

  it('is told of conditions and medicines that a case lists', () => {
    const ill = judge({
      health: {
        smoking: 'never',
        conditions: ['type-2-diabetes', 'alcohol-problem'],
        medicines: ['blood-pressure-medicine', 'sglt2-inhibitor', 'oral-contraceptive', 'narrow-dose-range'],
      },
    });
    const whole = judge({});
    expect(
      (['diabetes', 'alcohol-misuse', 'blood-pressure-medicine', 'sglt2-inhibitor'] as const).map(ill),
    ).toEqual(['yes', 'yes', 'yes', 'yes']);
    expect(
      (['diabetes', 'alcohol-misuse', 'blood-pressure-medicine', 'sglt2-inhibitor'] as const).map(whole),
    ).toEqual(['no', 'no', 'no', 'no']);
    // A case does not say which of them it is, nor what is not on its list of medicines.
    expect([ill('ertugliflozin'), whole('ertugliflozin')]).toEqual(['unknown', 'no']);
    expect([ill('narrow-dose-range'), whole('narrow-dose-range')]).toEqual(['yes', 'unknown']);
    expect([ill('oestrogen'), whole('oestrogen'), ill('oestrogen-pill'), whole('oestrogen-pill')]).toEqual([
      'yes',
      'unknown',
      'yes',
      'no',
    ]);
  });

  it('leaves out of what is about pregnancy only men and women past 60', () => {
    const women = [
      'menstruates',
      'could-become-pregnant',
      'plans-pregnancy',
      'pregnant',
      'pregnant-vomiting',
    ] as const;
    expect(new Set(women.map(judge({})))).toEqual(new Set(['unknown']));
    expect(new Set(women.map(judge({ patient: { sex: 'not-stated' } })))).toEqual(new Set(['unknown']));
    expect(new Set(women.map(judge(man)))).toEqual(new Set(['no']));
    expect(new Set(women.map(judge({ patient: { born: '1966-12-14' } })))).toEqual(new Set(['no']));
    expect(new Set(women.map(judge({ patient: { born: '1966-12-15' } })))).toEqual(new Set(['unknown']));
    expect(judge(man)('does-not-menstruate')).toBe('yes');
    expect(judge({})('does-not-menstruate')).toBe('unknown');
    expect([judge(man)('hormone-replacement'), judge({})('hormone-replacement')]).toEqual(['no', 'unknown']);
  });

  it('knows of a pregnancy that is planned or there', () => {
    const plans = judge({ health: { smoking: 'never', pregnancy: { planned_within_months: 18 } } });
    expect([
      plans('plans-pregnancy'),
      plans('could-become-pregnant'),
      plans('plans-or-has-pregnancy'),
    ]).toEqual(['yes', 'yes', 'yes']);
    expect([plans('pregnant'), plans('plans-pregnancy-high-need')]).toEqual(['unknown', 'unknown']);
    const now = judge({ health: { smoking: 'never', pregnancy: { now: true } } });
    expect([now('pregnant'), now('plans-or-has-pregnancy'), now('pregnant-high-need')]).toEqual([
      'yes',
      'yes',
      'unknown',
    ]);
  });

  it('finds a high risk of a clot by age, weight or illness, and never rules it out', () => {
    expect(judge({})('high-clot-risk')).toBe('unknown');
    expect(judge({ patient: { born: '1970-12-14' } })('high-clot-risk')).toBe('yes');
    expect(judge({ patient: { born: '1970-12-15' } })('high-clot-risk')).toBe('unknown');
    expect(judge({ patient: { weight: '150 kg' } })('high-clot-risk')).toBe('yes');
    expect(judge({ health: { smoking: 'never', conditions: ['previous-clot'] } })('high-clot-risk')).toBe(
      'yes',
    );
  });

  it('knows that a gallbladder is out, and not that it is in', () => {
    const without = judge({ health: { smoking: 'never', history: ['gallbladder-removed'] } });
    expect([without('gallbladder'), without('gallbladder-no-stones')]).toEqual(['no', 'no']);
    expect([judge({})('gallbladder'), judge({})('gallbladder-no-stones')]).toEqual(['unknown', 'unknown']);
  });

  it('answers for every code, also those a clinic may write', () => {
    for (const who of [...whoCodes, ...personCodes]) {
      expect(['yes', 'no', 'unknown']).toContain(judge({})(who));
    }
  });
});
