import { describe, expect, it } from 'vitest';
import { leansOnNext, staysWithNext } from '../../../src/model/tie-words.ts';

describe('staysWithNext', () => {
  it.each([
    ['24', 'months'],
    ['1,000', 'people'],
    ['6', 'из'],
    ['1', 'человек'],
    ['1,000', 'में'],
    ['24', '개월'],
    ['36', 'to\u00a0127'],
    ['to\u00a0127', 'people'],
    ['(24', 'months)'],
    ['≤\u00a030', 'days'],
    ['555', '0199'],
    ['(555)', '010'],
    ['+1', '(555)'],
    ['Dr.', 'Okoye'],
    ['Dra.', 'Quenby'],
    ['Dr', 'Okoye'],
    ['vitamina', 'D,'],
    ['витамин', 'D'],
    ['विकल्प', '–'],
    ['(पक्का', 'नहीं)।'],
    ['एक', 'और'],
  ])('keeps %s with %s', (word, next) => {
    expect(staysWithNext(word, next)).toBe(true);
  });

  it.each([
    ['2021', 'and'],
    ['24,', 'then'],
    ['24.', 'Then'],
    ['B12', 'and'],
    ['HbA1c', 'of'],
    ['(12)', 'people'],
    ['24', '(12'],
    ['day', 'after'],
    ['Dr.', '(surgeon)'],
    ['Sr', 'words'],
    ['vitamin.', 'A'],
    ['do', 'I'],
    ['vitamin', 'Do'],
    ['एक', 'औरत'],
    ['नहीं', 'है।'],
  ])('lets a line end between %s and %s', (word, next) => {
    expect(staysWithNext(word, next)).toBe(false);
  });
});

describe('leansOnNext', () => {
  it.each([
    ['than', '1'],
    ['Study', '9'],
    ['(अध्ययन', '9)'],
    ['sur', '1\u00a0000'],
    ['dưới', '1'],
    ['Исследование', '9.'],
    ['of', '1,000'],
    ['to', '≥\u00a030'],
    ['January', '13,'],
    ['в', 'больнице'],
    ['(с', 'диабетом)'],
  ])('keeps %s rather with %s', (word, next) => {
    expect(leansOnNext(word, next)).toBe(true);
  });

  it.each([
    ['than', 'one'],
    ['than,', '1'],
    ['months.', '9'],
    ['operations', '24'],
    ['study', '(9)'],
    ['24', '9'],
    ['a', 'word'],
    ['и,', 'слово'],
  ])('lets a line end between %s and %s', (word, next) => {
    expect(leansOnNext(word, next)).toBe(false);
  });
});
