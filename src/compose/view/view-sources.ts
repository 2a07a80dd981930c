import type { KnownCell } from '../../model/comparison.ts';
import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { Markup } from '../../model/locale.ts';
import { roundShare, upperCount } from '../round-counts.ts';
import { knownCells } from './cells-shown.ts';
import type { ShownCell } from './cells-shown.ts';
import { numberStudies } from './number-studies.ts';
import type { StudyNumbers } from './number-studies.ts';
import { amountInWords } from './say-amount.ts';
import { peopleInWords } from './say-people.ts';
import { isShare, limitsInWords, shareInWords, sourceOf } from './say-share.ts';
import { isFirstMonth, lengthOf, sayLength, sayTime } from './say-time.ts';
import { isWeight, spreadInWords, weightInWords } from './say-weight.ts';
import type { Scene } from './scene.ts';
import { group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, lineOf, plainRow, rowShape } from './shared-shapes.ts';
import type { Line, Row } from './shared-shapes.ts';
import { otherSources } from './view-other-sources.ts';
import { figure, joined } from './words.ts';

export const sourcesShape = group({
  /** What the short words for kinds of studies mean, of those that occur. */
  designs: list(markup),
  certainties: list(markup),
  topics: list(group({ heading: text, rows: list(rowShape) })),
  /** Sources of the points about the person's health and of what undoing means. */
  points: list(markup),
  preferred: list(markup),
  studies: list(markup),
  release: list(markup),
});
export type SourcesView = Viewed<typeof sourcesShape>;

/** Every figure shown, with its people, time, design, certainty and study; then the studies in full. */
export function viewSources(scene: Scene): SourcesView {
  const cells = knownCells(scene.comparison);
  const numbers = numberStudies(
    scene,
    cells.map(({ cell }) => cell),
  );
  const designs = cells.map(
    ({ cell }) =>
      scene.records.get(cell.lead.record)?.design ?? scene.evidence.studies.get(cell.lead.study)?.design,
  );
  return {
    designs: explained(scene, 'designs', designs),
    certainties: explained(
      scene,
      'certainties',
      cells.map(({ cell }) => cell.lead.certainty),
    ),
    topics: groupByOutcome(scene, cells).map((same) => ({
      heading: headingOf(scene, same[0]),
      rows: same.flatMap((shown) => figureRow(scene, shown, numbers)),
    })),
    ...otherSources(scene, numbers),
    studies: numbers.citations(),
  };
}

/** "Registry: a register that counts …", for each code that occurs. */
function explained(
  scene: Scene,
  group: 'designs' | 'certainties',
  codes: readonly (string | undefined)[],
): readonly Markup[] {
  const meanings = group === 'designs' ? 'codes.designs' : 'codes.certainty';
  const found = [...new Set(codes.filter((code) => code !== undefined))].sort((a, b) => (a < b ? -1 : 1));
  return found.map((code) =>
    scene.words.say(`sources.explained.${group}`, {
      name: scene.words.plain(`sources.${group}.${code}`),
      meaning: scene.words.plain(`${meanings}.${code}`),
    }),
  );
}

type Shown = ShownCell<KnownCell>;

function groupByOutcome(scene: Scene, cells: readonly Shown[]): readonly (readonly Shown[])[] {
  const groups = new Map<string, Shown[]>();
  for (const shown of cells) {
    const { outcome, asked } = shown.cell;
    const key = `${outcome} ${lengthOf(asked) === null ? '' : sayLength(scene, asked)}`;
    groups.set(key, [...(groups.get(key) ?? []), shown]);
  }
  return [...groups.values()];
}

function headingOf(scene: Scene, shown: Shown | undefined): string {
  if (shown === undefined) return '';
  const { outcome, asked } = shown.cell;
  const name = scene.words.plain(`outcomes.${outcome}.name`);
  if (lengthOf(asked) === null) return name;
  const time = isFirstMonth(asked) ? scene.words.plain('codes.time.first_month') : sayLength(scene, asked);
  return scene.words.plain('sources.heading', { outcome: name, time });
}

