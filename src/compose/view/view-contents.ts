import { documentsOf } from '../../model/case.ts';
import type { DocumentKind } from '../../model/codes.ts';
import type { Scene } from './scene.ts';
import { group, list, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, plainRow, rowShape } from './shared-shapes.ts';

export const contentsShape = group({
  question: text,
  /** The other documents, each with what it is for. */
  rows: list(rowShape),
});

/** Documents that are not for the patient, and this one. */
const leftOut: readonly DocumentKind[] = ['contents', 'clinician-sheet'];

/** The first page of a packet: what is in it. */
export function viewContents(scene: Scene): Viewed<typeof contentsShape> {
  const { words } = scene;
  const kinds = documentsOf(scene.case).filter((kind) => !leftOut.includes(kind));
  return {
    question: words.plain(`contents.question.${scene.case.packet ?? 'any'}`),
    rows: kinds.map((kind) =>
      plainRow({ name: words.plain(`${kind}.title`), tag: '' }, [body(words.say(`contents.about.${kind}`))]),
    ),
  };
}
