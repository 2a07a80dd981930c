import { describe, expect, it } from 'vitest';

import { clinicianCautions } from '../../../../src/compose/view/clinician-cautions.ts';
import type { CautionHit } from '../../../../src/model/comparison.ts';
import { makeCase, makeClinic } from '../../../helpers/compare-inputs.ts';
import { fiveOptions, makeComparison, practiceHit, refluxHit } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { rowsOf } from '../../../helpers/read-tables.ts';

async function cautions(hits: readonly CautionHit[], options: readonly string[] = fiveOptions) {
  const comparison = makeComparison(options, { cautions: hits });
  const file = makeCase({ decision: { options } });
  return rowsOf(clinicianCautions(await sceneFor('en', { comparison, case: file })));
}

describe('cautions for clinicians', () => {
  it('stand under their effect, each with options, strength, what it says and its source', async () => {
    const check: CautionHit = { ...practiceHit, effect: 'needs-check' };
    const rows = await cautions([refluxHit, { ...practiceHit, options: ['bypass', 'plication'] }, check]);
    expect(rows.map((cells) => cells.slice(0, 2))).toEqual([
      ['Extra risk'],
      ['reflux-sleeve: Sleeve', 'strong'],
      ['bmi-very-high-others: Gastric bypass, Stomach folding', 'weak'],
      ['Needs a check'],
      ['bmi-very-high-others: Stomach folding', 'weak'],
    ]);
    expect(rows[1]?.[2]).toMatch(/^After 10 years.* \[study-a\]$/);
    expect(rows[2]?.[2]).toBe('Needs confirming. A statement for clinicians. [usual practice]');
  });

  it('say in other languages whose words are those of the record, and mark them as English', async () => {
    const comparison = makeComparison(fiveOptions, { cautions: [practiceHit] });
    const [, row] = clinicianCautions(await sceneFor('ru', { comparison })).rows;
    const said = JSON.stringify(row?.cells[2]);
    expect(said).toContain(
      'Текст записи, по-английски: <lang code=\\"en\\">A statement for clinicians.</lang>',
    );
  });

  it('name every operation of three or more in a word, but never two, nor with something else', async () => {
    const many = ['sleeve', 'bypass', 'duodenal-switch', 'semaglutide'];
    const about = async (
      options: readonly string[],
      touched: readonly string[],
    ): Promise<string | undefined> =>
      (await cautions([{ ...practiceHit, options: touched }], options))[1]?.[0];
    expect(await about(many, ['sleeve', 'bypass', 'duodenal-switch'])).toBe(
      'bmi-very-high-others: every operation here',
    );
    expect(await about(many, ['sleeve', 'bypass'])).toContain('Sleeve, Gastric bypass');
    expect(await about(many, many)).toContain('Semaglutide');
    expect(await about(['sleeve', 'bypass'], ['sleeve', 'bypass'])).toContain('Sleeve, Gastric bypass');
  });

  it('say what the clinic has confirmed, and only what is known of one that the evidence does not hold', async () => {
    const lost = { ...practiceHit, id: 'bmi-very-high-sleeve' };
    const comparison = makeComparison(fiveOptions, { cautions: [practiceHit, lost] });
    const clinic = { ...makeClinic(), cautions: { [practiceHit.id]: 'confirmed' as const } };
    const rows = rowsOf(clinicianCautions(await sceneFor('en', { comparison, clinic })));
    expect(rows.slice(1).map((cells) => cells[2])).toEqual([
      'Confirmed by this clinic. A statement for clinicians. [usual practice]',
      'Needs confirming. [usual practice]',
    ]);
  });
});
