import { describe, expect, it } from 'vitest';

import { tieNumbers } from '../../../src/localize/tie-numbers.ts';

const settings = { units: { kilogram: '{{n}} kg', pound: '{{n}} lb' }, range_word: 'à' };
const tied = (text: string): string => tieNumbers(text, settings).replaceAll('\u00A0', '_');

describe('a text whose numbers and marks are tied', () => {
  it('never begins a line with a mark that French sets apart, whatever follows the mark', () => {
    expect(tied('<b>Sleeve :</b> une fuite')).toBe('<b>Sleeve_:</b> une fuite');
    expect(tied('On dit « non », ou « oui ».')).toBe('On dit «_non_», ou «_oui_».');
    expect(tied('Pourquoi ?')).toBe('Pourquoi_?');
  });

  it('leaves a mark that begins a word', () => {
    expect(tied('un mot :mot')).toBe('un mot :mot');
  });

  it('keeps groups of digits and a number with its unit together', () => {
    expect(tied('sur 1 000 personnes, 93 kg')).toBe('sur 1_000 personnes, 93_kg');
  });
});
