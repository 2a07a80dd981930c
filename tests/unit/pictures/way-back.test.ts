import { describe, expect, it } from 'vitest';
import { drawWayBack, wayBackSizes } from '../../../src/pictures/way-back.ts';
import { boundsOf, subpaths } from '../../helpers/path-points.ts';

const answers = ['yes', 'partly', 'no', 'not-known'] as const;

describe('there and back', () => {
  it('shows a full way back for yes', () => {
    const drawn = drawWayBack('yes', 'ltr');
    // Two arrows, each a shaft and a head.
    expect(subpaths(drawn.solid)).toHaveLength(4);
    expect(drawn.dashed).toBe('');
    const back = boundsOf(subpaths(drawn.solid).slice(2).flat());
    expect(back.left).toBeLessThan(5);
  });

  it('shows a way back to the middle, then dashes, for partly', () => {
    const drawn = drawWayBack('partly', 'ltr');
    const back = boundsOf(subpaths(drawn.solid).slice(2).flat());
    expect(back.left).toBeGreaterThan(wayBackSizes.width / 2 - 1);
    expect(boundsOf(subpaths(drawn.dashed).flat()).right).toBeLessThan(back.left);
  });

  it('ends the way out at a bar for no', () => {
    const drawn = drawWayBack('no', 'ltr');
    expect(subpaths(drawn.solid)).toHaveLength(3);
    const [shaft = [], , bar = []] = subpaths(drawn.solid);
    expect(boundsOf(shaft).right).toBeLessThan(boundsOf(bar).left);
    expect(drawn.dashed + drawn.unknown).toBe('');
  });

  it('draws only the dashed leaf when nobody knows', () => {
    const drawn = drawWayBack('not-known', 'ltr');
    expect(drawn.solid + drawn.dashed).toBe('');
    expect(subpaths(drawn.unknown)).toHaveLength(1);
  });

  it.each(answers)(
    'stays within 52 by 26 with its stroke, and turns over in right to left: %s',
    (possible) => {
      const parts = (direction: 'ltr' | 'rtl') => {
        const { solid, dashed, unknown } = drawWayBack(possible, direction);
        return subpaths(solid + dashed + unknown).flat();
      };
      const bounds = boundsOf(parts('ltr'));
      expect(bounds.left).toBeGreaterThanOrEqual(0);
      expect(bounds.top).toBeGreaterThanOrEqual(0);
      expect(bounds.right).toBeLessThanOrEqual(52);
      expect(bounds.bottom).toBeLessThanOrEqual(26);
      const mirrored = parts('rtl');
      parts('ltr').forEach(([x], index) => {
        expect(mirrored[index]?.[0]).toBeCloseTo(52 - x, 1);
      });
    },
  );
});
