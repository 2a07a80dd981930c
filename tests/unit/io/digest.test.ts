import { describe, expect, it } from 'vitest';

import { canonicalJson, sha256 } from '../../../src/io/digest.ts';

describe('the digest', () => {
  it('is of the UTF-8 bytes of a text', () => {
    expect(sha256('größer')).toBe(sha256(new TextEncoder().encode('größer')));
    expect(sha256('größer')).not.toBe(sha256('grosser'));
  });
});

describe('the one spelling of a value', () => {
  it('does not depend on the order in which keys were written', () => {
    expect(canonicalJson({ b: [1, { d: 2, c: 3 }], a: null })).toBe('{"a":null,"b":[1,{"c":3,"d":2}]}');
    expect(canonicalJson({ a: null, b: [1, { c: 3, d: 2 }] })).toBe('{"a":null,"b":[1,{"c":3,"d":2}]}');
  });

  it('leaves out keys without a value', () => {
    expect(canonicalJson({ a: undefined, b: 1 })).toBe('{"b":1}');
  });

  it.each([
    ['not a number', NaN],
    ['infinity', [1, Infinity]],
    ['a function', { a: () => 1 }],
    ['a big integer', 1n],
    ['nothing in a list', [undefined]],
    ['half a character', '\ud800'],
    ['half a character as a key', { '\udc00': 1 }],
  ])('refuses %s, which JSON cannot hold', (_what, value) => {
    expect(() => canonicalJson(value)).toThrow(TypeError);
  });
});
