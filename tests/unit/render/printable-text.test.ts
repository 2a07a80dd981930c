import { describe, expect, it } from 'vitest';
import { printable } from '../../../src/render/printable-text.ts';

describe('printable', () => {
  it('leaves ordinary text and no-break spaces as they are', () => {
    expect(printable('232\u00a0lb, más o menos')).toBe('232\u00a0lb, más o menos');
  });

  it('composes letters and their accents into the one character that faces have', () => {
    expect(printable('ma\u0301s')).toBe('más');
  });

  it('resolves what only steers layout', () => {
    expect(printable('a\r\n b\tc\u2028d')).toBe('a b c d');
    expect(printable('12\u202f345')).toBe('12\u00a0345');
    expect(printable('one\u2011two\u2010three')).toBe('one-two-three');
    expect(printable('\ufeffhos\u00adpi\u2060tal')).toBe('hospital');
  });
});
