import { describe, expect, it } from 'vitest';

import type { WeightLine } from '../../../src/model/document.ts';
import { placeLineLabels, withHeadroom } from '../../../src/pictures/line-labels.ts';
import type { LineLabels } from '../../../src/pictures/line-labels.ts';
import {
  largeLine,
  measuredSpots,
  placeWeight,
  smallLine,
  wideLine,
} from '../../../src/pictures/weight-line.ts';
import type { LineSizes } from '../../../src/pictures/weight-line.ts';
import { sizeOfLabel } from '../../../src/web/label.tsx';
import { allLanguages } from '../../helpers/all-languages.ts';
import { shippedLocale } from '../../helpers/locale-words.ts';
import { pointSource } from '../../helpers/sample-documents.ts';

const line: WeightLine = {
  type: 'weight-line',
  origin: 'test:1',
  name: 'Sleeve',
  alt: '',
  today: { at: 118, label: 'You today' },
  points: [
    { months: 12, at: 91, label: '201', ...pointSource },
    { months: 60, at: 99, label: '219', ...pointSource },
  ],
  min: 80,
  max: 118,
  timeTicks: [{ at: 120, label: '10' }],
  valueTicks: [],
};

/** What is not to be covered: the line of today, the measured line and the dashes after it. */
function strokesOf(sizes: LineSizes): readonly (readonly [number, number])[] {
  const spots = measuredSpots(line, sizes);
  const end = sizes.plotStart + sizes.plotWidth;
  const top = placeWeight(line, sizes, line.today.at);
  const corners = [...spots, [end, spots.at(-1)?.[1] ?? 0] as const];
  const along = corners.slice(1).flatMap(([x2, y2], index) => {
    const [x1, y1] = corners[index] ?? [x2, y2];
    return Array.from({ length: 101 }, (_, step) => {
      const share = step / 100;
      return [x1 + (x2 - x1) * share, y1 + (y2 - y1) * share] as const;
    });
  });
  return [...along, ...Array.from({ length: 101 }, (_, x) => [(end * x) / 100, top] as const)];
}

function covers(box: LineLabels['today'], [x, y]: readonly [number, number]): boolean {
  return x > box.start && x < box.start + box.width && y > box.top && y < box.top + box.height;
}

function touch(a: LineLabels['today'], b: LineLabels['today']): boolean {
  const apart = a.start + a.width <= b.start || b.start + b.width <= a.start;
  return !apart && a.top < b.top + b.height && b.top < a.top + a.height;
}

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

describe('the labels of today and of the time after, as the web page sets them', () => {
  it.each(allLanguages)('cover no line and not each other in %s', async (language) => {
    const { translator } = await shippedLocale(language);
    const time = translator.text('codes.time.years', { count: 5 }).replace(' ', '\u00a0');
    const said: WeightLine = {
      ...line,
      today: { ...line.today, label: translator.text('common.you_today') },
      unknownAfter: translator.text('common.weight.not_followed_after', { time }),
    };
    for (const sizes of [smallLine, wideLine]) {
      const { today, after, values } = placeLineLabels({
        line: said,
        sizes,
        sizeOf: (label, text, measure) => sizeOfLabel(text, measure, label !== 'after'),
      });
      const strokes = strokesOf(sizes);
      expect(strokes.filter((spot) => covers(today, spot))).toEqual([]);
      expect(strokes.filter((spot) => covers(after, spot))).toEqual([]);
      expect([touch(today, after), ...values.map((value) => touch(value, after))]).not.toContain(true);
      const middle = sizes.plotStart + sizes.plotWidth / 2;
      expect(after.start).toBeGreaterThan(middle - 10);
    }
  });
});
