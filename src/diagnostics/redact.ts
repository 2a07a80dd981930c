import { nearestWord } from './suggest.ts';

/** What stands in place of words that must not be shown; its length says nothing about theirs. */
export const mask = '…';

function keySet(...groups: readonly string[]): ReadonlySet<string> {
  return new Set(groups.flatMap((keys) => keys.split(' ')));
}

/** Keys of a case or clinic profile whose value may stand in an excerpt. Every other value is masked. */
export const shownKeys = keySet(
  'plainleaf case example languages documents packet sex height weight ancestry_threshold large_print',
  'conditions medicines history smoking now planned_within_months operation date weight_before',
  'lowest_weight trouble status asked options option code chosen next_visit operation_date stages surgeon',
  'needed language jurisdiction day out_of_hours emergency paper units id pronoun outcome days',
  'events from to approval contact form record phone weekdays closed from_day to_day after with way every',
  'scope digest until about for supplement dose times_a_day tests at before fever pulse today at_visit urgency',
);

/** Keys that only hold other keys; words directly after them are masked. */
export const groupKeys = keySet(
  'patient health pregnancy earlier_operations decision matters_most leaning reasons advised_against',
  'plan interpreter clinic phones surgeons results protocol prefer second_opinion approved reviewed',
  'stay time_off visits for_life under_study cautions visiting same_as diet follow_up lifting driving work walking',
  'wound medicines_after supplements blood_tests advice warnings call language_notice',
);

/** Keys whose value says who the person is or is in free words. Shown themselves; their values never. */
export const maskedKeys = keySet(
  'name names form_names born text address oversight reason by what means first product how other who hours role',
  'qualification',
);

/** Keys so short that a broken word could end in them (the n of born): shown only after another key on their line. */
export const shortKeys = keySet('n on');

const listKeys = keySet(
  'languages documents conditions medicines history options weekdays closed with tests at urgency',
);
const recordKeys = keySet(
  'stay time_off visits for_life under_study cautions same_as diet follow_up lifting driving work walking wound',
  'medicines_after supplements blood_tests advice warnings call',
);
const longestLine = 1000;
/** Lines under `patient:` among which name and birth date stand. */
const patientLines = 12;
const allKeys = new Set([...shownKeys, ...groupKeys, ...maskedKeys, ...shortKeys]);

interface KeyAt {
  readonly name: string;
  readonly start: number;
  readonly end: number;
}

/**
 * A line of a case or clinic profile as it may be shown: values of identifying fields, comments, and whatever is not
 * certainly something else are masked, from there to the end of the line. Works on text alone, so that it holds for a
 * file that cannot be parsed too.
 */
export function redactLine(lines: readonly string[], index: number): string {
  return hideNames(maskLine(lines, index), lines);
}

/** Words of the person's name and the digits of the birth date are masked wherever else they were written. */
function hideNames(shown: string, lines: readonly string[]): string {
  const colon = shown.indexOf(':') + 1;
  const value = shown.slice(colon).toLowerCase();
  const tells = identifyingParts(lines).some((part) => value.includes(part));
  return tells ? `${shown.slice(0, colon)} ${mask}` : shown;
}

