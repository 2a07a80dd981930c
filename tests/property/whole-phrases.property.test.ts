import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestWhole, splitWholePhrases } from '../../src/web/whole-phrases.ts';

const word = fc.oneof(
  fc.string({ maxLength: 12 }),
  fc.constantFrom(
    '24',
    '1,000',
    'months',
    'Dr.',
    'Okoye',
    'vitamin',
    'D',
    'peut-être',
    'a-b',
    '2–4',
    '人',
    '',
  ),
);
const text = fc.array(word, { maxLength: 12 }).map((words) => words.join(' '));

describe('parts of any text', () => {
  it('are together the text, letter by letter, and whole only where short', () => {
    fc.assert(
      fc.property(text, (any) => {
        const parts = splitWholePhrases(any);
        expect(parts.map((part) => part.text).join('')).toBe(any);
        const long = parts.filter((part) => part.whole && Array.from(part.text).length > longestWhole);
        expect(long).toEqual([]);
      }),
    );
  });
});
