import type { KnownCell } from '../../model/comparison.ts';
import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { Markup } from '../../model/locale.ts';
import { roundShare, upperCount } from '../round-counts.ts';
import type { ShownCell } from './cells-shown.ts';
import { sourcedCells } from './list-sourced-cells.ts';
import { numberStudies } from './number-studies.ts';
import type { StudyNumbers } from './number-studies.ts';
import { amountInWords } from './say-amount.ts';
import { doseInWords } from './say-dose.ts';
import { outcomeMeanings } from './say-meanings.ts';
import { peopleInWords } from './say-people.ts';
import { differsByBmi, sayNear } from './say-reason.ts';
import { isShare, limitsInWords, shareInWords, sourceOf } from './say-share.ts';
import { isFirstMonth, lengthOf, otherTime, sayLength } from './say-time.ts';
import { computedInWords, isWeight, spreadInWords, weightInWords } from './say-weight.ts';
import type { Scene } from './scene.ts';
import { group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { lineOf, plainRow, rowShape } from './shared-shapes.ts';
import type { Row } from './shared-shapes.ts';
import { otherSources } from './view-other-sources.ts';
import { readingShapes, viewReadings } from './view-reading.ts';
import { afterColon, asMarkup, figure, joined, sentence, series } from './words.ts';

export const sourcesShape = group({
  /** What the short words for kinds of studies mean, of those that occur. */
  designs: list(markup),
  certainties: list(markup),
  /** What was counted, where its name does not say it. */
  outcomes: list(markup),
  topics: list(group({ heading: text, who: markup, rows: list(rowShape) })),
  /** Sources of the points about the person's health and of what undoing means. */
  points: list(markup),
  preferred: list(markup),
  studies: list(markup),
  release: list(markup),
  ...readingShapes,
});
export type SourcesView = Viewed<typeof sourcesShape>;

/** Every figure shown, with its people, time, design, certainty and study; then the studies in full. */
export function viewSources(scene: Scene): SourcesView {
  const cells = sourcedCells(scene);
  const numbers = numberStudies(
    scene,
    cells.map(({ cell }) => cell),
  );
  const designs = cells
    .map(
      ({ cell }) =>
        scene.records.get(cell.lead.record)?.design ?? scene.evidence.studies.get(cell.lead.study)?.design,
    )
    .filter((design) => design !== undefined)
    .toSorted();
  const certainties = cells
    .map(({ cell }) => cell.lead.certainty)
    .toSorted((a, b) => degrees.indexOf(a) - degrees.indexOf(b));
  return {
    designs: explained(scene, 'designs', designs),
    certainties: explained(scene, 'certainties', certainties),
    outcomes: outcomeMeanings(
      scene,
      cells.filter(({ cell }) => !isWeight(cell)).map(({ cell }) => cell.outcome),
    ),
    topics: optionTopics(scene, cells, numbers),
    ...otherSources(scene, numbers),
    studies: numbers.citations(),
    ...viewReadings(scene),
  };
}

/** How sure a figure is, the surest first. */
const degrees: readonly string[] = ['high', 'moderate', 'low', 'very-low'];

/** "Registry: a register that counts …", for each code that occurs, in the order given. */
function explained(
  scene: Scene,
  group: 'designs' | 'certainties',
  codes: readonly string[],
): readonly Markup[] {
  const meanings = group === 'designs' ? 'codes.designs' : 'codes.certainty';
  return [...new Set(codes)].map((code) =>
    scene.words.say(`sources.explained.${group}`, {
      name: scene.words.plain(`sources.${group}.${code}`),
      meaning: afterColon(scene.words, asMarkup(scene.words.plain(`${meanings}.${code}`))),
    }),
  );
}

type Shown = ShownCell<KnownCell>;

/** The figures of each option, an outcome a row, under who was measured. */
function optionTopics(scene: Scene, cells: readonly Shown[], numbers: StudyNumbers): SourcesView['topics'] {
  return scene.options
    .map((option) => ({
      heading: option.name,
      who: scene.words.say('sources.who', {
        people: scene.words.plain(`codes.indications.${option.column.indication}`),
      }),
      rows: [
        ...cells
          .filter(({ cell }) => cell.option === option.code)
          .flatMap((shown) => figureRow(scene, shown, numbers)),
        ...courseRow(scene, option.code, numbers),
      ],
    }))
    .filter(({ rows }) => rows.length > 0);
}

/** The points of the weight line, all of one study. */
function courseRow(scene: Scene, code: string, numbers: StudyNumbers): readonly Row[] {
  const course = scene.comparison.weight.courses.find(({ option }) => option === code);
  if (course === undefined) return [];
  const points = course.points.map(({ months, value, record, cell }) =>
    scene.words.say('common.weight.at_time', {
      time: sayLength(scene, { months }),
      weight: figure(weightInWords(scene, value.averageKg), { cell, records: [record] }),
    }),
  );
  const study = scene.words.say('sources.study', { number: numbers.of(course.study) });
  const said = sentence(scene.words, series(scene.words, 'clauses', points));
  return [
    plainRow({ name: scene.words.plain('sources.course'), tag: '' }, [lineOf('small', joined(said, study))]),
  ];
}

function rowName(scene: Scene, { cell: { outcome, asked } }: Shown): string {
  const name = scene.words.plain(`outcomes.${outcome}.name`);
  if (lengthOf(asked) === null) return name;
  const time = isFirstMonth(asked) ? scene.words.plain('codes.time.first_month') : sayLength(scene, asked);
  return scene.words.plain('common.table.head', { outcome: name, time });
}

function figureRow(scene: Scene, shown: Shown, numbers: StudyNumbers): readonly Row[] {
  const { cell } = shown;
  const record = scene.records.get(cell.lead.record);
  if (record === undefined) return [];
  const value = joined(
    valueInWords(scene, shown),
    ...countedInWords(scene, cell, record),
    ...uncertainty(scene, shown),
  );
  const near = differsByBmi(cell) ? null : sayNear(scene, cell);
  const computed = isWeight(cell) ? computedInWords(scene, cell) : null;
  const dose = doseInWords(scene, cell);
  const details = joined(
    ...[computed, near].filter((said) => said !== null),
    peopleInWords(scene, record),
    ...(dose === null ? [] : [dose]),
    howInWords(scene, cell, record),
    studyLine(scene, cell, numbers),
  );
  return [plainRow({ name: rowName(scene, shown), tag: '' }, [lineOf('small', joined(value, details))])];
}

/** How and how surely it was measured, and when, where the name of the row does not say it. */
function howInWords(scene: Scene, cell: KnownCell, record: EvidenceRecord): Markup {
  const design = record.design ?? scene.evidence.studies.get(record.study)?.design ?? 'cohort';
  const time = otherTime(scene, cell.asked, cell.lead);
  return joined(
    ...(time === null ? [] : [scene.words.say('sources.time', { time })]),
    scene.words.say('sources.how_made', {
      design: scene.words.plain(`sources.designs.${design}`),
      certainty: scene.words.plain(`sources.certainties.${cell.lead.certainty}`),
    }),
  );
}

function valueInWords(scene: Scene, { cell, denominator }: Shown): Markup {
  if (isWeight(cell)) {
    const { averageKg, twlPercent } = cell.value;
    return scene.words.say(twlPercent < 0 ? 'sources.weight_gained' : 'sources.weight', {
      weight: figure(weightInWords(scene, averageKg), sourceOf(cell)),
      twl: figure(scene.format.number(Math.abs(twlPercent), 1), sourceOf(cell)),
    });
  }
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
    unique
      .map((id) => numbers.of(id))
      .toSorted((a, b) => a - b)
      .map(String),
    'and',
  );
  const converted = (cell.others?.records ?? []).some((id) => isConverted(scene.records.get(id)));
  return joined(
    study,
    scene.words.say('sources.other_studies', { list, count: unique.length }),
    ...(converted ? [scene.words.say('sources.others_converted')] : []),
  );
}

/** Weights that were not published in percent of total weight are worked out for the person. */
function isConverted(record: EvidenceRecord | undefined): boolean {
  return record?.kind === 'weight' && record.value.metric !== 'TWL';
}
