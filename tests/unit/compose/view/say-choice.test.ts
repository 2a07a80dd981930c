import { describe, expect, it } from 'vitest';

import { choiceInWords } from '../../../../src/compose/view/say-choice.ts';
import { viewOpinion } from '../../../../src/compose/view/view-opinion.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import { withoutRecords } from '../../../helpers/caution-pairs.ts';
import { allLanguages } from '../../../helpers/all-languages.ts';
import { compareWell, makeCase, makeClinic, readShippedEvidence } from '../../../helpers/compare-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain } from '../../../helpers/read-tables.ts';

const evidence = withoutRecords(readShippedEvidence());
const options = ['sleeve', 'bypass', 'duodenal-switch', 'single-anastomosis-switch', 'no-operation'];

async function sceneAfter(tag: string, earlier: object, plan = {}): Promise<Scene> {
  const changes = {
    plan: { surgeon: 'one', ...plan },
    health: { earlier_operations: [earlier] },
    decision: {
      asked: 'second-operation',
      options,
      leaning: { option: 'bypass', reasons: [{ code: 'reflux-better' }] },
    },
  };
  const comparison = compareWell(evidence, changes, makeClinic());
  return sceneFor(tag, { case: makeCase(changes), evidence, comparison });
}

const sleeve = { operation: 'sleeve', status: 'in-place' };

function said(scene: Scene): readonly string[] {
  return scene.options.map((option) => plain(choiceInWords(scene, option).markup));
}

describe('what is done', () => {
  it('does not make a sleeve of somebody who has one', async () => {
    const [again, bypass, ...switches] = said(await sceneAfter('en', sleeve));
    expect(again).toMatch(/^A surgeon takes out one more strip of the slim stomach/);
    expect(bypass).toMatch(/^A surgeon makes a small pouch/);
    expect(switches.slice(0, 2)).toEqual([
      expect.stringMatching(/^Your slim stomach from the sleeve stays\. .* two new joins\.$/),
      expect.stringMatching(/^Your slim stomach from the sleeve stays\. .* one new join\.$/),
    ]);
  });

  it('makes one after a band', async () => {
    const words = said(await sceneAfter('en', { operation: 'band', status: 'in-place' }));
    expect(words.filter((text) => text.startsWith('A surgeon makes a sleeve.'))).toHaveLength(2);
  });

  it.each(allLanguages)(
    'differs after a sleeve for each operation that has one in it, in %s',
    async (tag) => {
      const after = said(await sceneAfter(tag, sleeve));
      const whole = said(await sceneAfter(tag, { operation: 'band', status: 'removed' }));
      const same = options.filter((_, index) => after[index] === whole[index]);
      expect(same).toEqual(['bypass', 'no-operation']);
    },
  );
});

describe('an operation on somebody who has a band', () => {
  const band = { operation: 'band', status: 'in-place' };

  async function endings(tag: string, plan: object, earlier: object = band): Promise<readonly string[]> {
    const scene = await sceneAfter(tag, earlier, plan);
    return said(scene).map((text) => text.split('. ').slice(-2).join('. '));
  }

  it('says when the band comes out, and that an operation of its own has its own risks', async () => {
    const [, bypass, , , none] = await endings('en', { stages: 'two' });
    expect(bypass).toBe('Your band comes out first, in an operation of its own. That one has its own risks.');
    expect(none).not.toContain('band');
    expect((await endings('en', { stages: 'one' }))[1]).toContain('comes out in the same operation.');
    expect((await endings('en', {}))[1]).toContain(
      'Your band comes out too, in the same operation or in one before.',
    );
  });

  it('says nothing of a band that is out', async () => {
    const texts = await endings('en', {}, { operation: 'band', status: 'removed' });
    expect(texts.join(' ')).not.toContain('band');
  });

  it.each(allLanguages)('has its words for each way in %s', async (tag) => {
    const ways = await Promise.all(
      [{}, { stages: 'one' }, { stages: 'two' }].map((plan) => sceneAfter(tag, band, plan)),
    );
    expect(new Set(ways.map((scene) => said(scene)[1])).size).toBe(3);
  });
});

describe('what speaks against an operation after a sleeve', () => {
  it('says with the undoing that what the sleeve took out stays gone', async () => {
    const against = async (earlier: object): Promise<readonly string[]> =>
      (viewOpinion(await sceneAfter('en', earlier)).leaning?.against ?? []).map(({ markup }) =>
        plain(markup),
      );
    expect(await against(sleeve)).toContain(
      'It can only be undone in part. The part of your stomach that an earlier operation took out stays gone.',
    );
    expect(await against({ operation: 'band', status: 'in-place' })).toContain(
      'It can only be undone in part.',
    );
  });
});
