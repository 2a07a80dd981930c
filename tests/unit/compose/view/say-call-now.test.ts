import { describe, expect, it } from 'vitest';

import { viewAsks } from '../../../../src/compose/view/view-asks.ts';
import { viewChoices } from '../../../../src/compose/view/view-choices.ts';
import { viewHealth } from '../../../../src/compose/view/view-health.ts';
import { viewOpinion } from '../../../../src/compose/view/view-opinion.ts';
import { viewSources } from '../../../../src/compose/view/view-sources.ts';
import { viewUndo } from '../../../../src/compose/view/view-undo.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import { withoutRecords } from '../../../helpers/caution-pairs.ts';
import { compareWell, makeCase, makeClinic, readShippedEvidence } from '../../../helpers/compare-inputs.ts';
import { readShippedFacts, readShippedSources } from '../../../helpers/aftercare-inputs.ts';
import { allLanguages } from '../../../helpers/all-languages.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain } from '../../../helpers/read-tables.ts';

const evidence = {
  ...withoutRecords(readShippedEvidence()),
  aftercare: readShippedFacts(),
  aftercareSources: readShippedSources(),
};
const options = ['band-removal', 'sleeve', 'no-operation'];

/** A person whose band slipped or worked its way in, in place or out. */
async function sceneOf(
  tag: string,
  trouble: string,
  { status = 'in-place', cautions = {} } = {},
): Promise<Scene> {
  const earlier = { operation: 'band', status, trouble };
  const changes = {
    health: { conditions: ['reflux'], earlier_operations: [earlier] },
    decision: {
      asked: 'second-operation',
      options,
      leaning: { option: 'no-operation', reasons: [{ code: 'fits-what-matters' }] },
    },
  };
  const clinic = makeClinic({ cautions });
  const comparison = compareWell(evidence, changes, clinic);
  return sceneFor(tag, { case: makeCase(changes), clinic, evidence, comparison });
}

function health(scene: Scene): readonly string[] {
  return viewHealth(scene).flatMap(({ lines }) => lines.map(({ words }) => plain(words.markup)));
}

function choice(scene: Scene, option: string): string {
  const at = scene.options.findIndex(({ code }) => code === option);
  return (viewChoices(scene).rows[at]?.lines ?? []).map(({ words }) => plain(words.markup)).join(' ');
}

describe('a band that slipped or wore in, left where it is', () => {
  it('is said to get worse, with the signs to call for and whom, before what can wait', async () => {
    const lines = health(await sceneOf('en', 'slippage'));
    const at = lines.findIndex((line) => line.startsWith('You have a band that has slipped.'));
    expect(lines[at]).toContain('For no new treatment: A slipped band that stays can get worse.');
    expect(lines[at + 1]).toMatch(
      /^Call now if you have one of these: Not even water or spit goes down\. .* Call 911 first if .* chest pain\. Do not wait\. For the other signs call 555 0100, other hours 555 0101\.$/,
    );
    // In a line of its own, as one paragraph of all this would be too long to take in.
    expect(lines[at + 2]).toBe('If you call another number and nobody answers, call 911.');
    expect(lines.findIndex((line) => line.includes('(reflux)'))).toBeGreaterThan(at);
  });

  it('is no harmless choice where the choices are listed, and no other choice says so', async () => {
    const scene = await sceneOf('en', 'slippage');
    expect(choice(scene, 'no-operation')).toContain('is not the same as being safe');
    expect(choice(scene, 'band-removal')).not.toContain('safe');
    expect(choice(await sceneOf('en', 'erosion'), 'no-operation')).toContain(
      'has worn into the stomach is not',
    );
  });

  it('speaks against no treatment where the surgeon leans to none', async () => {
    const against = async (trouble: string): Promise<readonly string[]> =>
      (viewOpinion(await sceneOf('en', trouble)).leaning?.against ?? []).map(({ markup }) => plain(markup));
    expect((await against('slippage'))[0]).toMatch(/^A slipped band that stays can get worse\./);
    expect((await against('erosion'))[0]).toMatch(/has to come out, say surgeons who treat this\./);
  });

  /** What an option says of undoing it, of its visits and of what it asks for life. */
  function later(scene: Scene, option: string): readonly string[] {
    const at = scene.options.findIndex(({ code }) => code === option);
    const asks = viewAsks(scene);
    const lines = [
      ...(viewUndo(scene)[at]?.lines ?? []),
      ...(asks.table.rows[at]?.cells.at(-1)?.lines ?? []),
      ...(asks.forLife[at]?.lines ?? []),
    ];
    return lines.map(({ words }) => plain(words.markup));
  }

  it('asks to come soon and to know the signs, and can get worse: no "nothing new", no "nothing to undo"', async () => {
    const scene = await sceneOf('en', 'slippage');
    expect(later(scene, 'no-operation')).toEqual([
      'Yes. You can choose another option later.',
      'But the trouble you have now can get worse while you wait.',
      'Ask how soon you must come.',
      'Know the signs to call for: read “About your own health”.',
    ]);
    expect(later(scene, 'band-removal').join(' ')).not.toMatch(/worse while you wait|how soon|signs/);
    const without = later(await sceneOf('en', 'slippage', { status: 'removed' }), 'no-operation');
    expect(without).toContain('There is nothing to undo.');
    expect(without).toContain('Nothing new.');
  });

  it('is not said of a band that is out, nor where the clinic struck it', async () => {
    const struck = await sceneOf('en', 'slippage', { cautions: { 'band-slip-left': 'struck' } });
    for (const scene of [await sceneOf('en', 'slippage', { status: 'removed' }), struck]) {
      expect(choice(scene, 'no-operation')).not.toContain('safe');
      expect(health(scene).filter((line) => line.startsWith('Call now'))).toEqual([]);
    }
  });

  it('says among the sources where it was read which number comes first, where that is said at all', async () => {
    const origins = (scene: Scene): readonly string[] =>
      viewSources(scene)
        .points.map(({ markup }) => plain(markup))
        .filter((line) => line.startsWith('On when to call 911 first: American College'));
    expect(origins(await sceneOf('en', 'slippage'))).toHaveLength(1);
    expect(origins(await sceneOf('en', 'slippage', { status: 'removed' }))).toEqual([]);
  });

  it.each(allLanguages)('has its words in %s', async (tag) => {
    for (const trouble of ['slippage', 'erosion']) {
      const lines = health(await sceneOf(tag, trouble));
      expect(lines.filter((line) => line.includes('555 0100'))).toHaveLength(1);
    }
  });
});
