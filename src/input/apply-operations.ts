import type { Path } from './finding.ts';
import { forgetPlaces, placeOf, shift, textAt, valueAt, write } from './what-if-draft.ts';
import type { Draft } from './what-if-draft.ts';
import { pathKey } from './finding.ts';
import type { Place } from './read-tree.ts';
import { isPlainMap } from './walk-schema.ts';
import type { ListedOperation, WhatIfStep } from './what-if-step.ts';

type OperationsStep = Extract<WhatIfStep, { kind: 'operations' }>;

const operationsPath: Path = ['health', 'earlier_operations'];
const askedPath: Path = ['decision', 'asked'];
const stagesPath: Path = ['plan', 'stages'];

/** An earlier operation with the places of what is written of it. */
interface Entry {
  readonly value: Readonly<Record<string, unknown>>;
  /** By the key, and the place of the whole under an empty key. */
  readonly places: ReadonlyMap<string, Place>;
}

/** Writes the operations before; one that is there already keeps what else is written of it. */
export function changeOperations(draft: Draft, step: OperationsStep, start: number): void {
  const { path } = step.field;
  const present = entriesAt(draft, path);
  let entries: readonly Entry[] = step.operations.every(({ sign }) => sign === undefined) ? [] : present;
  for (const one of step.operations) {
    const same = (entry: Entry): boolean => entry.value['operation'] === one.code;
    if (one.sign === '-') entries = entries.filter((entry) => !same(entry));
    else if (one.sign === '+' && entries.some(same))
      entries = entries.map((entry) => (same(entry) ? withStatus(entry, one, start) : entry));
    else entries = [...entries, withStatus(present.find(same) ?? newEntry(one, start), one, start)];
  }
  write(
    draft,
    path,
    entries.map(({ value }) => value),
  );
  forgetPlaces(draft, path);
  draft.places.set(pathKey(path), placeOf(step, start));
  entries.forEach(({ places }, index) => {
    for (const [key, place] of places)
      draft.places.set(pathKey([...path, index, ...(key === '' ? [] : [key])]), place);
  });
}

function entriesAt(draft: Draft, path: Path): readonly Entry[] {
  const found = valueAt(draft.value, path);
  if (!Array.isArray(found)) return [];
  return found.map((value: unknown, index) => {
    const map = isPlainMap(value) ? value : {};
    const places = ['', ...Object.keys(map)].flatMap((key): (readonly [string, Place])[] => {
      const place = draft.places.get(pathKey([...path, index, ...(key === '' ? [] : [key])]));
      return place === undefined ? [] : [[key, place]];
    });
    return { value: map, places: new Map(places) };
  });
}

function newEntry({ code, at }: ListedOperation, start: number): Entry {
  const place = { value: shift(at, start) };
  const places = ['', 'operation'].map((key) => [key, place] as const);
  return { value: { operation: code }, places: new Map(places) };
}

/** An operation without a word on what became of it is in place. */
function withStatus(entry: Entry, { status, statusAt, at }: ListedOperation, start: number): Entry {
  const place = { value: shift(statusAt ?? at, start) };
  return {
    value: { ...entry.value, status: status ?? 'in-place' },
    places: new Map([...entry.places, ['status', place]]),
  };
}

/**
 * What is asked goes with the operations before: without any it is a first operation, after a removal the time after
 * it. It stays as it is written where that can be true, and a way to exchange a band goes with the band.
 */
export function followOperations(
  draft: Draft,
  { before, isAsked }: { readonly before: number; readonly isAsked: boolean },
): void {
  const had = entriesAt(draft, operationsPath).map(({ value }) => value);
  const statuses = had.map(({ status }) => status);
  const isGone = (status: unknown): boolean => status === 'removed' || status === 'reversed';
  const asked = textAt(draft, askedPath);
  const stays: Readonly<Record<string, boolean>> = {
    'first-operation': had.length === 0 || (had.length <= before && !statuses.includes('in-place')),
    'second-operation': had.length > 0,
    'after-removal': statuses.some(isGone),
  };
  if (!isAsked && stays[asked] === false)
    write(
      draft,
      askedPath,
      had.length === 0 ? 'first-operation' : isGone(statuses.at(-1)) ? 'after-removal' : 'second-operation',
    );
  const hasBand = had.some(({ operation, status }) => operation === 'band' && status === 'in-place');
  if (!hasBand && valueAt(draft.value, stagesPath) !== undefined) write(draft, stagesPath, undefined);
}
