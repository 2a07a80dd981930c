import { describe, expect, it } from 'vitest';

import { findOpenPoints } from '../../../../src/compose/open-points.ts';
import { viewUntranslated } from '../../../../src/compose/view/view-open.ts';
import { allLanguages } from '../../../helpers/all-languages.ts';
import { makeClinic } from '../../../helpers/compare-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain } from '../../../helpers/read-tables.ts';

/** What the pages in a language say of words that are not in it, where the clinic wrote this of the nights in hospital. */
async function said(tag: string, stay: Readonly<Record<string, string>>): Promise<readonly string[]> {
  const scene = await sceneFor(tag, { clinic: makeClinic({ protocol: { stay: { sleeve: stay } } }) });
  return viewUntranslated(scene).map(({ markup }) => plain(markup));
}

describe('words that clinic or person wrote in another language', () => {
  it('are said to be theirs, with what to do', async () => {
    expect(await said('en', { es: '1 noche' })).toEqual([
      'Words in another language come from your clinic or from you. They are not translated yet. ' +
        'Do not guess what they mean. Ask for an interpreter: it is free.',
    ]);
  });

  it('are not spoken of where all are in the language of the page', async () => {
    expect(await said('en', { en: '1 night' })).toEqual([]);
    expect(await said('es', { en: '1 night', es: '1 noche' })).toEqual([]);
  });

  it('are not spoken of where only the sources print them', async () => {
    const prefer = [{ record: 'sleeve.leak.30d', reason: { es: 'Es el nuestro.' } }];
    const scene = await sceneFor('en', { clinic: makeClinic({ prefer }) });
    expect(findOpenPoints(scene)).toContainEqual(expect.objectContaining({ code: 'free_text', count: 1 }));
    expect(viewUntranslated(scene)).toEqual([]);
  });

  it.each(allLanguages)('are spoken of in %s', async (tag) => {
    const other = tag === 'en' ? 'es' : 'en';
    expect(await said(tag, { [other]: '1' })).toHaveLength(1);
    expect(await said(tag, { [tag]: '1' })).toEqual([]);
  });
});
