import { ageOn } from '../model/quantity.ts';
import { pathKey } from './finding.ts';
import type { Path } from './finding.ts';
import { changeOperations, followOperations } from './apply-operations.ts';
import type { Place, Tree } from './read-tree.ts';
import { isPlainMap } from './walk-schema.ts';
import { forgetPlaces, placeOf, shift, textAt, textsAt, valueAt, write } from './what-if-draft.ts';
import type { Draft } from './what-if-draft.ts';
import type { WhatIfStep } from './what-if-step.ts';

/** A step whose ranges count from the start of the case file and everything joined to it. */
export interface PlacedStep {
  readonly step: WhatIfStep;
  readonly start: number;
}

type ListStep = Extract<WhatIfStep, { kind: 'list' }>;
type SetStep = Extract<WhatIfStep, { kind: 'set' }>;

/**
 * The tree of a case as it would be read with the changes written in, one after the other: a later one wins. What is
 * changed has its place in the argument that changes it.
 *
 * @param today ISO date on which an age is meant
 */
export function applyWhatIf(tree: Tree, steps: readonly PlacedStep[], today: string): Tree {
  const draft: Draft = { value: structuredClone(tree.value), places: new Map(tree.places) };
  const before = textsAt(draft, optionsPath);
  const had = lengthAt(draft, operationsPath);
  for (const placed of steps) applyStep(draft, placed, today);
  const isAsked = steps.some(({ step }) => pathKey(step.field.path) === pathKey(askedPath));
  if (steps.some(({ step }) => step.kind === 'operations')) followOperations(draft, { before: had, isAsked });
  const options = textsAt(draft, optionsPath);
  forgetOptions(
    draft,
    before.filter((code) => !options.includes(code)),
  );
  return { ...tree, value: draft.value, places: draft.places };
}

const operationsPath: Path = ['health', 'earlier_operations'];

function lengthAt(draft: Draft, path: Path): number {
  const found = valueAt(draft.value, path);
  return Array.isArray(found) ? found.length : 0;
}

function applyStep(draft: Draft, { step, start }: PlacedStep, today: string): void {
  switch (step.kind) {
    case 'set':
      setValue(draft, step, { start, today });
      return;
    case 'list':
      changeList(draft, step, start);
      return;
    case 'operations':
      changeOperations(draft, step, start);
  }
}

function setValue(draft: Draft, step: SetStep, at: { readonly start: number; readonly today: string }): void {
  const { field, value, text } = step;
  const place = placeOf(step, at.start);
  const isAge = field.kind === 'age' && typeof value === 'number';
  const written = isAge ? bornAt(value, { present: textAt(draft, field.path), today: at.today }) : value;
  write(draft, field.path, written);
  forgetPlaces(draft, field.path);
  draft.places.set(
    pathKey(field.path),
    typeof value === 'number' && !isAge ? { ...place, plain: text } : place,
  );
  for (const key of isPlainMap(value) ? Object.keys(value) : [])
    draft.places.set(pathKey([...field.path, key]), place);
}

/** The present birth date where it gives the age already; else a birthday on the day that is meant. */
function bornAt(
  age: number,
  { present, today }: { readonly present: string; readonly today: string },
): string {
  if (ageOn(present, today) === age) return present;
  const year = String(Number(today.slice(0, 4)) - age).padStart(4, '0');
  // The year of birth may have no 29 February; a day earlier the age is the same.
  const day = today.slice(4) === '-02-29' ? '-02-28' : today.slice(4);
  return `${year}${day}`;
}

interface Item {
  readonly code: string;
  readonly place: Place | undefined;
}

function changeList(draft: Draft, step: ListStep, start: number): void {
  const { path } = step.field;
  const given = step.codes.map(({ code, sign, at }) => ({ code, sign, place: { value: shift(at, start) } }));
  let items: readonly Item[] = textsAt(draft, path).map((code, index) => ({
    code,
    place: draft.places.get(pathKey([...path, index])),
  }));
  if (given.every(({ sign }) => sign === undefined)) items = given;
  for (const one of given) {
    if (one.sign === '-') items = items.filter(({ code }) => code !== one.code);
    if (one.sign === '+' && items.every(({ code }) => code !== one.code)) items = [...items, one];
  }
  write(draft, path, step.isEmpty ? null : items.map(({ code }) => code));
  forgetPlaces(draft, path);
  draft.places.set(pathKey(path), placeOf(step, start));
  items.forEach(({ place }, index) => {
    if (place !== undefined) draft.places.set(pathKey([...path, index]), place);
  });
}

const optionsPath: Path = ['decision', 'options'];
const askedPath: Path = ['decision', 'asked'];

/**
 * What the surgeon said of an option goes with the option. Doing nothing more stays one, so what was said of it stays.
 */
function forgetOptions(draft: Draft, gone: readonly string[]): void {
  const isGone = (code: unknown): boolean =>
    code !== 'no-operation' && gone.some((option) => option === code);
  const decision = valueAt(draft.value, ['decision']);
  if (!isPlainMap(decision)) return;
  const { leaning, advised_against: advised, chosen } = decision;
  if (isPlainMap(leaning) && isGone(leaning['option'])) forget(draft, ['decision', 'leaning'], null);
  if (isGone(chosen)) forget(draft, ['decision', 'chosen'], null);
  if (!Array.isArray(advised)) return;
  const kept = advised.filter((entry: unknown) => !(isPlainMap(entry) && isGone(entry['option'])));
  if (kept.length < advised.length) forget(draft, ['decision', 'advised_against'], kept);
}

function forget(draft: Draft, path: Path, rest: unknown): void {
  write(draft, path, rest);
  forgetPlaces(draft, path);
}
