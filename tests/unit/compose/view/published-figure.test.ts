import { beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';

import { publishedFigure, withUnit } from '../../../../src/compose/view/published-figure.ts';
import type { EvidenceKind } from '../../../../src/model/evidence-record.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import { makeRecord, makeWeightRecord } from '../../../helpers/compare-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { copyOf, shippedData } from '../../../helpers/shipped-files.ts';

let english: Scene;
let spanish: Scene;
beforeAll(async () => {
  english = await sceneFor('en');
  spanish = await sceneFor('es');
});

const percent = { metric: 'TWL', unit: '%' };
const ratio = { measure: 'risk-ratio', adjusted: true, estimate: 1.4 };
const change = { metric: 'GIQLI', estimate: 10.5, unit: 'points' };

/** Values of each kind, with what the sheet says of them. The type makes a new kind a fault here. */
const said: Readonly<Record<EvidenceKind, readonly (readonly [value: object, said: string | null])[]>> = {
  risk: [
    [{ events: 7, n: 121 }, '7/121'],
    [{ events: 1234, n: 56_789 }, '1,234/56,789'],
    [{ events: 0, n: 31 }, '0/31'],
    // The count says more than the percent that was worked out from it.
    [{ events: 7, n: 121, percent: 5.8 }, '7/121'],
    [{ percent: 22.5, n: 400 }, '22.5%'],
    [{ percent: 0.04 }, '0.04%'],
    [{ percent: 6 }, '6%'],
    [{ events: 7 }, null],
    [{ rate: 2, per: 100, unit: 'person-years' }, null],
    [{ low: 1, high: 69 }, null],
  ],
  benefit: [
    [{ events: 60, n: 98 }, '60/98'],
    [{ percent: 61.25 }, '61.3%'],
    [{ percent: 4.84 }, '4.8%'],
  ],
  weight: [
    [{ ...percent, estimate: 22.5 }, '22.5%'],
    [{ ...percent, estimate: -1.6 }, '-1.6%'],
    [{ metric: 'kg', unit: 'kg', estimate: 36.8 }, '36.8\u00a0kg'],
    [{ metric: 'BMI', unit: 'kg/m2', estimate: 12 }, '12\u00a0kg/m²'],
    [{ ...percent, low: 20, high: 31 }, null],
  ],
  duration: [
    [{ estimate: 2, unit: 'days' }, '2\u00a0d'],
    [{ estimate: 1.5, unit: 'hours' }, '1.5\u00a0h'],
  ],
  // None of these has a single figure that stands by itself.
  score: [[change, null]],
  contrast: [[ratio, null]],
  report: [[{ events: 12 }, null]],
};

const cases = Object.entries(said).flatMap(([kind, values]) =>
  values.map(([value, words]) => ({ kind, value, words, shown: JSON.stringify(value) })),
);

describe('a published figure', () => {
  it.each(cases)('is said as it was published: $kind $shown', ({ kind, value, words }) => {
    const versus = kind === 'contrast' ? { versus: 'bypass' } : {};
    expect(publishedFigure(makeRecord({ kind, value, ...versus }), english)).toBe(words);
  });

  it('is written as readers of the language write numbers', () => {
    const format = { ...english.format, number: (value: number) => `<${String(value)}>` };
    const marked = { ...english, format };
    expect(publishedFigure(makeRecord({ value: { events: 7, n: 121 } }), marked)).toBe('<7>/<121>');
    expect(publishedFigure(makeWeightRecord({ value: { ...percent, estimate: 22.5 } }), marked)).toBe(
      '<22.5>%',
    );
  });

  it('has words for every unit of the evidence that may stand behind a figure, in both languages', () => {
    const units = new Set(
      Object.values(copyOf(`${shippedData}/records`)).flatMap((text) =>
        (parse(text) as readonly { kind: string; value?: { unit?: string } }[]).flatMap(({ kind, value }) =>
          value?.unit === undefined || kind === 'risk' || kind === 'benefit' ? [] : [value.unit],
        ),
      ),
    );
    expect(units.size).toBeGreaterThan(8);
    for (const scene of [english, spanish])
      for (const unit of units) expect(withUnit(scene, 2.5, unit)).toMatch(/^2\.5[%\u00a0]/);
  });
});
