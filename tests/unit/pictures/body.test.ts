import { describe, expect, it } from 'vitest';
import { drawnLooks } from '../../../src/model/drawing.ts';
import type { DrawnLook, DrawnView } from '../../../src/model/drawing.ts';
import { drawBody } from '../../../src/pictures/body.ts';
import { palette } from '../../../src/render/theme.ts';

const view = (changes: Partial<DrawnView>): DrawnView => ({
  heading: 'After',
  alt: 'A tube.',
  height: 100,
  layers: [],
  labels: [],
  origin: 'sample.hbs:1',
  ...changes,
});
const tube = { path: 'M 10 0 L 10 40', width: 10 };
const bag = { path: 'M 0 40 L 20 40 L 20 60 Z' };
const layer = (look: DrawnLook, ...outlines: readonly { path: string; width?: number }[]): DrawnView =>
  view({ layers: [{ look, outlines }] });

describe('the drawing of a body', () => {
  it('paints all walls of a layer before all insides, so that a tube opens into a bag', () => {
    expect(drawBody(layer('way', tube, bag))).toEqual([
      { path: tube.path, stroke: palette.ink, strokeWidth: 13 },
      { path: bag.path, stroke: palette.ink, strokeWidth: 3 },
      { path: tube.path, stroke: palette.pale, strokeWidth: 10 },
      { path: bag.path, fill: palette.pale },
    ]);
  });

  it('has a thinner wall where no food passes, and keeps the width inside', () => {
    expect(drawBody(layer('bypassed', tube))).toEqual([
      { path: tube.path, stroke: palette.ink, strokeWidth: 11.6 },
      { path: tube.path, stroke: palette.white, strokeWidth: 10 },
    ]);
  });

  it('shows what is taken out as a dashed outline and nothing else', () => {
    expect(drawBody(layer('removed', bag))).toEqual([
      { path: bag.path, stroke: palette.ink, strokeWidth: 1, dash: '3 2.4' },
    ]);
  });

  it('marks a join by strokes across it, and a cut by one thick line', () => {
    const [join, ...others] = drawBody(layer('join', { path: 'M 0 50 L 10 50' }));
    expect(others).toEqual([]);
    expect(join?.path).toBe('M0.6 47L0.6 53M3.5 47L3.5 53M6.4 47L6.4 53M9.3 47L9.3 53');
    expect(drawBody(layer('cut', bag))).toEqual([{ path: bag.path, stroke: palette.ink, strokeWidth: 2.4 }]);
  });

  it('lays leaves along the way of food and ends it with an arrow head in its direction', () => {
    const [leaves, arrow] = drawBody(view({ food: 'M 50 0 L 50 60' }));
    expect(leaves).toMatchObject({ fill: palette.leaf });
    // At 5, 16, 27, 38 and 49; the next would lie under the arrow.
    expect(leaves?.path.match(/M/g)?.length).toBe(5);
    expect(arrow?.path).toMatch(/^M50 64.6L/);
  });

  it('tells the looks apart without any colour: every look has strokes of its own', () => {
    const seen = drawnLooks.map((look) =>
      JSON.stringify(drawBody(layer(look, tube)).map((stroke) => ({ ...stroke, fill: '', stroke: '' }))),
    );
    expect(new Set(seen).size).toBe(drawnLooks.length);
  });
});
