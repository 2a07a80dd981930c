import { describe, expect, it } from 'vitest';

import type { WeightLine } from '../../../src/model/document.ts';
import { placeLineLabels, withHeadroom } from '../../../src/pictures/line-labels.ts';
import { largeLine, placeWeight, smallLine, wideLine } from '../../../src/pictures/weight-line.ts';
import type { LineSizes } from '../../../src/pictures/weight-line.ts';

const line: WeightLine = {
  type: 'weight-line',
  origin: 'test:1',
  name: 'Sleeve',
  alt: '',
  today: { at: 118, label: 'You today' },
  points: [
    { months: 12, at: 91, label: '201' },
    { months: 60, at: 99, label: '219' },
  ],
  min: 80,
  max: 118,
  timeTicks: [{ at: 120, label: '10' }],
  valueTicks: [],
};

function todayOf(sizes: LineSizes, height: number) {
  const roomy = withHeadroom(sizes, height);
  const { today } = placeLineLabels({ line, sizes: roomy, sizeOf: () => ({ width: 60, height }) });
  return {
    foot: today.top + today.height,
    head: today.top,
    lineTop: placeWeight(line, roomy, line.today.at),
  };
}

describe('the label of today', () => {
  it.each([15, 18.5, 19.5, 24])(
    'stands over its line and within the plot where a line of it is %d high',
    (height) => {
      for (const sizes of [smallLine, wideLine]) {
        const { head, foot, lineTop } = todayOf(sizes, height);
        expect(foot).toBeLessThan(lineTop);
        expect(head).toBeGreaterThanOrEqual(0);
      }
    },
  );

  it('takes no more room than it needs: none where it stands beside the plot or fits already', () => {
    expect(withHeadroom(smallLine, 15)).toEqual(smallLine);
    expect(withHeadroom(largeLine, 30)).toBe(largeLine);
  });
});
