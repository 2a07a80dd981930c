import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

import { viewQuestions } from '../../../../src/compose/view/view-questions.ts';
import { viewWeighing } from '../../../../src/compose/view/view-weighing.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import { withoutRecords } from '../../../helpers/caution-pairs.ts';
import { compareWell, makeCase, makeClinic, readShippedEvidence } from '../../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../../helpers/compare-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const evidence = withoutRecords(readShippedEvidence());

/** A case as the engine compares it with the cautions that are shipped. */
async function sceneOf(tag: string, changes: CaseChanges, cautions: object = {}): Promise<Scene> {
  const clinic = makeClinic({ cautions });
  const comparison = compareWell(evidence, changes, clinic);
  return sceneFor(tag, { case: makeCase(changes), clinic, evidence, comparison });
}

function plain(lines: readonly { readonly markup: string }[]): readonly string[] {
  return lines.map(({ markup }) => markup.replace(/<[^>]+>/g, '').replace(/\u00a0/g, ' '));
}

const torn: CaseChanges = {
  health: { conditions: ['reflux'], medicines: ['anti-inflammatory'], smoking: 'current' },
};

describe('cautions that pull in different directions, on the clinician sheet', () => {
  it('stand in one line, with their ids, tied to both cautions', async () => {
    const { conflicts } = viewWeighing(await sceneOf('en', torn));
    expect(plain(conflicts)).toEqual([
      'These pull in different directions: reflux-sleeve points to a gastric bypass rather than a sleeve; against that: anti-inflammatory-bypass, smoking-bypass.',
    ]);
    expect(conflicts[0]?.markup).toContain(
      '<stands on="caution:reflux-sleeve caution:anti-inflammatory-bypass caution:smoking-bypass">',
    );
  });

  it('are said in Spanish too', async () => {
    const [line] = plain(viewWeighing(await sceneOf('es', torn)).conflicts);
    expect(line).toMatch(/^Apuntan en direcciones distintas: reflux-sleeve inclina hacia un bypass gástrico/);
  });

  it('are not there where nothing pulls', async () => {
    expect(viewWeighing(await sceneOf('en', {})).conflicts).toEqual([]);
  });
});

describe('cautions that pull in different directions, among the questions', () => {
  const asked = async (tag: string, changes: CaseChanges, cautions = {}): Promise<readonly string[]> => {
    const { groups } = viewQuestions(await sceneOf(tag, changes, cautions));
    return plain(groups.flatMap(({ items }) => items.map(({ words }) => words)));
  };
  const one = /speak against one of these choices, others against another/;

  it('are one question, however many there are', async () => {
    const crohn = { health: { ...torn.health, conditions: ['reflux', 'inflammatory-bowel-disease'] } };
    const [question, ...more] = (await asked('en', crohn)).filter((text) => one.test(text));
    expect(question).toContain(
      'others against another: a sleeve and a gastric bypass. Which of them count most',
    );
    expect(more).toEqual([]);
    expect((await asked('es', torn)).join(' ')).toContain('una manga gástrica y un bypass gástrico. ¿Cuáles');
  });

  it('are none where nothing pulls, or the clinic struck what pulls', async () => {
    expect((await asked('en', {})).join(' ')).not.toMatch(one);
    expect((await asked('en', torn, { 'reflux-sleeve': 'struck' })).join(' ')).not.toMatch(one);
  });
});

describe('the old score, on the clinician sheet', () => {
  const score = async (tag: string, changes: CaseChanges): Promise<readonly string[]> =>
    plain(viewWeighing(await sceneOf(tag, changes)).score);

  it('says the class and what gave the points', async () => {
    const health = { conditions: ['high-blood-pressure', 'previous-clot'] };
    const [result] = await score('en', { health });
    expect(result).toBe(
      'The mortality score of 2007: class B. 3 points: hypertension; previous venous thromboembolism; age 45 or more.',
    );
  });

  it('says that it cannot tell, between which classes and for want of what', async () => {
    const [result] = await score('en', { patient: { sex: 'not-stated' } });
    expect(result).toBe(
      'The mortality score of 2007: cannot tell (class A to B). 1 point: age 45 or more. The case does not tell: sex; vena cava filter, hypoventilation, pulmonary hypertension, right heart failure.',
    );
    const [none] = await score('en', { patient: { born: '1990-01-01' } });
    expect(none).toMatch(/^The mortality score of 2007: class A\. No points\. The case does not tell: vena/);
  });

  it('says its limits and the study that made it, and never a share of deaths', async () => {
    for (const tag of ['en', 'es']) {
      const lines = await score(tag, { health: { conditions: ['previous-clot'] } });
      const all = lines.join(' ');
      expect(lines).toHaveLength(2);
      expect(all).toMatch(/65 (to|a) 346/);
      expect(all).toContain('DeMaria EJ, Portenier D, Wolfe L. (2007)');
      expect(all).toContain('osmrs-validation-2007');
      expect(all).not.toMatch(/%|percent|por ciento|out of|de cada|0\.31|1\.9|7\.5|2\.4/);
    }
  });

  it('is not there for options that it was not made for', async () => {
    expect(await score('en', { decision: { options: ['sleeve', 'band', 'semaglutide'] } })).toEqual([]);
  });

  it('is named by no template but that of the clinician sheet', () => {
    const folder = join(import.meta.dirname, '../../../../templates');
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.hbs'),
    );
    const naming = files.filter((name) => readFileSync(join(folder, name), 'utf8').includes('weighing.'));
    expect(naming).toEqual(['clinician-sheet/main.hbs']);
  });
});
