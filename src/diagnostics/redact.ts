import { nearestWord } from './suggest.ts';

/** What stands in place of words that must not be shown; its length says nothing about theirs. */
export const mask = '…';

/** Keys of a case or clinic profile whose value may stand in an excerpt. Every other value is masked. */
export const shownKeys: ReadonlySet<string> = new Set([
  ...['plainleaf', 'case', 'example', 'languages', 'documents', 'packet', 'sex', 'height', 'weight'],
  ...['ancestry_threshold', 'conditions', 'medicines', 'history', 'smoking', 'now', 'planned_within_months'],
  ...['operation', 'date', 'weight_before', 'lowest_weight', 'trouble', 'status', 'asked', 'options', 'code'],
  ...['option', 'chosen', 'next_visit', 'operation_date', 'surgeon', 'needed', 'language'],
  ...[
    'jurisdiction',
    'day',
    'out_of_hours',
    'emergency',
    'paper',
    'units',
    'id',
    'pronoun',
    'outcome',
    'days',
  ],
  ...['events', 'n', 'from', 'to', 'approval', 'contact', 'form', 'record', 'phone', 'on'],
]);

/** Keys that only hold other keys; words directly after them are masked. */
export const groupKeys: ReadonlySet<string> = new Set([
  ...[
    'patient',
    'health',
    'pregnancy',
    'earlier_operations',
    'decision',
    'matters_most',
    'leaning',
    'reasons',
  ],
  ...[
    'advised_against',
    'plan',
    'interpreter',
    'clinic',
    'phones',
    'surgeons',
    'results',
    'protocol',
    'prefer',
  ],
  ...['second_opinion', 'approved', 'stay', 'time_off', 'visits', 'for_life', 'under_study', 'cautions'],
]);

/** Keys whose value says who the person is, or is in free words. Shown themselves; their values never. */
export const identifyingKeys: ReadonlySet<string> = new Set([
  'name',
  'born',
  'text',
  'address',
  'oversight',
  'reason',
  'by',
]);

const listKeys: ReadonlySet<string> = new Set([
  'languages',
  'documents',
  'conditions',
  'medicines',
  'history',
  'options',
]);
const recordKeys: ReadonlySet<string> = new Set([
  'stay',
  'time_off',
  'visits',
  'for_life',
  'under_study',
  'cautions',
]);
const allKeys: readonly string[] = [...shownKeys, ...groupKeys, ...identifyingKeys];

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
  const line = (lines[index] ?? '').replace(/(^|\s)#.*$/, `$1${mask}`);
  const above = governingKeys(lines, index);
  const start = /^[\s-]*/.exec(line)?.[0] ?? '';
  if (above === undefined) return start + mask;
  const keys = findKeys(line);
  if (keys.length === 0)
    return listKeys.has(above[0] ?? '') ? line : start + (line.trim() === '' ? '' : mask);
  return keepWhile(line, keys, above[0] ?? '');
}

/** Copies the line key by key, and stops with a mask at the first thing that may not be shown. */
function keepWhile(line: string, keys: readonly KeyAt[], parent: string): string {
  let kept = line.slice(0, keys[0]?.start);
  if (/[^\s\-{[?"']/.test(kept)) return mask;
  let holder = parent;
  for (const [index, key] of keys.entries()) {
    const isShownName = isNamed(key.name) || recordKeys.has(holder);
    if (!isShownName) return kept + mask;
    kept += line.slice(key.start, key.end);
    const value = line.slice(key.end, keys[index + 1]?.start);
    if (!mayShow(key.name, value, holder))
      return /\S/.test(value) || keys[index + 1] !== undefined ? `${kept} ${mask}` : kept;
    kept += value;
    holder = key.name;
  }
  return kept;
}

function isNamed(name: string): boolean {
  return (
    shownKeys.has(name) ||
    groupKeys.has(name) ||
    identifyingKeys.has(name) ||
    nearestWord(name, allKeys) !== undefined
  );
}

function mayShow(name: string, value: string, holder: string): boolean {
  if (shownKeys.has(name)) return true;
  return (groupKeys.has(name) || recordKeys.has(holder)) && /^[\s[\]{},"-]*$/.test(value);
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
 * The keys this line stands under by indentation, nearest first; undefined when one of them may not be shown, for then
 * the line may be part of free words.
 */
function governingKeys(lines: readonly string[], index: number): string[] | undefined {
  const above: string[] = [];
  let below = indentOf(lines[index] ?? '');
  for (let i = index - 1; i >= 0 && (below.depth > 0 || below.isItem); i--) {
    const line = lines[i] ?? '';
    const indent = indentOf(line);
    if (!/^\s*[^\s#]/.test(line) || !holds(indent, below)) continue;
    const names = findKeys(line).map((key) => key.name);
    above.push(...names.reverse());
    below = indent;
  }
  return above.every((name, i) => isGoverning(name, above[i + 1])) ? above : undefined;
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
