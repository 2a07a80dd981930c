import { drawnLooks, drawnPathPattern, drawnWidth } from '../../model/drawing.ts';
import type { Drawing, DrawnLabel, DrawnLayer, DrawnOutline, DrawnView } from '../../model/drawing.ts';
import type { MarkupElement } from './element.ts';
import {
  childrenNamed,
  choiceOf,
  numberOf,
  present,
  refuse,
  requiredNumber,
  requiredText,
  textOf,
} from './read-attributes.ts';

const mostViews = 2;
/** Two views with words at so many of their sides fill the width of a page. */
const mostSides = 3;

export function buildDrawing(element: MarkupElement): Drawing {
  const views = childrenNamed(element, 'view').map(buildView);
  if (views.length === 0 || views.length > mostViews) refuse(element, '<drawing> takes one or two <view>');
  const sides = views.flatMap(({ labels }) => [...new Set(labels.map(({ side }) => side))]);
  if (sides.length > mostSides) refuse(element, `<drawing> has words at more than ${mostSides} sides`);
  return { type: 'drawing', views, origin: element.origin };
}

function buildView(element: MarkupElement): DrawnView {
  const height = requiredNumber(element, 'height');
  if (height <= 0) refuse(element, 'height of <view> is not over 0');
  const food = textOf(element, 'food');
  return present({
    heading: requiredText(element, 'heading'),
    alt: requiredText(element, 'alt'),
    height,
    layers: childrenNamed(element, 'layer').map(buildLayer),
    food: food === undefined ? undefined : checkPath(element, food),
    labels: childrenNamed(element, 'pointer').map((label) => buildLabel(label, height)),
    origin: element.origin,
  });
}

function buildLayer(element: MarkupElement): DrawnLayer {
  return {
    look: choiceOf(element, 'look', drawnLooks),
    outlines: childrenNamed(element, 'outline').map(buildOutline),
  };
}

function buildOutline(element: MarkupElement): DrawnOutline {
  return present({
    path: checkPath(element, requiredText(element, 'path')),
    width: numberOf(element, 'width'),
  });
}

function checkPath(element: MarkupElement, path: string): string {
  if (!drawnPathPattern.test(path)) refuse(element, `<${element.name}> has a path that cannot be drawn`);
  return path;
}

function buildLabel(element: MarkupElement, height: number): DrawnLabel {
  const [x, y] = [requiredNumber(element, 'x'), requiredNumber(element, 'y')];
  if (x < 0 || x > drawnWidth || y < 0 || y > height) refuse(element, '<pointer> points outside its <view>');
  return {
    text: requiredText(element, 'words'),
    side: choiceOf(element, 'side', ['left', 'right'] as const),
    x,
    y,
  };
}
