import { doseUnitsOf, parseDose } from '../../model/dose.ts';
import { supplementCodes } from '../../model/protocol-codes.ts';
import { listWords } from '../describe-value.ts';
import type { Finding, Path } from '../finding.ts';
import type { FieldReader } from '../read-fields.ts';
import { findRepeats } from './check-duplicates.ts';

/** Doses are in a unit of their supplement, and iron stands once: as iron or as one of its salts. */
export function checkSupplements(read: FieldReader, entries: readonly Path[]): readonly Finding[] {
  const named = entries.map((path) => ({
    value: JSON.stringify(['supplement', 'product', 'for'].map((key) => read.value([...path, key]))),
    path,
  }));
  return [
    ...findRepeats(named, 'this supplement stands twice for the same people'),
    ...entries.flatMap((path) => [...checkUnit(read, path), ...checkSaid(read, path)]),
    ...checkIrons(read, entries),
  ];
}

function checkUnit(read: FieldReader, path: Path): readonly Finding[] {
  const supplement = supplementCodes.find((code) => code === read.text([...path, 'supplement']));
  const dose = parseDose(read.text([...path, 'dose']) ?? '');
  if (supplement === undefined || dose === undefined) return [];
  const units = doseUnitsOf(supplement);
  if (units.includes(dose.unit)) return [];
  const message = `${supplement} is not dosed in ${dose.unit}`;
  const hint = `Check the product, and write one of: ${listWords(units)}.`;
  return [{ code: 'CASE_BAD_UNIT', path: [...path, 'dose'], message, hint }];
}

function checkSaid(read: FieldReader, path: Path): readonly Finding[] {
  const isSaid = (key: string): boolean => read.value([...path, key]) !== undefined;
  const code = 'CASE_CONFLICT';
  if (read.text([...path, 'supplement']) === 'other' && !isSaid('product')) {
    const message = 'a supplement without a code needs its name';
    return [{ code, path, message, hint: 'Add product: with the words to print.' }];
  }
  if (['dose', 'product', 'how'].some(isSaid)) return [];
  const hint = 'Add dose:, product: or how:.';
  return [{ code, path, message: 'nothing says what to take of this supplement', hint }];
}

function checkIrons(read: FieldReader, entries: readonly Path[]): readonly Finding[] {
  const irons = entries.filter((path) => read.text([...path, 'supplement'])?.startsWith('iron') === true);
  const [first] = irons;
  if (first === undefined) return [];
  const kind = read.text([...first, 'supplement']);
  return irons
    .filter((path) => read.text([...path, 'supplement']) !== kind)
    .map((path) => ({
      code: 'CASE_CONFLICT',
      path: [...path, 'supplement'],
      message: 'iron stands here as the element and as a salt, or as two salts: nobody may add these up',
      hint: 'Keep one of them.',
      related: [{ path: [...first, 'supplement'], message: 'the other iron' }],
    }));
}
