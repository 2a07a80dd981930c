import { parseWeight } from '../../model/quantity.ts';
import { isPartialDate, isRealDate } from '../../model/scalars.ts';
import type { Finding, Path } from '../finding.ts';
import type { FieldReader } from '../read-fields.ts';
import type { Rule } from './rule.ts';

const askedPath: Path = ['decision', 'asked'];
const earlierPath: Path = ['health', 'earlier_operations'];

/** What is asked fits the operations a person had, and each earlier operation fits itself. */
export const checkHistory: Rule = (read, { today }) => [
  ...checkAsked(read),
  ...checkBandRemoval(read),
  ...checkExchange(read),
  ...read
    .items(earlierPath)
    .flatMap((path) => [...checkWeights(read, path), ...checkWhen(read, path, today)]),
];

function statuses(read: FieldReader): string[] {
  return read.items(earlierPath).map((path) => read.text([...path, 'status']) ?? 'unknown');
}

function checkAsked(read: FieldReader): Finding[] {
  const asked = read.text(askedPath);
  const had = statuses(read);
  const gone = had.some((status) => ['removed', 'reversed', 'unknown'].includes(status));
  if (asked === 'second-operation' && had.length === 0) {
    return [
      conflict(
        askedPath,
        'a second operation is asked about, but no earlier one is written',
        'Add it under health.earlier_operations, or write asked: first-operation.',
      ),
    ];
  }
  if (asked === 'after-removal' && !gone) {
    return [
      conflict(
        askedPath,
        'this is about the time after a removal, but no operation was removed or reversed',
        'Add it under health.earlier_operations with status: removed or reversed.',
      ),
    ];
  }
  const place = had.indexOf('in-place');
  if (asked !== 'first-operation' || place === -1) return [];
  return [
    {
      ...conflict(
        askedPath,
        'a first operation is asked about, but an earlier one is in place',
        'Write asked: second-operation, or correct the status.',
      ),
      related: [{ path: [...earlierPath, place, 'status'], message: 'in place' }],
    },
  ];
}

function hasBand(read: FieldReader): boolean {
  return read
    .items(earlierPath)
    .some(
      (path) => read.text([...path, 'operation']) === 'band' && read.text([...path, 'status']) === 'in-place',
    );
}

function checkExchange(read: FieldReader): Finding[] {
  const path = ['plan', 'stages'];
  if (read.text(path) === undefined || hasBand(read)) return [];
  const message = 'this says how a band is exchanged, but no band is in place';
  return [
    conflict(
      path,
      message,
      'Add the band under health.earlier_operations with status: in-place, or remove it.',
    ),
  ];
}

function checkBandRemoval(read: FieldReader): Finding[] {
  const option = read.texts(['decision', 'options']).find(({ value }) => value === 'band-removal');
  if (option === undefined || hasBand(read)) return [];
  const message = 'taking a band out is an option, but no band is in place';
  return [
    conflict(
      option.path,
      message,
      'Add the band under health.earlier_operations with status: in-place, or remove the option.',
    ),
  ];
}

function checkWeights(read: FieldReader, path: Path): Finding[] {
  const [before, lowest] = ['weight_before', 'lowest_weight'].map((key) =>
    parseWeight(read.text([...path, key]) ?? ''),
  );
  if (before === undefined || lowest === undefined || lowest.kg <= before.kg) return [];
  const finding = conflict(
    [...path, 'lowest_weight'],
    'the lowest weight since is above the weight before',
    'Correct one of the two.',
  );
  return [{ ...finding, related: [{ path: [...path, 'weight_before'], message: 'the weight before' }] }];
}

function checkWhen(read: FieldReader, path: Path, today: string | undefined): Finding[] {
  const value = read.value([...path, 'date']);
  const date = typeof value === 'number' ? String(value) : value;
  if (typeof date !== 'string' || !isPartialDate(date)) return [];
  const born = read.text(['patient', 'born']);
  const place: Path = [...path, 'date'];
  // Dates may be a year or a month only: compare as far as they are written.
  if (today !== undefined && date > today.slice(0, date.length)) {
    return [conflict(place, 'an earlier operation lies in the future', 'Correct the date.')];
  }
  if (born === undefined || !isRealDate(born) || date >= born.slice(0, date.length)) return [];
  return [conflict(place, 'an earlier operation lies before the birth', 'Correct one of the two dates.')];
}

function conflict(path: Path, message: string, hint: string): Finding {
  return { code: 'CASE_CONFLICT', path, message, hint };
}
