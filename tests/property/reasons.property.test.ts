import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { compareOptions } from '../../src/compare/index.ts';
import { reasonCodes } from '../../src/model/codes.ts';
import { isPrintable } from '../../src/model/evidence.ts';
import type { EvidenceBase } from '../../src/model/evidence.ts';
import type { ReasonCheck, ReasonCode, ReasonVerdict } from '../../src/model/reason-check.ts';
import { makeCase, makeClinic, readShippedEvidence, today } from '../helpers/compare-inputs.ts';

const shipped = readShippedEvidence();
const clinic = makeClinic();
const options = ['sleeve', 'bypass', 'band', 'plication', 'tirzepatide', 'lifestyle', 'no-operation'];

interface Asked {
  readonly kg: number;
  readonly conditions: readonly string[];
  readonly medicines: readonly string[];
  readonly matters: readonly string[];
  readonly chosen: readonly string[];
}

const anyone: fc.Arbitrary<Asked> = fc.record({
  kg: fc.integer({ min: 80, max: 180 }),
  conditions: fc.subarray(['type-2-diabetes', 'reflux', 'severe-reflux', 'sleep-apnoea', 'b12-deficiency']),
  medicines: fc.subarray(['anti-inflammatory', 'metformin']),
  matters: fc.subarray(['most-weight-loss', 'keep-options-open', 'diabetes-better', 'eat-with-family']),
  chosen: fc.shuffledSubarray(options, { minLength: 2, maxLength: 5 }),
});

/** Every coded reason for the first option and against the second. */
function check(asked: Asked, evidence: EvidenceBase = shipped): readonly ReasonCheck[] {
  const [first = '', second = ''] = asked.chosen;
  const found = [
    reasonCodes.slice(0, 5),
    reasonCodes.slice(5, 10),
    reasonCodes.slice(10, 15),
    reasonCodes.slice(15),
  ].map((codes) => {
    const reasons = codes.map((code) => ({ code }));
    const given = makeCase({
      patient: { weight: `${String(asked.kg)} kg` },
      health: { conditions: asked.conditions, medicines: asked.medicines },
      decision: {
        options: [...asked.chosen].sort((a, b) => (a < b ? -1 : 1)),
        matters_most: asked.matters.map((code) => ({ code })),
        leaning: { option: first, reasons },
        advised_against: [{ option: second, reasons }],
      },
    });
    const result = compareOptions({ case: given, clinic, evidence, date: today });
    if (!result.ok) throw new Error(result.diagnostics.map(({ message }) => message).join('; '));
    return result.value.reasons;
  });
  return found.flat();
}

describe('the reasons of a surgeon', () => {
  it('are each judged once for each option, and only by figures that were read at their source', () => {
    const printable = new Set(shipped.records.filter(isPrintable).map(({ id }) => id));
    fc.assert(
      fc.property(anyone, (asked) => {
        const checks = check(asked);
        expect(new Set(checks.map(({ id }) => id)).size).toBe(2 * reasonCodes.length);
        expect(checks.flatMap(({ records }) => records).filter((id) => !printable.has(id))).toEqual([]);
      }),
      { numRuns: 6 },
    );
  });

  it('are judged the same in whatever order the evidence lists its records and cautions', () => {
    fc.assert(
      fc.property(anyone, (asked) => {
        const turned: EvidenceBase = {
          ...shipped,
          records: [...shipped.records].reverse(),
          cautions: [...shipped.cautions].reverse(),
          reasons: [...shipped.reasons].reverse(),
        };
        expect(check(asked, turned)).toEqual(check(asked));
      }),
      { numRuns: 4 },
    );
  });

  it('that say the opposite of each other are never both supported, and of two neither when nobody can tell', () => {
    const opposite: readonly (readonly [ReasonCode, ReasonCode])[] = [
      ['reflux-better', 'reflux-worse'],
      ['can-be-undone', 'cannot-be-undone'],
      ['keeps-pain-medicine', 'no-pain-medicine'],
    ];
    const turned: Readonly<Record<ReasonVerdict, ReasonVerdict>> = {
      supported: 'contradicted',
      contradicted: 'supported',
      'cannot-tell': 'cannot-tell',
    };
    fc.assert(
      fc.property(anyone, (asked) => {
        const checks = check(asked);
        const find = (code: ReasonCode): readonly ReasonCheck[] => checks.filter((one) => one.code === code);
        const expected = (one: ReasonCheck): ReasonVerdict =>
          one.findings[0]?.find === 'not-in-case' ? 'contradicted' : turned[one.verdict];
        for (const [a, b] of opposite)
          expect(find(b).map(({ verdict }) => verdict)).toEqual(find(a).map(expected));
      }),
      { numRuns: 10 },
    );
  });
});
