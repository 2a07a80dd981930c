import { describe, expect, it } from 'vitest';

import { choiceInWords } from '../../../../src/compose/view/say-choice.ts';
import { viewOpinion } from '../../../../src/compose/view/view-opinion.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import { withoutRecords } from '../../../helpers/caution-pairs.ts';
import { allLanguages } from '../../../helpers/all-languages.ts';
import { compareWell, makeCase, makeClinic, readShippedEvidence } from '../../../helpers/compare-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const evidence = withoutRecords(readShippedEvidence());
const options = ['sleeve', 'bypass', 'duodenal-switch', 'single-anastomosis-switch', 'no-operation'];

async function sceneAfter(tag: string, earlier: object): Promise<Scene> {
  const changes = {
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
const plain = (markup: string): string => markup.replace(/<[^>]*>/g, '').replaceAll('\u00a0', ' ');

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
      const whole = said(await sceneAfter(tag, { operation: 'band', status: 'in-place' }));
      const same = options.filter((_, index) => after[index] === whole[index]);
      expect(same).toEqual(['bypass', 'no-operation']);
    },
  );
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
