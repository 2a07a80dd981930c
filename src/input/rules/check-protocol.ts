import { likeOptions } from '../../model/protocol-of.ts';
import { addSpan, parseSpan } from '../../model/span.ts';
import type { Finding, Path } from '../finding.ts';
import type { FieldReader } from '../read-fields.ts';
import { isPlainMap } from '../walk-schema.ts';
import { findRepeats } from './check-duplicates.ts';
import { checkDiet } from './check-diet.ts';
import { checkSupplements } from './check-supplements.ts';
import type { Rule } from './rule.ts';

/** What a clinic says of the time after a treatment can be kept: stages follow one another, nothing ends before it begins. */
export const checkProtocol: Rule = (read) => [
  ...checkSameAs(read),
  ...topicsOf(read).flatMap(({ topic, path }) => {
    const entries = read.items(path);
    return [...entries.flatMap((entry) => checkTimes(read, entry)), ...checkTopic(read, topic, path)];
  }),
];

/** Being the same as another leads to an end. */
function checkSameAs(read: FieldReader): readonly Finding[] {
  const sameAs = read.value(['protocol', 'same_as']);
  if (!isPlainMap(sameAs)) return [];
  const texts = Object.entries(sameAs).flatMap(([option, like]) =>
    typeof like === 'string' ? [[option, like] as const] : [],
  );
  const links = Object.fromEntries(texts);
  return texts
    .filter(([option, like]) => likeOptions({ same_as: links }, like).includes(option))
    .map(([option]) =>
      conflict(
        ['protocol', 'same_as', option],
        'these options are the same as each other in a circle',
        'Let one of them have its own practice, and take it out here.',
      ),
    );
}

interface Place {
  readonly topic: string;
  readonly option: string;
  readonly path: Path;
}

/** Every option under every topic of the protocol, as far as it is written. */
function topicsOf(read: FieldReader): readonly Place[] {
  const protocol = read.value(['protocol']);
  if (!isPlainMap(protocol)) return [];
  return Object.entries(protocol).flatMap(([topic, options]) =>
    isPlainMap(options)
      ? Object.keys(options).map((option) => ({ topic, option, path: ['protocol', topic, option] }))
      : [],
  );
}

function checkTopic(read: FieldReader, topic: string, path: Path): readonly Finding[] {
  switch (topic) {
    case 'diet':
      return checkDiet(read, read.items(path));
    case 'follow_up':
      return checkVisits(read, read.items(path));
    case 'supplements':
      return checkSupplements(read, read.items(path));
    case 'blood_tests':
      return read.items(path).flatMap((entry) => checkTests(read, entry));
    case 'warnings':
      return checkSigns(read, path);
    default:
      return [];
  }
}

/** Days are compared by counting both spans from one day, since months differ in length. */
function isLater(first: string | undefined, second: string | undefined): boolean {
  const [one, other] = [first, second].map((text) => parseSpan(text ?? ''));
  const start = '2026-01-01';
  return one !== undefined && other !== undefined && addSpan(start, one) > addSpan(start, other);
}

function checkTimes(read: FieldReader, entry: Path): readonly Finding[] {
  const textAt = (key: string): string | undefined => read.text([...entry, key]);
  const begin = ['from', 'after'].find((key) => textAt(key) !== undefined);
  const endsEarly = begin !== undefined && isLater(textAt(begin), textAt('until'));
  const isBefore = textAt('before') !== undefined;
  const after = ['from', 'until'].find((key) => textAt(key) !== undefined);
  const related = (key: string) => ({ related: [{ path: [...entry, key], message: 'the other one' }] });
  return [
    ...(endsEarly
      ? [
          {
            ...conflict([...entry, 'until'], 'this ends before it begins', 'Correct one of the two.'),
            ...related(begin),
          },
        ]
      : []),
    ...(isBefore && after !== undefined
      ? [
          {
            ...conflict(
              [...entry, after],
              'this is before the operation and after it',
              'Keep one of the two.',
            ),
            ...related('before'),
          },
        ]
      : []),
  ];
}

function checkVisits(read: FieldReader, visits: readonly Path[]): readonly Finding[] {
  const named = visits.map((path) => ({
    value: JSON.stringify(['after', 'with', 'way'].map((key) => read.value([...path, key]))),
    path,
  }));
  const endless = visits.filter(
    (path) => read.text([...path, 'until']) !== undefined && read.text([...path, 'every']) === undefined,
  );
  return [
    ...findRepeats(named, 'this visit stands twice: same time and people'),
    ...endless.map((path) =>
      conflict(
        [...path, 'until'],
        'until ends a repetition, and nothing is repeated',
        'Add every:, or remove it.',
      ),
    ),
  ];
}

function checkTests(read: FieldReader, entry: Path): readonly Finding[] {
  const isTimed = read.items([...entry, 'at']).length > 0 || read.text([...entry, 'every']) !== undefined;
  const isNamed = read.items([...entry, 'tests']).length > 0 || read.value([...entry, 'other']) !== undefined;
  const times = read.texts([...entry, 'at']);
  const early = times.filter(({ value }, index) => index > 0 && !isLater(value, times[index - 1]?.value));
  return [
    ...(isTimed
      ? []
      : [
          conflict(
            entry,
            'nothing says when these tests are due',
            'Add at: [3 months], or every: 12 months.',
          ),
        ]),
    ...(isNamed
      ? []
      : [conflict(entry, 'nothing says what is tested', 'Add tests: and a list, or other: with words.')]),
    ...early
      .filter(({ value }) => parseSpan(value) !== undefined)
      .map(({ path }) =>
        conflict(path, 'the times are not in order', 'Write the earliest first, each once.'),
      ),
  ];
}

/** A sign may be more urgent for some people than for the others. */
function checkSigns(read: FieldReader, path: Path): readonly Finding[] {
  const signs = ['now', 'today', 'at_visit'].flatMap((key) =>
    read.items([...path, key]).flatMap((entry) => {
      const value = read.text([...entry, 'code']);
      const people = JSON.stringify([value, read.value([...entry, 'for'])]);
      return value === undefined ? [] : [{ value: people, path: [...entry, 'code'] }];
    }),
  );
  return findRepeats(signs, 'this sign stands twice');
}

function conflict(path: Path, message: string, hint: string): Finding {
  return { code: 'CASE_CONFLICT', path, message, hint };
}
