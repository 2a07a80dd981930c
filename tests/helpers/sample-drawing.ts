import type { Drawing, DrawnView } from '../../src/model/drawing.ts';

const origin = 'sample.hbs:1';

const before: DrawnView = {
  heading: 'Before',
  alt: 'A pipe leads into a round bag.',
  height: 120,
  layers: [
    {
      look: 'way',
      outlines: [{ path: 'M 72 0 L 72 40', width: 10 }, { path: 'M 50 36 C 50 80 94 80 94 36 Z' }],
    },
  ],
  food: 'M 72 4 L 72 50',
  labels: [
    { text: 'pipe', side: 'left', x: 68, y: 12 },
    { text: 'the bag', side: 'left', x: 60, y: 52 },
  ],
  origin,
};

/** One layer of every look. */
const after: DrawnView = {
  heading: 'After',
  alt: 'The bag is cut, folded, sewn and joined, and a ring is put in.',
  height: 150,
  layers: [
    { look: 'bypassed', outlines: [{ path: 'M 20 60 L 60 60', width: 11 }] },
    { look: 'removed', outlines: [{ path: 'M 90 20 C 120 20 120 60 90 60 Z' }] },
    { look: 'way', outlines: [{ path: 'M 72 0 L 72 120', width: 10 }] },
    { look: 'cut', outlines: [{ path: 'M 78 20 L 78 60' }] },
    { look: 'join', outlines: [{ path: 'M 66 54 L 66 66' }] },
    { look: 'fold', outlines: [{ path: 'M 30 80 L 30 110' }] },
    { look: 'stitches', outlines: [{ path: 'M 36 80 L 36 110' }] },
    { look: 'thread', outlines: [{ path: 'M 42 80 L 48 90 L 42 100' }] },
    {
      look: 'device',
      outlines: [{ path: 'M 64 30 L 80 30', width: 5 }, { path: 'M 100 90 L 112 90 L 106 100 Z' }],
    },
    { look: 'tubing', outlines: [{ path: 'M 80 30 C 100 40 104 60 106 90' }] },
  ],
  labels: [
    { text: 'a ring around the pipe', side: 'left', x: 64, y: 30 },
    { text: 'a new join', side: 'left', x: 66, y: 60 },
    { text: 'the part that is taken out', side: 'right', x: 110, y: 40 },
  ],
  origin,
};

/** A body that is nobody's, drawn by hand. */
export const sampleDrawing: Drawing = { type: 'drawing', views: [before, after], origin };
