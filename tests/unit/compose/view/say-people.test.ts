import { describe, expect, it } from 'vitest';

import { coveredLine } from '../../../../src/compose/view/say-covered.ts';
import { peopleInWords, spreadInWords } from '../../../../src/compose/view/say-people.ts';
import type { Person } from '../../../../src/model/comparison.ts';
import { makeRecord } from '../../../helpers/compare-inputs.ts';
import { fiveOptions, fiveYears, makeComparison, shareCell } from '../../../helpers/compose-inputs.ts';
import { allLanguages } from '../../../helpers/all-languages.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const plain = (words: { readonly markup: string } | null): string =>
  (words?.markup ?? '').replaceAll('\u00a0', ' ');

describe('people whose limits of BMI were others for women and men', () => {
  const record = makeRecord({
    people: {
      indication: 'first-operation',
      diabetes: 'mixed',
      bmi: { low: 38 },
      bmi_by_sex: { female: { low: 38 }, male: { low: 34 } },
    },
  });

  it.each([
    ['female', '38 or more'],
    ['male', '34 or more'],
    ['not-stated', '38 or more'],
  ] as const)('are said with the limits of the person: %s', async (sex, said) => {
    const comparison = makeComparison(fiveOptions);
    const person: Person = { ...comparison.person, sex };
    const scene = await sceneFor('en', { comparison: { ...comparison, person } });
    const records = new Map([[record.id, record]]);
    expect(plain(peopleInWords({ ...scene, records }, record))).toContain(`BMI: ${said}`);
    const cell = shareCell({ option: 'sleeve', outcome: 'leak', asked: fiveYears }, [5, 1000], {
      record: record.id,
    });
    expect(plain(coveredLine({ ...scene, records }, [cell]))).toContain(`a BMI of ${said}`);
  });
});

describe('figures in a list', () => {
  it.each(allLanguages)(
    'never have a comma between them where a comma shows their decimals: %s',
    async (tag) => {
      const scene = await sceneFor(tag);
      const said = spreadInWords(scene, { mean: 45.9, low: 35 }) ?? '';
      const usesComma = scene.format.number(45.9) === '45,9';
      const [, between] = /45[.,]9[^;,،，；]*([;,،，；])[^;,،，；]*35/u.exec(said) ?? [];
      expect(between === ';').toBe(usesComma);
      expect(between).toBeDefined();
      // Whole numbers hold no mark that could be mistaken.
      expect(spreadInWords(scene, { mean: 46, low: 35 })).not.toContain(';');
    },
  );
});
