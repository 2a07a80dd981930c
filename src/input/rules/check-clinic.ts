import { isPartialDate } from '../../model/scalars.ts';
import type { Finding, Path } from '../finding.ts';
import type { Entry, FieldReader } from '../read-fields.ts';
import { findRepeats } from './check-duplicates.ts';
import type { Rule } from './rule.ts';

/** A surgeon stands once, and each count of results can be true. */
export const checkClinic: Rule = (read) => {
  const surgeons = read.items(['surgeons']);
  const ids = surgeons.flatMap((path): Entry[] => {
    const value = read.text([...path, 'id']);
    return value === undefined ? [] : [{ value, path: [...path, 'id'] }];
  });
  return [
    ...findRepeats(ids, 'two surgeons have this id'),
    ...surgeons.flatMap((path) => checkResults(read, read.items([...path, 'results']))),
  ];
};

function checkResults(read: FieldReader, results: readonly Path[]): Finding[] {
  const named = results.map((path) => ({ value: describeResult(read, path), path }));
  return [
    ...findRepeats(named, 'this result stands twice: same option, outcome and days'),
    ...results.flatMap((path) => [...checkCount(read, path), ...checkPeriod(read, path)]),
  ];
}

function describeResult(read: FieldReader, path: Path): string {
  return JSON.stringify(['option', 'outcome', 'days'].map((key) => read.value([...path, key])));
}

function checkCount(read: FieldReader, path: Path): Finding[] {
  const [events, n] = [read.value([...path, 'events']), read.value([...path, 'n'])];
  if (typeof events !== 'number' || typeof n !== 'number' || events <= n) return [];
  const related = [{ path: [...path, 'n'], message: 'the number of people' }];
  return [
    {
      code: 'CASE_CONFLICT',
      path: [...path, 'events'],
      message: 'more events than people',
      hint: 'Count people, each once.',
      related,
    },
  ];
}

function checkPeriod(read: FieldReader, path: Path): Finding[] {
  const [from = '', to = ''] = ['from', 'to'].map((key) => String(read.value([...path, key])));
  const length = Math.min(from.length, to.length);
  if (!isPartialDate(from) || !isPartialDate(to) || from.slice(0, length) <= to.slice(0, length)) return [];
  const related = [{ path: [...path, 'from'], message: 'the first' }];
  return [
    {
      code: 'CASE_CONFLICT',
      path: [...path, 'to'],
      message: 'the period ends before it begins',
      hint: 'Correct one of the two.',
      related,
    },
  ];
}
