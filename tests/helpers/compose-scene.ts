import { createScene } from '../../src/compose/view/scene.ts';
import type { Scene, SceneInput } from '../../src/compose/view/scene.ts';
import { makeCase, makeClinic } from './compare-inputs.ts';
import { evidenceFor, fiveOptions, makeComparison, realLocale } from './compose-inputs.ts';

/** What the parts of a view model are built from, for the woman of `makeCase` and five options. */
export async function sceneFor(tag: string, changes: Partial<SceneInput> = {}): Promise<Scene> {
  const comparison = changes.comparison ?? makeComparison(fiveOptions);
  return createScene({
    case: makeCase({ decision: { options: fiveOptions } }),
    clinic: makeClinic(),
    evidence: evidenceFor(comparison),
    comparison,
    aftercare: null,
    locale: await realLocale(tag),
    state: 'example',
    date: '2026-11-25',
    documentId: 'T-1-C',
    ...changes,
  });
}
