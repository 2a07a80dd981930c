import type { Markup } from '../../model/locale.ts';
import { idsTogether, outcomeName, shortId, tied } from './clinician-ids.ts';
import type { SaidReason } from './clinician-reasons.ts';
import { publishedFigure } from './published-figure.ts';
import type { Scene } from './scene.ts';
import { optionsNamed } from './scene.ts';
import { asMarkup, plainSeries } from './words.ts';

/** One record under one reason. */
export interface Aside {
  readonly record: string;
  readonly option: string;
  readonly outcome: string;
  /** Whether the patient pages have a figure for option and outcome. */
  readonly shown: boolean;
  readonly said: SaidReason;
}

/** The studies of some options under one reason. */
export interface ReasonRun {
  readonly phrase: Markup;
  readonly words: Markup;
}

/** What one study says of one outcome at one time, for all options in which that was set aside for the reason. */
interface Entry {
  readonly study: string;
  readonly outcome: string;
  readonly time: string;
  /** Time and study, as the id ends. */
  readonly end: string;
  /** What it found, "= 22.5%", and what is true of just this record, "n 20"; none for most. */
  readonly remarks: readonly string[];
  readonly options: readonly string[];
}

/**
 * The commonest reason first: a reader who stops has read most. A study often counts many outcomes in several options,
 * so its name is printed once for all of them. No run is much longer than `most` characters.
 */
export function asideRuns(scene: Scene, asides: readonly Aside[], most: number): readonly ReasonRun[] {
  const reasons = [...groupBy(asides, ({ said }) => said.phrase.markup).values()];
  return reasons
    .sort((a, b) => b.length - a.length)
    .flatMap((mine) => {
      const phrase = mine[0]?.said.phrase ?? asMarkup('');
      const byOptions = groupBy(entriesOf(scene, mine), ({ options }) => options.join(' '));
      return [...byOptions.values()].flatMap((those) =>
        optionsRuns(scene, those, most).map((words) => ({ phrase, words })),
      );
    });
}

function entriesOf(scene: Scene, asides: readonly Aside[]): readonly Entry[] {
  const said = asides.map((aside) => ({ aside, ...partsOf(aside.record), remarks: remarksOf(scene, aside) }));
  const same = groupBy(said, ({ aside, study, time, remarks }) =>
    [study, aside.outcome, time, ...remarks].join('\n'),
  );
  return [...same.values()].flatMap((those) => {
    const [first] = those;
    if (first === undefined) return [];
    const { study, time, remarks, aside } = first;
    const options = scene.options
      .map(({ code }) => code)
      .filter((code) => those.some((one) => one.aside.option === code));
    return [{ study, outcome: aside.outcome, time, end: shortId(aside.record), remarks, options }];
  });
}

/** An id is option, outcome, time, study and what tells records of a study apart. */
function partsOf(record: string): { readonly time: string; readonly study: string } {
  const [, , time = '', ...study] = record.split('.');
  return study.length === 0 ? { time: '', study: time } : { time, study: study.join('.') };
}

/**
 * What a record found is said where the patient pages show nothing, for a clinician who wants to know although it is
 * not for this person.
 */
function remarksOf(scene: Scene, { record, shown, said }: Aside): readonly string[] {
  const found = scene.records.get(record);
  const figure = shown || found === undefined ? null : publishedFigure(found, scene);
  return [...(figure === null ? [] : [`= ${figure}`]), ...(said.detail === null ? [] : [said.detail])];
}

/** "Sleeve, Gastric bypass: weight 12m/24m.study-b, 60m.study-c; study-a (death, leak 30d)." */
function optionsRuns(scene: Scene, entries: readonly Entry[], most: number): readonly Markup[] {
  const names = optionsNamed(scene, entries[0]?.options ?? []).map(({ name }) => name);
  return shareOut(studiesOf(scene, entries), most).map((studies) =>
    scene.words.say('clinician-sheet.set_aside.run', {
      options: plainSeries(scene.words, 'items', names),
      studies: plainSeries(scene.words, 'clauses', studies),
    }),
  );
}

/** Studies of one outcome by that outcome, then those of several, each with its own. */
function studiesOf(scene: Scene, entries: readonly Entry[]): readonly string[] {
  const studies = [...groupBy(entries, ({ study }) => study).values()];
  const isNarrow = (those: readonly Entry[]): boolean =>
    new Set(those.map(({ outcome }) => outcome)).size === 1;
  const narrow = groupBy(studies.filter(isNarrow), ([first]) => first?.outcome ?? '');
  return [
    ...[...narrow].map(([outcome, those]) =>
      [
        outcomeName(scene, outcome),
        itemsIn(
          scene,
          those.map((one) => idOf(scene, one)),
        ),
      ].join(' '),
    ),
    ...studies
      .filter((those) => !isNarrow(those))
      .map((those) =>
        scene.words.plain('clinician-sheet.set_aside.study', {
          study: those[0]?.study ?? '',
          outcomes: outcomesOf(scene, those),
        }),
      ),
  ];
}

/** Texts in order, shared out so that each share holds no more than so many characters, or one text. */
function shareOut(texts: readonly string[], most: number): readonly (readonly string[])[] {
  const shares: string[][] = [];
  let room = 0;
  for (const text of texts) {
    const share = shares.at(-1);
    if (share === undefined || room < text.length) shares.push([text]);
    else share.push(text);
    room = (share === undefined || room < text.length ? most : room) - text.length;
  }
  return shares;
}

/** Of a study with one outcome: "12m/24m.study-b", "60m.study-c = 22.5%", "study-d (12m = 3.1%, 60m = 4%)". */
function idOf(scene: Scene, entries: readonly Entry[]): string {
  const { words } = scene;
  const remarks = groupBy(entries, (entry) => entry.remarks.join('\n'));
  if (remarks.size > 1) {
    const times = entries.map((entry) => tied([entry.time, ...entry.remarks].join(' ')));
    const study = entries[0]?.study ?? '';
    return words.plain('clinician-sheet.set_aside.study', { study, outcomes: itemsIn(scene, times) });
  }
  const ids = itemsIn(scene, idsTogether(entries.map(({ end }) => end)));
  return tied(
    (entries[0]?.remarks ?? []).reduce(
      (said, remark) =>
        remark.startsWith('=')
          ? `${said} ${remark}`
          : words.plain('common.aside', { words: said, aside: remark }),
      ids,
    ),
  );
}

/** "death, leak 30d; weight 12m/24m n 20": outcomes of the same times and remarks together. */
function outcomesOf(scene: Scene, entries: readonly Entry[]): string {
  const outcomes = groupBy(entries, ({ outcome, remarks }) => [outcome, ...remarks].join('\n'));
  const whens = [...outcomes.values()].map((those) => {
    const parts = [those.map(({ time }) => time).join('/'), ...(those[0]?.remarks ?? [])];
    const when = parts.filter((part) => part !== '').join(' ');
    return { outcome: outcomeName(scene, those[0]?.outcome ?? ''), when };
  });
  const said = [...groupBy(whens, ({ when }) => when)].map(([when, those]) => {
    const named = those.map(({ outcome }) => outcome);
    return [itemsIn(scene, named), tied(when)].join(' ').trim();
  });
  return plainSeries(scene.words, 'clauses', said);
}

function itemsIn({ words }: Scene, texts: readonly string[]): string {
  return plainSeries(words, 'items', texts);
}

function groupBy<T>(all: readonly T[], keyOf: (one: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) groups.set(keyOf(one), [...(groups.get(keyOf(one)) ?? []), one]);
  return groups;
}
