import { describe, expect, it } from 'vitest';

import { viewHealth } from '../../../../src/compose/view/view-health.ts';
import { viewOpinion } from '../../../../src/compose/view/view-opinion.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import { withoutRecords } from '../../../helpers/caution-pairs.ts';
import { allLanguages } from '../../../helpers/all-languages.ts';
import { compareWell, makeCase, makeClinic, readShippedEvidence } from '../../../helpers/compare-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain } from '../../../helpers/read-tables.ts';

const evidence = withoutRecords(readShippedEvidence());

interface Changes {
  readonly conditions: readonly string[];
  readonly leaning?: string;
  readonly cautions?: object;
}

async function sceneOf(
  tag: string,
  { conditions, leaning = 'sleeve', cautions = {} }: Changes,
): Promise<Scene> {
  const changes = {
    health: { conditions },
    decision: {
      options: ['sleeve', 'bypass', 'duodenal-switch', 'no-operation'],
      leaning: { option: leaning, reasons: [{ code: 'fits-what-matters' }] },
    },
  };
  const clinic = makeClinic({ cautions });
  const comparison = compareWell(evidence, changes, clinic);
  return sceneFor(tag, { case: makeCase(changes), clinic, evidence, comparison });
}

function lines(scene: Scene): readonly string[] {
  return viewHealth(scene).flatMap((callout) => callout.lines.map(({ words }) => plain(words.markup)));
}

const unwarned = ['heart-disease', 'high-cholesterol'];

describe('illnesses of which no caution speaks', () => {
  it('are named once, after the cautions, as not meaning that nothing changes', async () => {
    const said = lines(await sceneOf('en', { conditions: ['previous-clot', ...unwarned] }));
    expect(said.at(-1)).toBe(
      'There is no warning here about heart disease and high cholesterol. That does not mean that nothing changes. Ask your surgeon what it means for each choice.',
    );
    expect(said.filter((line) => line.includes('heart disease'))).toHaveLength(1);
  });

  it('are none where every illness has a caution, in its own or its severe form, even one that the clinic struck', async () => {
    const none = async (changes: Changes): Promise<void> => {
      expect(lines(await sceneOf('en', changes)).filter((line) => line.includes('no warning'))).toEqual([]);
    };
    await none({ conditions: ['reflux'] });
    await none({ conditions: ['reflux', 'severe-reflux'] });
    const ids = evidence.cautions.filter(({ when }) => [when.condition].flat().includes('reflux'));
    await none({ conditions: ['reflux'], cautions: Object.fromEntries(ids.map(({ id }) => [id, 'struck'])) });
  });

  it.each(allLanguages)('have their words in %s', async (tag) => {
    expect(lines(await sceneOf(tag, { conditions: unwarned }))).toHaveLength(1);
  });
});

describe('a caution whose fact holds for every operation of the case', () => {
  const against = async (leaning: string, conditions: readonly string[]): Promise<readonly string[]> =>
    (viewOpinion(await sceneOf('en', { conditions, leaning })).leaning?.against ?? []).map(({ markup }) =>
      plain(markup),
    );
  const clot = /clot/;

  it('is no reason against one of them, though another row speaks of the others', async () => {
    expect((await against('sleeve', ['previous-clot'])).filter((line) => clot.test(line))).toEqual([]);
  });

  it('is one where it is more than what holds for another of them', async () => {
    expect((await against('bypass', ['previous-clot'])).filter((line) => clot.test(line))).toHaveLength(1);
    expect((await against('sleeve', ['reflux']))[0]).toMatch(/reflux/);
  });
});