function identifyingParts(lines: readonly string[]): readonly string[] {
  const patient = lines.findIndex((line) => /^\s*["']?patient["']?\s*:/.test(line));
  if (patient === -1) return [];
  const after = lines.slice(patient, patient + patientLines).map(cutLine);
  const valueOf = (key: string): string =>
    new RegExp(`["']?\\b${key}["']?\\s*:(.*)`).exec(after.find((line) => line.includes(key)) ?? '')?.[1] ??
    '';
  const words =
    valueOf('name')
      .toLowerCase()
      .match(/\p{L}{3,}/gu) ?? [];
  const born = /\d{4}-\d{1,2}-\d{1,2}/.exec(valueOf('born')) ?? [];
  return [...words, ...born];
}

function maskLine(lines: readonly string[], index: number): string {
  const line = cutLine(lines[index]).replace(/(^|\s)#.*$/, `$1${mask}`);
  if (line.trim() === '') return line;
  const above = governingKeys(lines, index);
  const start = /^[\s-]*/.exec(line)?.[0] ?? '';
  if (above === undefined || /-\s*-/.test(start)) return start + mask;
  const [holder = ''] = above;
  const keys = findKeys(line);
  if (keys.length > 0) return keepWhile(line, keys, holder);
  return listKeys.has(holder) ? line : start + mask;
}

/** Looking for keys takes time that grows with the square of a line's length, so what is far along is masked unseen. */
function cutLine(line = ''): string {
  return line.length > longestLine ? line.slice(0, longestLine) + mask : line;
}

/** Copies the line key by key, and stops with a mask at the first thing that may not be shown. */
function keepWhile(line: string, keys: readonly KeyAt[], parent: string): string {
  let kept = line.slice(0, keys[0]?.start);
  if (/[^\s\-{[?"']/.test(kept)) return mask;
  let holder = parent;
  for (const [index, key] of keys.entries()) {
    const value = line.slice(key.end, keys[index + 1]?.start);
    const shown = judgeKey(key.name, value, { holder, isFirst: index === 0 });
    if (shown === 'nothing') return kept + mask;
    kept += line.slice(key.start, key.end);
    if (shown === 'key') return line.slice(key.end).trim() === '' ? kept : `${kept} ${mask}`;
    kept += value;
    holder = key.name;
  }
  return kept;
}

interface Spot {
  readonly holder: string;
  /** The first key of its line. */
  readonly isFirst: boolean;
}

function judgeKey(name: string, value: string, { holder, isFirst }: Spot): 'nothing' | 'key' | 'value' {
  const isRecordKey = recordKeys.has(holder);
  if (!isRecordKey && !isNamed(name)) return 'nothing';
  if (shownKeys.has(name) || (!isFirst && shortKeys.has(name))) return 'value';
  const isHolder = isRecordKey || groupKeys.has(name);
  return isHolder && /^[\s[\]{},"-]*$/.test(value) ? 'value' : 'key';
}

/**
 * Whether a word is surely one of the keys, misspelled: near one, and neither short nor with a capital, as names of people
 * are (Casey is near to case).
 */
export function isMisspelling(word: string, keys: Iterable<string>): boolean {
  return /^[a-z][a-z_-]{5,}$/.test(word) && nearestWord(word, keys) !== undefined;
}

function isNamed(name: string): boolean {
  return allKeys.has(name) || isMisspelling(name, allKeys);
}

/** Keys on a line, in quotes or not, each with its colon. */
function findKeys(line: string): KeyAt[] {
  const found = line.matchAll(/("[^"]*"|'[^']*')\s*:|([^\s:{},[\]"'-][^:{},[\]"']*|):(?=\s|$)/g);
  return [...found].map((match) => ({
    name: (match[1]?.slice(1, -1) ?? match[2] ?? '').trim(),
    start: match.index,
    end: match.index + match[0].length,
  }));
}

/**
 * The keys this line stands under by indentation, nearest first; undefined when one of them may not be shown, or when a
 * line above holds no key at all: then the line may be part of free words.
 */
function governingKeys(lines: readonly string[], index: number): string[] | undefined {
  const above: string[] = [];
  let below = indentOf(cutLine(lines[index]));
  for (let i = index - 1; i >= 0 && (below.depth > 0 || below.isItem); i--) {
    const line = cutLine(lines[i]);
    const indent = indentOf(line);
    if (isBlank(line) || !holds(indent, below)) continue;
    const names = findKeys(line).map((key) => key.name);
    if (!endsInHolder(names, indent)) return undefined;
    above.push(...names.reverse());
    below = indent;
  }
  return above.every((name, i) => isGoverning(name, above[i + 1])) ? above : undefined;
}

function isBlank(line: string): boolean {
  return /^\s*(#|$)/.test(line);
}

/** A line that others stand under ends in a key that holds lists or keys, unless it is the first line of a list item. */
function endsInHolder(names: readonly string[], { isItem }: Indent): boolean {
  const last = names.at(-1);
  return last !== undefined && (isItem || listKeys.has(last) || !shownKeys.has(last));
}

interface Indent {
  readonly depth: number;
  /** The line starts with a dash. */
  readonly isItem: boolean;
}

function indentOf(line: string): Indent {
  const depth = /^\s*/.exec(line)?.[0].length ?? 0;
  return { depth, isItem: line[depth] === '-' };
}

/** Items of a list may stand as far in as the key that holds them. */
function holds(above: Indent, below: Indent): boolean {
  return above.depth < below.depth || (above.depth === below.depth && below.isItem && !above.isItem);
}

function isGoverning(name: string, holder: string | undefined): boolean {
  return shownKeys.has(name) || groupKeys.has(name) || (holder !== undefined && recordKeys.has(holder));
}