function figureRow(scene: Scene, shown: Shown, numbers: StudyNumbers): readonly Row[] {
  const { cell } = shown;
  const option = scene.options.find(({ code }) => code === cell.option);
  const record = scene.records.get(cell.lead.record);
  if (option === undefined || record === undefined) return [];
  const value = joined(
    valueInWords(scene, shown),
    ...countedInWords(scene, cell, record),
    ...uncertainty(scene, shown),
  );
  const lines: readonly Line[] = [
    body(value),
    lineOf(
      'small',
      joined(peopleInWords(scene, record), howInWords(scene, cell, record), studyLine(scene, cell, numbers)),
    ),
  ];
  return [plainRow({ name: option.name, tag: option.tag }, lines)];
}

/** When, how and how surely it was measured. */
function howInWords(scene: Scene, cell: KnownCell, record: EvidenceRecord): Markup {
  const design = record.design ?? scene.evidence.studies.get(record.study)?.design ?? 'cohort';
  return joined(
    scene.words.say('sources.time', { time: sayTime(scene, cell.lead.horizon, cell.lead.timeBasis) }),
    scene.words.say('sources.design', { design: scene.words.plain(`sources.designs.${design}`) }),
    scene.words.say('sources.certainty', {
      certainty: scene.words.plain(`sources.certainties.${cell.lead.certainty}`),
    }),
  );
}

function valueInWords(scene: Scene, { cell, denominator }: Shown): Markup {
  if (isWeight(cell))
    return scene.words.say('sources.weight', {
      weight: figure(weightInWords(scene, cell.value.averageKg), sourceOf(cell)),
      twl: figure(scene.format.number(cell.value.twlPercent, 1), sourceOf(cell)),
    });
  if (!isShare(cell)) return scene.words.say('sources.value', { value: amountInWords(scene, cell) });
  const number = shareInWords(scene, roundShare(cell.value, denominator), denominator);
  return scene.words.say('sources.value', { value: figure(number, sourceOf(cell)) });
}

/** The count as published, so that a reader can find it again in the study. */
function countedInWords(scene: Scene, cell: KnownCell, record: EvidenceRecord): readonly Markup[] {
  const { words, format } = scene;
  if (isShare(cell) && cell.value.events !== undefined && cell.value.n !== undefined) {
    const counted = words.plain('common.share.counted', {
      events: format.number(cell.value.events),
      n: format.number(cell.value.n),
    });
    return [words.say('sources.counted', { counted: figure(counted, sourceOf(cell)) })];
  }
  const n = cell.lead.n ?? ('n' in record.value ? record.value.n : undefined);
  return n === undefined
    ? [words.say('sources.n_unknown')]
    : [words.say('sources.n', { n: format.number(n), count: n })];
}

function uncertainty(scene: Scene, { cell, denominator }: Shown): readonly Markup[] {
  if (isWeight(cell)) {
    const spread = spreadInWords(scene, cell);
    return spread === null ? [] : [spread];
  }
  if (!isShare(cell)) return [];
  const { interval, zero } = cell.value;
  const source = sourceOf(cell);
  const of = scene.format.number(denominator);
  if (zero !== undefined) {
    const upper = figure(
      scene.words.plain('common.share.count', {
        some: scene.format.number(upperCount(zero.upper, denominator)),
        of,
      }),
      source,
    );
    return [scene.words.say('common.share.upper', { upper })];
  }
  if (interval === undefined) return [scene.words.say('sources.no_interval')];
  return [
    scene.words.say('sources.interval', {
      range: figure(limitsInWords(scene, interval, denominator), source),
      of,
    }),
  ];
}

function studyLine(scene: Scene, cell: KnownCell, numbers: StudyNumbers): Markup {
  const study = scene.words.say('sources.study', { number: numbers.of(cell.lead.study) });
  const others = (cell.others?.records ?? []).flatMap((id) => scene.records.get(id)?.study ?? []);
  const unique = others.filter((id, index) => others.indexOf(id) === index);
  if (unique.length === 0) return study;
  const list = scene.format.list(
    unique.map((id) => String(numbers.of(id))),
    'and',
  );
  return joined(study, scene.words.say('sources.other_studies', { list, count: unique.length }));
}
