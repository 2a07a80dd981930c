// Sources: Lexique 3.82 (New, Pallier, Ferrand, Matos; CC BY-SA 4.0), syllables of French words as they are spoken; pyphen
// 0.18.1 with hyph_pt_BR of LibreOffice, where Portuguese words may part. Words of ours, written by syllables.lexique-pyphen.py.
import { describe, expect, it } from 'vitest';

import { countFrenchSyllables } from '../../src/readability/french-syllables.ts';
import { countPortugueseSyllables } from '../../src/readability/portuguese-syllables.ts';
import reference from './syllables.lexique-pyphen.json' with { type: 'json' };

describe('syllables of French words', () => {
  const words = Object.entries(reference.fr);
  const wrong = words.filter(([word, spoken]) => countFrenchSyllables(word) !== spoken);

  it('are those that Lexique has, but for few words', () => {
    expect(words.length).toBeGreaterThan(500);
    expect(wrong.length / words.length).toBeLessThan(0.07);
  });

  it('are one too many in verbs that end in -ent, and wrong in three other words', () => {
    const others = wrong.filter(([word]) => !word.endsWith('ent') || word.endsWith('ement'));
    expect(others).toEqual([
      ['médecin', 2],
      ['paiement', 2],
      ['probable', 3],
    ]);
    const verbs = wrong.filter(([word]) => word.endsWith('ent'));
    expect(verbs.map(([word, spoken]) => countFrenchSyllables(word) - spoken)).toEqual(verbs.map(() => 1));
  });
});

describe('syllables of Portuguese words', () => {
  const words = Object.entries(reference.pt);

  it('are the parts that pyphen makes, but where a printer keeps two vowels together or parts a -eo', () => {
    expect(words.length).toBeGreaterThan(500);
    const other = words
      .map(([word, parted]) => [word, countPortugueseSyllables(word), parted] as const)
      .filter(([, count, parted]) => count !== parted.split('-').length);
    expect(other).toEqual([
      ['diária', 3, 'diá-ria'],
      ['insuficiência', 6, 'in-su-fi-ciên-cia'],
      ['pulmões', 2, 'pulmões'],
      ['reinternação', 5, 'rein-ter-na-ção'],
      ['sair', 2, 'sair'],
      ['saúde', 3, 'saú-de'],
      ['vídeo', 2, 'ví-de-o'],
    ]);
  });
});
