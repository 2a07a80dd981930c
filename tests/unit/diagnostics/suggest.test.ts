import { describe, expect, it } from 'vitest';
import { nearestWord } from '../../../src/diagnostics/suggest.ts';

const words = ['sleeve', 'bypass', 'band', 'band-removal', 'plication', 'weight_before'];

describe('the word that was meant', () => {
  it.each([
    ['sleve', 'sleeve'],
    ['sleevee', 'sleeve'],
    ['slevee', 'sleeve'],
    ['seleve', 'sleeve'],
    ['Sleeve', 'sleeve'],
    ['by-pass', 'bypass'],
    ['bnad', 'band'],
    ['band removal', 'band-removal'],
    ['weight-before', 'weight_before'],
    ['weightbefore', 'weight_before'],
    ['plicaton', 'plication'],
  ])('%s means %s', (written, meant) => {
    expect(nearestWord(written, words)).toBe(meant);
  });

  it.each(['slv', 'balloon', 'hand-made', 'x', '', 'bxnx', 'a'.repeat(5000)])(
    '%s means nothing here',
    (written) => {
      expect(nearestWord(written, words)).toBeUndefined();
    },
  );

  it('takes the nearest, and the first of equals', () => {
    expect(nearestWord('bandx', ['banda', 'band'])).toBe('banda');
    expect(nearestWord('sleeve', ['sleevs', 'sleeve'])).toBe('sleeve');
  });
});
