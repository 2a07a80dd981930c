import type { CellValue } from '../../model/comparison-value.ts';
import type { Markup } from '../../model/locale.ts';
import type {
  FindingOf,
  PairFinding,
  PublishedContrast,
  ReasonCheck,
  ReasonFinding,
} from '../../model/reason-check.ts';
import { cautionStatement } from '../../model/statement.ts';
import { outcomeName } from './clinician-ids.ts';
import { withUnit } from './published-figure.ts';
import { sayLength } from './say-time.ts';
import type { Scene } from './scene.ts';
import { figure, joined, plainSeries, standingOn } from './words.ts';

/** Why a reason is borne out or not: what decided, or where nothing did all that was looked at; then the records. */
export function whyOfReason(scene: Scene, { findings, records }: ReasonCheck): Markup {
  const telling = findings.filter(({ means }) => means !== 'nothing');
  const said = (telling.length > 0 ? telling : findings).flatMap((finding) => sayFinding(scene, finding));
  return joined(...said, ...recordList(scene, records));
}

/** Ids of the evidence in brackets, as everywhere on the sheet. */
function recordList({ words }: Scene, ids: readonly string[]): readonly Markup[] {
  const list = plainSeries(words, 'items', ids);
  return list === '' ? [] : [words.say('reason-checks.records', { list })];
}

function sayFinding(scene: Scene, finding: ReasonFinding): readonly Markup[] {
  const say = (key: string, variables = {}): Markup => scene.words.say(`reason-checks.${key}`, variables);
  switch (finding.find) {
    case 'not-in-case':
      return [say(`absent.${finding.needs}`)];
    case 'in-case':
      return [say('in_case')];
    case 'compare':
      return sayPairs(scene, finding);
    case 'recover':
      return [sayRecover(scene, finding)];
    case 'undo':
      return [say(`undo.${finding.possible}`)];
    case 'under-study':
      return [say(`standing.${finding.maturity}`), ...recordList(scene, finding.entries)];
    case 'cautions':
      return [sayCautions(scene, `cautions.${finding.said}`, { cautions: finding.cautions })];
    case 'fewer-cautions':
      return sayIllness(scene, finding);
    case 'wishes':
      return sayWishes(scene, finding);
  }
}

/** What is clear, option by option; those of which nothing is known together. */
function sayPairs(scene: Scene, { pairs, has }: FindingOf<'compare'>): readonly Markup[] {
  if (pairs.length === 0) return [scene.words.say('reason-checks.pair.nothing')];
  const unknown = pairs.filter(({ result }) => result === 'unknown').map(({ other }) => inText(scene, other));
  return [
    ...pairs.flatMap((pair) => (pair.result === 'unknown' ? [] : [sayPair(scene, pair, has)])),
    ...(unknown.length === 0
      ? []
      : [scene.words.say('reason-checks.pair.unknown', { options: scene.format.list(unknown, 'or') })]),
  ];
}

type KnownPair = Exclude<PairFinding, { readonly result: 'unknown' }>;

function sayPair(scene: Scene, pair: KnownPair, has: 'fewer' | 'more'): Markup {
  const opposite = has === 'fewer' ? 'more' : 'fewer';
  const how = pair.result === 'unclear' ? 'unclear' : pair.result === 'yes' ? has : opposite;
  const option = inText(scene, pair.other);
  return scene.words.say(`reason-checks.pair.${how}`, { option, shown: sayShown(scene, pair) });
}

/** "Leak, 30 days, 0.20% against 0.80% in one study". */
function sayShown(scene: Scene, pair: KnownPair): Markup {
  const base = { outcome: outcomeName(scene, pair.outcome), time: sayLength(scene, pair.asked) };
  switch (pair.basis) {
    case 'impossible':
      return scene.words.say('reason-checks.shown.impossible', { outcome: base.outcome });
    case 'contrast':
      return scene.words.say('reason-checks.shown.contrast', {
        ...base,
        measure: scene.words.plain(`reason-checks.measures.${pair.contrast.measure}`),
        figure: figure(sayContrast(scene, pair.contrast), sourceOf(pair)),
        of: inText(scene, pair.contrast.of),
      });
    case 'one-study':
    case 'two-studies': {
      const [first = '', second = ''] = pair.records;
      return scene.words.say(`reason-checks.shown.${pair.basis}`, {
        ...base,
        mine: figure(sayValue(scene, pair.mine), { ...sourceOf(pair), records: [first] }),
        theirs: figure(sayValue(scene, pair.theirs), { ...sourceOf(pair), records: [second] }),
      });
    }
  }
}

