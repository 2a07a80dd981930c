// RFC 8785 (June 2020, JSON Canonicalization Scheme), sections 3.2.2 and 3.2.3 and appendix B; FIPS 180-4 examples of
// SHA-256 as published by NIST. Numbers and strings only; read 2026-11-25.
import { describe, expect, it } from 'vitest';

import { canonicalJson, sha256 } from '../../src/io/digest.ts';

describe('canonical JSON against RFC 8785', () => {
  it('spells the example of section 3.2.2', () => {
    const example: unknown = JSON.parse(
      String.raw`{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],` +
        String.raw`"string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/", "literals": [null, true, false]}`,
    );
    expect(canonicalJson(example)).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],` +
        String.raw`"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  it('sorts the keys of section 3.2.3 by UTF-16 units', () => {
    const example: unknown = JSON.parse(
      String.raw`{"\u20ac":1,"\r":2,"\ufb33":3,"1":4,"\ud83d\ude00":5,"\u0080":6,"\u00f6":7}`,
    );
    const values = [...canonicalJson(example).matchAll(/:(\d)/g)].map(([, digit]) => Number(digit));
    expect(values).toEqual([2, 4, 6, 7, 1, 5, 3]);
  });

  it.each([
    [-0, '0'],
    [5e-324, '5e-324'],
    [1.7976931348623157e308, '1.7976931348623157e+308'],
    [9007199254740992, '9007199254740992'],
    [295147905179352830000, '295147905179352830000'],
    [1e21, '1e+21'],
    [0.000001, '0.000001'],
  ])('spells the number %d as in appendix B', (value, spelling) => {
    expect(canonicalJson(value)).toBe(spelling);
  });
});

describe('SHA-256 against FIPS 180-4', () => {
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('digests an example', (text, digest) => {
    expect(sha256(text)).toBe(digest);
  });
});
