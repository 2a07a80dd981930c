import { describe, expect, it } from 'vitest';

import { standardEdition } from '../../../src/render/edition-standard.ts';
import { leadType } from '../../../src/render/lead-type.ts';

const { type } = standardEdition;

describe('the distance of lines', () => {
  it('is that of the scale in Latin and Cyrillic', () => {
    for (const language of ['en', 'es', 'ru', 'fr', 'ht', 'tl']) expect(leadType(type, language)).toBe(type);
  });

  it.each([
    ['ar', 1.62, 1.45],
    ['zh', 1.55, 1.35],
    ['hi', 1.55, 1.4],
    ['ko', 1.5, 1.35],
    ['vi', 1.45, 1.3],
  ])('is wider in %s, as its letters need: text %d, headings %d', (language, text, headings) => {
    const led = leadType(type, language);
    expect(led.body.lineHeight / led.body.size).toBeGreaterThanOrEqual(text - 0.02);
    expect(led.topic.lineHeight / led.topic.size).toBeGreaterThanOrEqual(headings - 0.02);
    expect(Object.values(led).map(({ size }) => size)).toEqual(Object.values(type).map(({ size }) => size));
  });
});
