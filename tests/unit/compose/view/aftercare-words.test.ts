import { describe, expect, it } from 'vitest';

import {
  aftercareSubjects,
  aftercareTopics,
  testCodes,
  whoCodes,
} from '../../../../src/model/aftercare-codes.ts';
import { mayPrintAsRule } from '../../../../src/model/aftercare-rules.ts';
import { aftercareUnits } from '../../../../src/model/aftercare-units.ts';
import { isForAll } from '../../../../src/model/aftercare-plan.ts';
import { doseUnits } from '../../../../src/model/dose.ts';
import {
  adviceCodes,
  medicineTopics,
  signCodes,
  staffCodes,
  supplementCodes,
} from '../../../../src/model/protocol-codes.ts';
import { afterTopics } from '../../../../src/model/protocol-of.ts';
import { spanUnits } from '../../../../src/model/span.ts';
import { readShippedFacts, readShippedSources } from '../../../helpers/aftercare-inputs.ts';
import { realLocale } from '../../../helpers/compose-inputs.ts';

const signFacts = readShippedFacts().filter(({ urgency, use }) => urgency !== undefined && use === 'rule');
const sources = readShippedSources();
const rules = readShippedFacts().filter(
  (fact) => fact.urgency === undefined && mayPrintAsRule(fact, sources.get(fact.source)),
);
/** Amounts, tests and supplements have words of their own. */
const isWords = ({ topic, value }: (typeof rules)[number]): boolean =>
  topic !== 'emergency-first' &&
  topic !== 'blood-test' &&
  topic !== 'other-test' &&
  topic !== 'unit-conversion' &&
  !(topic === 'supplement' && typeof value === 'object');

const without =
  (...left: readonly string[]) =>
  (code: string): boolean =>
    !left.includes(code);

describe.each(['en', 'es'])('the words for the time after a treatment, in %s', (tag) => {
  it.each<[string, readonly string[]]>([
    ['signs', [...signCodes, ...signFacts.map(({ subject }) => subject).filter(without('self-harm-line'))]],
    ['emergency_signs', aftercareSubjects['emergency-first']],
    ['supplements', supplementCodes],
    ['tests', testCodes],
    ['staff', staffCodes],
    ['advice', adviceCodes],
    [
      'topics',
      [
        ...afterTopics,
        'stay',
        ...medicineTopics.filter(without('sickness-medicine', 'other')),
        ...aftercareTopics.filter(
          without(
            'unit-conversion',
            'emergency-first',
            'warning-emergency',
            'warning-clinic',
            'driving',
            'work',
            'lifting',
            'advice',
          ),
        ),
      ].filter(without('advice')),
    ],
    ['who', whoCodes.filter((code) => !isForAll(code) && code !== 'measured-group')],
    ['amounts', aftercareUnits],
    ['doses', doseUnits],
    ['spans', spanUnits],
    ['guideline', rules.filter(isWords).map(({ subject }) => subject)],
  ])('have every one of the %s', async (group, codes) => {
    const { translator } = await realLocale(tag);
    expect(codes.length).toBeGreaterThan(3);
    expect(codes.filter((code) => !translator.has(`aftercare.${group}.${code}`))).toEqual([]);
  });
});
