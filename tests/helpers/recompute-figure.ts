import { readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { parse } from 'yaml';

import type { EvidenceRecord } from '../../src/model/evidence-record.ts';

// Worked out from the data files and the case as they stand; nothing of the program helps to check its own sums. Every
// function gives all that a page may print for a record: the same figure is said in several ways.

const { jStat } = createRequire(import.meta.url)('jstat') as {
  readonly jStat: {
    readonly beta: { readonly inv: (p: number, a: number, b: number) => number };
    readonly normal: { readonly inv: (p: number, mean: number, sd: number) => number };
  };
};

const folder = 'src/evidence/data/records';
const records = new Map(
  readdirSync(folder)
    .flatMap((name) => parse(readFileSync(`${folder}/${name}`, 'utf8')) as EvidenceRecord[])
    .map((record) => [record.id, record]),
);

export interface Body {
  readonly kg: number;
  readonly metres: number;
}

interface Limits {
  readonly low: number;
  readonly high: number;
}

/** By definition, kg. */
const pound = 0.45359237;
const denominators = [100, 1000];

/** Every way in which a page may print the figure of these records for this body; several are the other studies. */
export function sayRecomputed(ids: readonly string[], body: Body): ReadonlySet<string> {
  const found = ids.map((id) => {
    const record = records.get(id);
    if (record === undefined) throw new Error(`${id} is in no data file`);
    return record;
  });
  const [first] = found;
  const own = first !== undefined && found.length === 1 ? waysOf(first, body) : [];
  return new Set([...own, ...rangesOver(found, body)]);
}

/** Every way in which a page may print so many of so many of a clinic's own people, with what that could be. */
export function sayOwn(had: number, people: number): readonly string[] {
  return [`${write(had)} of ${write(people)}`, rangeWays(wilson(had, people), 1000)];
}

function waysOf(record: EvidenceRecord, body: Body): readonly string[] {
  const ways = [...doseWays(record), ...followedWays(record), ...peopleWays(record)];
  if (record.kind === 'risk' || record.kind === 'benefit') return [...ways, ...shareWays(record)];
  if (record.kind === 'weight') return [...ways, ...weightWays(record, body)];
  return record.kind === 'duration' ? [...ways, ...lengthWays(record.value.estimate)] : ways;
}

type ShareRecord = Extract<EvidenceRecord, { kind: 'risk' | 'benefit' }>;
type WeightRecord = Extract<EvidenceRecord, { kind: 'weight' }>;

function shareOf({ value: { events, n, percent } }: ShareRecord): number | undefined {
  if (events !== undefined && n !== undefined) return events / n;
  return percent === undefined ? undefined : percent / 100;
}

function shareWays(record: ShareRecord): readonly string[] {
  const share = shareOf(record);
  if (share === undefined) return [];
  const { events, n } = record.value;
  const counted = events !== undefined && n !== undefined ? [`${write(events)} of ${write(n)}`] : [];
  return [...counted, ...denominators.flatMap((of) => countWays(record, { share, of }))];
}

function countWays(
  record: ShareRecord,
  { share, of }: { readonly share: number; readonly of: number },
): readonly string[] {
  const people = share * of;
  const limits = limitsOf(record, share);
  const range = limits === undefined ? [] : [rangeWays(limits, of)];
  if (share === 0) return noneWays(record, of);
  if (people < 1 - 1e-9) {
    const few = ['fewer than 1', 'Fewer than 1'].flatMap((word) => [word, `${word} out of ${write(of)}`]);
    return [...few, write(of - 1), ...range];
  }
  const count = halfUp(people);
  return [write(count), `${write(count)} out of ${write(of)}`, write(of - count), ...range];
}

function noneWays({ value: { n = 0 }, followed }: ShareRecord, of: number): readonly string[] {
  const watched = Math.min(n, followed?.seen ?? n);
  const upper = Math.ceil(jStat.beta.inv(0.975, 1, watched) * of - 1e-9);
  return [`none of ${write(n)}`, `None of ${write(n)}`, `${write(Math.max(1, upper))} out of ${write(of)}`];
}

/** Published, else exact where fewer than 5 had it or had it not, else Wilson's. */
function limitsOf(record: ShareRecord, share: number): Limits | undefined {
  const { low, high, interval, events, n, n_is: start } = record.value;
  const published = ['ci95', 'cri95'].includes(interval ?? '');
  if (published && low !== undefined && high !== undefined) return { low: low / 100, high: high / 100 };
  const people = events !== undefined || start === undefined ? n : record.followed?.seen;
  if (people === undefined) return undefined;
  return limitsOfCount(Math.min(people, events ?? Math.round(share * people)), people);
}

function limitsOfCount(had: number, people: number): Limits {
  return Math.min(had, people - had) < 5 ? exact(had, people) : wilson(had, people);
}

function exact(had: number, people: number): Limits {
  return {
    low: had === 0 ? 0 : jStat.beta.inv(0.025, had, people - had + 1),
    high: had === people ? 1 : jStat.beta.inv(0.975, had + 1, people - had),
  };
}

/** Roots of (share - p)² = z² p (1 - p) / n. */
function wilson(had: number, people: number): Limits {
  const z2 = jStat.normal.inv(0.975, 0, 1) ** 2;
  const share = had / people;
  const [a, b, c] = [1 + z2 / people, 2 * share + z2 / people, share * share];
  const root = Math.sqrt(b * b - 4 * a * c);
  return { low: (b - root) / (2 * a), high: (b + root) / (2 * a) };
}

function rangeWays({ low, high }: Limits, of: number): string {
  const [first, last] = [Math.floor(low * of + 1e-9), Math.max(1, Math.ceil(high * of - 1e-9))];
  if (high * of < 1) return 'fewer than 1';
  if (first === 0) return `${low === 0 ? '0' : 'fewer than 1'} to ${write(last)}`;
  return first === last ? write(first) : `${write(first)} to ${write(last)}`;
}

function weightWays(record: WeightRecord, body: Body): readonly string[] {
  const { estimate, sd, se, low, high } = record.value;
  if (estimate === undefined) return [];
  const kg = kilogramsOf(record, estimate, body);
  const [now, then] = [halfUp(body.kg / pound), halfUp(kg / pound)];
  const twl = (Math.abs(body.kg - kg) / body.kg) * 100;
  const about = (half: number | undefined): readonly (readonly number[])[] =>
    half === undefined ? [] : [[estimate - half, estimate + half]];
  const spreads = [
    ...about(sd),
    ...about(se === undefined ? undefined : se * jStat.normal.inv(0.975, 0, 1)),
    ...(low === undefined || high === undefined ? [] : [[low, high]]),
  ];
  return [
    bothUnits(kg),
    `${write(then)} lb`,
    // At a point of a weight line, whose axis names the unit.
    write(then),
    `${write(Math.abs(now - then))} lb`,
    (Math.round(twl * 10) / 10).toFixed(1),
    ...spreads.map((ends) => poundRange(ends.map((end) => kilogramsOf(record, end, body)))),
  ];
}

/** Percent of weight as it is; percent of excess over BMI 25. */
function kilogramsOf({ value: { metric } }: WeightRecord, percent: number, { kg, metres }: Body): number {
  const base = metric === 'TWL' ? kg : kg - 25 * metres * metres;
  return kg - (percent / 100) * base;
}

function bothUnits(kg: number): string {
  return `${write(halfUp(kg / pound))} lb (${write(halfUp(kg))} kg)`;
}

function poundRange(weights: readonly number[]): string {
  const [low, high] = [Math.min(...weights), Math.max(...weights)].map((kg) => write(halfUp(kg / pound)));
  return low === high ? `${low ?? ''} lb` : `${low ?? ''} to ${high ?? ''} lb`;
}

/** The lowest and highest of other studies. */
function rangesOver(found: readonly EvidenceRecord[], body: Body): readonly string[] {
  const shares = found.flatMap((record) =>
    record.kind === 'risk' || record.kind === 'benefit' ? [shareOf(record) ?? NaN] : [],
  );
  const weights = found.flatMap((record) =>
    record.kind === 'weight' ? [kilogramsOf(record, record.value.estimate ?? NaN, body)] : [],
  );
  if (weights.length === found.length) return [poundRange(weights)];
  return shares.length === found.length ? denominators.map((of) => countRange(shares, of)) : [];
}

function countRange(shares: readonly number[], of: number): string {
  const say = (share: number): string => {
    if (share === 0) return 'none';
    return share * of < 1 - 1e-9 ? 'fewer than 1' : write(halfUp(share * of));
  };
  const [low, high] = [say(Math.min(...shares)), say(Math.max(...shares))];
  return low === high ? low : `${low} to ${high}`;
}

function doseWays({ dose }: EvidenceRecord): readonly string[] {
  if (dose === undefined || dose === 'unstated') return [];
  const mg = dose.mg.map((one) => String(one));
  const last = mg.at(-1) ?? '';
  const before = mg.slice(0, -1);
  const said = before.length < 2 ? [...before, last].join(' or ') : `${before.join(', ')}, or ${last}`;
  return [`${said} mg once a ${dose.per}`];
}

function followedWays({ followed, value }: EvidenceRecord): readonly string[] {
  const n = 'n' in value ? value.n : undefined;
  const of = followed?.of ?? n;
  if (of === undefined) return [];
  const unknown = `the study does not state how many of its ${write(of)} people were still measured`;
  if (followed === undefined) return [unknown];
  const share = followed.percent ?? (100 * (followed.seen ?? NaN)) / of;
  return [unknown, `about ${write(halfUp(share))} out of 100 of the ${write(of)} people were still measured`];
}

function peopleWays({ value }: EvidenceRecord): readonly string[] {
  return 'n' in value && value.n !== undefined ? [write(value.n)] : [];
}

function lengthWays(estimate: number | undefined): readonly string[] {
  if (estimate === undefined) return [];
  const said = Number.isInteger(estimate) ? write(estimate) : estimate.toFixed(1);
  return [said, `${said} days`, `${said} day`, `${said} hours`];
}

function halfUp(value: number): number {
  return Math.floor(value + 0.5 + 1e-9);
}

function write(value: number): string {
  return value.toLocaleString('en-US');
}
