import type { NamedView, OperationPicture } from '../drawings/read-drawings.ts';
import { operationInPlace } from './say-choice.ts';
import type { NamedOption, Scene } from './scene.ts';
import { count, group, list, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import type { Words } from './words.ts';

export const drawingShape = group({
  views: list(
    group({
      heading: text,
      alt: text,
      height: count,
      food: text,
      layers: list(group({ look: text, outlines: list(group({ path: text, width: optional(count) })) })),
      labels: list(group({ words: text, side: text, x: count, y: count })),
    }),
  ),
  /** How the drawing is read, in sentences. */
  caption: text,
});
export type DrawingView = Viewed<typeof drawingShape>;

/** The body before and after an operation, with the words beside it. */
export function viewDrawing(words: Words, { before, after }: OperationPicture): DrawingView {
  const thin = after.layers.some(({ look }) => look === 'bypassed');
  return {
    views: [viewBody(words, before, 'before'), viewBody(words, after, 'after')],
    caption: ['caption', ...(thin ? ['caption_bypassed'] : [])]
      .map((key) => words.plain(`operation.done.${key}`))
      .join(' '),
  };
}

function viewBody(words: Words, view: NamedView, time: 'before' | 'after'): DrawingView['views'][number] {
  return {
    heading: words.plain(`operation.view.${time}`),
    alt: words.plain(`operation.alt.${view.name.replaceAll('-', '_')}`),
    height: view.height,
    food: view.food ?? '',
    layers: view.layers.map(({ look, outlines }) => ({
      look,
      outlines: outlines.map(({ path, width = null }) => ({ path, width })),
    })),
    labels: view.labels.map(({ words: key, side, x, y }) => ({
      words: words.plain(`operation.label.${key}`),
      side,
      x,
      y,
    })),
  };
}

/** Nothing stays of these once they are taken out. */
const leaveNothing: readonly string[] = ['band', 'balloon'];

/** The drawing for a body as it is before: with the earlier operation that is in place, if there is one. */
export function pictureFor(scene: Scene, option: NamedOption): OperationPicture | undefined {
  const earlier = scene.case.health.earlier_operations;
  const whole = earlier.every(
    ({ operation, status }) => status === 'removed' && leaveNothing.includes(operation),
  );
  const before = operationInPlace(scene) ?? (whole ? 'none' : undefined);
  return scene.drawings.get(option.code)?.find((picture) => picture.earlier === before);
}
