import { describe, expect, it } from 'vitest';

import {
  emergencyFirst,
  emergencyOrigins,
  namesSign,
} from '../../../../src/compose/view/say-emergency-first.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import type { AftercareFact } from '../../../../src/model/aftercare.ts';
import { readShippedFacts, readShippedSources } from '../../../helpers/aftercare-inputs.ts';
import { allLanguages } from '../../../helpers/all-languages.ts';
import { withoutRecords } from '../../../helpers/caution-pairs.ts';
import { compareWell, makeCase, makeClinic, readShippedEvidence } from '../../../helpers/compare-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain } from '../../../helpers/read-tables.ts';

const shipped = {
  ...withoutRecords(readShippedEvidence()),
  aftercare: readShippedFacts(),
  aftercareSources: readShippedSources(),
};

async function sceneOf(tag: string, keep: (fact: AftercareFact) => boolean = () => true): Promise<Scene> {
  const evidence = { ...shipped, aftercare: shipped.aftercare.filter(keep) };
  const clinic = makeClinic();
  return sceneFor(tag, {
    case: makeCase({}),
    clinic,
    evidence,
    comparison: compareWell(evidence, {}, clinic),
  });
}

describe('for what the emergency number comes first', () => {
  it('is what was read of it, and names its facts', async () => {
    const said = emergencyFirst(await sceneOf('en'), ['sleeve'])?.markup;
    expect(plain(said)).toBe(
      'Call 911 first if you pass out, bleed a lot, are short of breath, or have chest pain. Do not wait.',
    );
    const facts = shipped.aftercare.filter(({ topic }) => topic === 'emergency-first');
    expect(/<stands on="([^"]*)">/.exec(said ?? '')?.[1]?.split(' ')).toEqual(
      facts.map(({ id }) => `aftercare:${id}`),
    );
    expect(facts.every(({ seen }) => seen === 'page')).toBe(true);
  });

  it('is said with its sources, each once and by itself, so that a page lists them', async () => {
    const origins = emergencyOrigins(await sceneOf('en'), ['sleeve']);
    expect(plain(origins?.lead.markup)).toBe('On when to call 911 first:');
    const said = (origins?.sources ?? []).map(({ markup }) => plain(markup));
    expect(said[0]).toMatch(/^American College of Emergency Physicians/);
    for (const source of [
      'American College of Emergency Physicians',
      'professional.heart.org',
      'sharecare.com',
      'healthlibrary.bvhealthsystem.org',
    ])
      expect(said.filter((one) => one.includes(source))).toHaveLength(1);
  });

  it('leaves out what no source says, and then takes no sign off the list for it', async () => {
    const scene = await sceneOf('en', ({ subject }) => subject !== 'breathless');
    expect(plain(emergencyFirst(scene, ['sleeve'])?.markup)).toContain(
      'pass out, bleed a lot, or have chest',
    );
    expect(namesSign(scene, 'chest-pain-breathless', ['sleeve'])).toBe(false);
    expect(namesSign(scene, 'fainting', ['sleeve'])).toBe(true);
    expect(namesSign(scene, 'fever', ['sleeve'])).toBe(false);
    const none = await sceneOf('en', ({ topic }) => topic !== 'emergency-first');
    expect([emergencyFirst(none, ['sleeve']), emergencyOrigins(none, ['sleeve'])]).toEqual([null, null]);
  });

  it('holds for several options only where each of them is meant', async () => {
    const scene = await sceneOf('en');
    expect(emergencyFirst(scene, ['usual-care', 'semaglutide'])).not.toBeNull();
    expect(emergencyFirst(scene, ['usual-care', 'any-surgery'])).toBeNull();
  });

  it.each(allLanguages)('has its words in %s', async (tag) => {
    const scene = await sceneOf(tag);
    expect(plain(emergencyFirst(scene, ['sleeve'])?.markup)).toContain('911');
    expect(plain(emergencyOrigins(scene, ['sleeve'])?.lead.markup)).toContain('911');
  });
});
