import { describe, expect, it } from 'vitest';

import { compactText, foldText, numberPattern } from '../../../src/verify/normalize-text.ts';

describe('text before it is compared', () => {
  it('has one spelling for what looks alike', () => {
    expect(foldText('Tie\u0301n\u0303e')).toBe('Ti\u00e9\u00f1e');
    expect(foldText('e\ufb03cient \ufb01rst')).toBe('efficient first');
    expect(foldText('five\u00a0years\n and\u2009a\u202fhalf ')).toBe('five years and a half');
    expect(foldText('\u200esur\u00adgeon\ufeff')).toBe('surgeon');
  });

  it('keeps what differs', () => {
    expect(foldText('kg/m\u00b2')).not.toBe(foldText('kg/m2'));
    expect(foldText('24\u201341')).not.toBe(foldText('24-41'));
  });

  it('loses its spaces when places are compared', () => {
    expect(compactText('206 lb\n(93\u00a0kg)')).toBe('206lb(93kg)');
  });
});

describe('a number in a text', () => {
  it.each([
    ['6 out of 1,000', 'Only 6 out of\n1,000 did.', true],
    ['6 out of 1,000', 'Only 16 out of 1,000 did.', false],
    ['6 out of 1,000', 'Only 6 out of 1,0000 did.', false],
    ['1,000', 'It was 1,000.5 then.', false],
    ['1,000', 'It was 1,000. Then', true],
    ['911', 'Call 555-0142 or 911.', true],
    ['911', 'Call 555-0142911.', false],
    ['555-0142', 'Call 555-01422.', false],
    ['(555) 0142', 'Call (555) 0142 now', true],
  ])('%s in "%s": %s', (number, text, found) => {
    expect(numberPattern(number).test(text)).toBe(found);
  });
});