function sourceOf({ other, outcome, records }: KnownPair): {
  readonly cell: string;
  readonly records: readonly string[];
} {
  return { cell: `${other}/${outcome}/reason`, records };
}

function sayContrast({ words, format }: Scene, { estimate, low, high }: PublishedContrast): string {
  const range = format.range(format.number(low), format.number(high));
  return words.plain('reason-checks.contrast', { estimate: format.number(estimate), range });
}

/** A share in percent, with a place more where it is small; a weight in kilograms. */
function sayValue(scene: Scene, value: CellValue): string {
  const { words, format } = scene;
  switch (value.kind) {
    case 'proportion': {
      if (value.zero !== undefined)
        return words.plain('reason-checks.none_of', { n: format.number(value.zero.n) });
      const percent = value.value * 100;
      const decimals = percent < 1 ? 2 : percent < 10 ? 1 : 0;
      return words.plain('reason-checks.percent', { n: format.number(percent, decimals) });
    }
    case 'weight':
      return words.plain('reason-checks.kg', { n: format.number(value.averageKg, 1) });
    case 'amount':
      return withUnit(scene, value.value, value.unit);
  }
}

function sayRecover(scene: Scene, { own, untreated, outcome, asked }: FindingOf<'recover'>): Markup {
  if (untreated !== null) return sayPair(scene, untreated, 'more');
  const name = outcomeName(scene, outcome);
  if (own === null) return scene.words.say('reason-checks.recover.unknown', { outcome: name });
  const source = { cell: `${outcome}/reason`, records: [own.record] };
  return scene.words.say('reason-checks.recover.alone', {
    outcome: name,
    time: sayLength(scene, asked),
    figure: figure(sayValue(scene, own.value), source),
  });
}

function sayIllness(scene: Scene, { mine, others }: FindingOf<'fewer-cautions'>): readonly Markup[] {
  const { words } = scene;
  return [
    mine.length === 0
      ? words.say('reason-checks.illness.here_none')
      : sayCautions(scene, 'illness.here', { cautions: mine }),
    ...others
      .filter(({ cautions }) => cautions.length > 0)
      .map(({ option, cautions }) =>
        sayCautions(scene, 'illness.there', { cautions, option: inText(scene, option) }),
      ),
  ];
}

interface Named {
  readonly cautions: readonly string[];
  readonly option?: string;
}

/** A line that names cautions, tied to their rows. */
function sayCautions(scene: Scene, key: string, { cautions, option = '' }: Named): Markup {
  const { words, comparison } = scene;
  // Those about choices of this case stand in the table of cautions, where a reader looks for them; others do not.
  const told = cautions.map((id) =>
    comparison.cautions.some((hit) => hit.id === id)
      ? id
      : words.plain('reason-checks.cautions.elsewhere', { id }),
  );
  const line = words.say(`reason-checks.${key}`, { ids: plainSeries(words, 'items', told), option });
  return standingOn(cautions.map(cautionStatement), line);
}

function sayWishes(scene: Scene, { met, unmet, open, ownWords }: FindingOf<'wishes'>): readonly Markup[] {
  const { words } = scene;
  return [
    ...Object.entries({ met, unmet, open })
      .filter(([, codes]) => codes.length > 0)
      .map(([state, codes]) => {
        const list = joined(...codes.map((code) => words.say(`codes.matters.${code}`)));
        return words.say(`reason-checks.wishes.${state}`, { list });
      }),
    ...(ownWords === 0 ? [] : [words.say('reason-checks.wishes.own', { count: ownWords })]),
  ];
}

/** Doing nothing more may be weighed against without being an option of the case. */
function inText({ words }: Scene, option: string): string {
  return words.plain(`options.${option}.in_text`);
}
