import { describe, expect, it } from 'vitest';
import { explainHeight, explainWeight } from '../../../src/input/explain-quantity.ts';

const anyWeight = 'Write a number, a space and a unit, for example 114.5 kg or 252 lb.';
const anyHeight = 'Write for example 163 cm, 1.63 m or 5 ft 4 in.';

describe('a weight that is refused', () => {
  it.each([
    ['114.5kg', 'CASE_BAD_UNIT', 'Write 114.5 kg.'],
    ['114.5 KG', 'CASE_BAD_UNIT', 'Write 114.5 kg.'],
    ['114.5 kilos', 'CASE_BAD_UNIT', 'Write 114.5 kg.'],
    ['252 lbs', 'CASE_BAD_UNIT', 'Write 252 lb.'],
    ['252 pounds', 'CASE_BAD_UNIT', 'Write 252 lb.'],
    ['252lb.', 'CASE_BAD_UNIT', 'Write 252 lb.'],
    ['18 st 4 lb', 'CASE_BAD_UNIT', 'Write 256 lb.'],
    ['18 stone', 'CASE_BAD_UNIT', 'Write 252 lb.'],
    ['18st', 'CASE_BAD_UNIT', 'Write 252 lb.'],
    ['114500 g', 'CASE_BAD_UNIT', anyWeight],
    ['heavy', 'CASE_BAD_UNIT', anyWeight],
    ['', 'CASE_BAD_UNIT', anyWeight],
    ['1000 kilos', 'CASE_BAD_UNIT', anyWeight],
    ['114,5 kg', 'CASE_DECIMAL_COMMA', 'Write 114.5 kg.'],
    ['114,5kg', 'CASE_DECIMAL_COMMA', 'Write 114.5 kg.'],
    ['114,5', 'CASE_DECIMAL_COMMA', `Write a decimal point. ${anyWeight}`],
    ['1,145 kg', 'CASE_DECIMAL_COMMA', `Write a decimal point. ${anyWeight}`],
    ['29.9 kg', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
    ['400.1 kg', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
    ['66 lb', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
    ['882 lb', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
  ])('%s: %s, %s', (written, code, hint) => {
    expect(explainWeight(written)).toMatchObject({ code, hint });
  });

  it('offers both units for a bare number, as it was written', () => {
    expect(explainWeight(114.5, '114.50').hint).toBe('Write 114.50 kg or 114.50 lb, whichever it is.');
    expect(explainWeight(252).hint).toBe('Write 252 kg or 252 lb, whichever it is.');
    expect(explainWeight([114.5])).toMatchObject({ code: 'CASE_BAD_UNIT', hint: anyWeight });
  });
});

describe('a height that is refused', () => {
  it.each([
    ['163cm', 'CASE_BAD_UNIT', 'Write 163 cm.'],
    ['163 centimeters', 'CASE_BAD_UNIT', 'Write 163 cm.'],
    ['1.63m', 'CASE_BAD_UNIT', 'Write 1.63 m.'],
    ['1.63 metres', 'CASE_BAD_UNIT', 'Write 1.63 m.'],
    [`5'4"`, 'CASE_BAD_UNIT', 'Write 5 ft 4 in.'],
    ['5’4”', 'CASE_BAD_UNIT', 'Write 5 ft 4 in.'],
    [`5'4''`, 'CASE_BAD_UNIT', 'Write 5 ft 4 in.'],
    [`5'`, 'CASE_BAD_UNIT', 'Write 5 ft.'],
    ['5ft4', 'CASE_BAD_UNIT', 'Write 5 ft 4 in.'],
    ['5 feet 4 inches', 'CASE_BAD_UNIT', 'Write 5 ft 4 in.'],
    ['5 ft 4', 'CASE_BAD_UNIT', 'Write 5 ft 4 in.'],
    ['64 in', 'CASE_BAD_UNIT', 'Write 5 ft 4 in.'],
    ['64 inches', 'CASE_BAD_UNIT', 'Write 5 ft 4 in.'],
    ['5 ft 12 in', 'CASE_BAD_UNIT', anyHeight],
    ['1630 mm', 'CASE_BAD_UNIT', anyHeight],
    ['tall', 'CASE_BAD_UNIT', anyHeight],
    ['1,63 m', 'CASE_DECIMAL_COMMA', 'Write 1.63 m.'],
    ['162,5 cm', 'CASE_DECIMAL_COMMA', 'Write 162.5 cm.'],
    ['1,63', 'CASE_DECIMAL_COMMA', `Write a decimal point. ${anyHeight}`],
    ['64 cm', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
    ['231 cm', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
    ['3 ft 11 in', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
    ['9 ft', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
  ])('%s: %s, %s', (written, code, hint) => {
    expect(explainHeight(written)).toMatchObject({ code, hint });
  });

  it('offers the unit that a bare number can have', () => {
    expect(explainHeight(163).hint).toBe('Write 163 cm.');
    expect(explainHeight(1.63).hint).toBe('Write 1.63 m.');
    expect(explainHeight(1.6, '1.60').hint).toBe('Write 1.60 m.');
    expect(explainHeight(64).hint).toBe(anyHeight);
    expect(explainHeight(true).hint).toBe(anyHeight);
  });
});
