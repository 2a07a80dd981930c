import { describe, expect, it } from 'vitest';

import { possibleHarms } from '../../../../src/compose/view/possible-harms.ts';
import type { NamedOption, Scene } from '../../../../src/compose/view/scene.ts';
import type { EvidenceRecord } from '../../../../src/model/evidence-record.ts';
import { makeCase, makeRecord } from '../../../helpers/compare-inputs.ts';
import { fiveOptions } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

async function sceneOf(
  records: readonly EvidenceRecord[],
  health: Parameters<typeof makeCase>[0] = {},
): Promise<Scene> {
  const scene = await sceneFor('en', { case: makeCase({ decision: { options: fiveOptions }, ...health }) });
  const recordsByOption = new Map([['sleeve', records]]);
  return { ...scene, evidence: { ...scene.evidence, recordsByOption } };
}

function optionIn(scene: Scene, code: string): NamedOption {
  const found = scene.options.find((one) => one.code === code);
  if (found === undefined) throw new Error(`no ${code}`);
  return found;
}

const gallstones = makeRecord({ outcome: 'gallstones', value: { events: 4, n: 100 } });

describe('the harms that can follow from an option', () => {
  it('are in the first month of an operation those that any operation can lead to', async () => {
    const scene = await sceneOf([]);
    const early = [
      'death',
      'leak',
      'bleeding',
      'clot',
      'reoperation',
      'readmission',
      'infection',
      'deep-infection',
    ];
    expect(possibleHarms(scene, optionIn(scene, 'sleeve'), 'early')).toEqual(early);
    expect(possibleHarms(scene, optionIn(scene, 'semaglutide'), 'early')).toEqual([]);
  });

  it('are later those that somebody had with this very option', async () => {
    const scene = await sceneOf([gallstones]);
    expect(possibleHarms(scene, optionIn(scene, 'sleeve'), 'later')).toEqual(['gallstones']);
    expect(possibleHarms(scene, optionIn(scene, 'bypass'), 'later')).toEqual([]);
  });

  it.each([
    ['a figure that nobody has read on a page', { ...gallstones, seen: 'memory' as const }],
    ['a study in which nobody had it', makeRecord({ outcome: 'gallstones', value: { events: 0, n: 100 } })],
    [
      'a difference between options',
      makeRecord({
        outcome: 'gallstones',
        kind: 'contrast',
        versus: 'bypass',
        value: { measure: 'odds-ratio', estimate: 2, adjusted: true },
      }),
    ],
  ])('are not shown by %s', async (_what, record) => {
    const scene = await sceneOf([record]);
    expect(possibleHarms(scene, optionIn(scene, 'sleeve'), 'later')).toEqual([]);
  });

  it('leave out what an earlier event rules out, and what is only new in others', async () => {
    const diabetes = makeRecord({ outcome: 'new-diabetes', value: { percent: 3 } });
    const records = [gallstones, diabetes];
    const listed = async (health: Parameters<typeof makeCase>[0]): Promise<readonly string[]> => {
      const scene = await sceneOf(records, health);
      return possibleHarms(scene, optionIn(scene, 'sleeve'), 'later');
    };
    expect(await listed({})).toEqual(['gallstones', 'new-diabetes']);
    expect(await listed({ health: { history: ['gallbladder-removed'] } })).toEqual(['new-diabetes']);
    expect(await listed({ health: { conditions: ['type-2-diabetes'] } })).toEqual(['gallstones']);
  });

  it('are none where nothing is done', async () => {
    const scene = await sceneOf([makeRecord({ option: 'no-operation', outcome: 'gallstones' })]);
    const nothing = optionIn(scene, 'no-operation');
    const recordsByOption = new Map([[nothing.column.figuresFrom, [gallstones]]]);
    const known = { ...scene, evidence: { ...scene.evidence, recordsByOption } };
    expect(possibleHarms(known, nothing, 'later')).toEqual([]);
    expect(possibleHarms(known, nothing, 'early')).toEqual([]);
  });
});
