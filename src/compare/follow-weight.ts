import type { KnownCell, OutcomeRow, WeightCourse, WeightPoint } from '../model/comparison.ts';
import { writeDose } from '../model/medicine-dose.ts';
import type { Assessed } from './build-cell.ts';
import { monthsOf } from './weigh-time.ts';

/**
 * The course of an option's weight in one study, of a medicine on one dose: that of the main figure if it gives another
 * time too, so that page and picture agree. Without a main figure, the study with the most times; of equals the one
 * that leads first.
 */
export function followWeight(
  option: string,
  assessed: readonly Assessed[],
  main: OutcomeRow,
): WeightCourse | undefined {
  const points = assessed.flatMap(pointsOf);
  const lead = main.cells.find(
    (cell): cell is KnownCell => cell.option === option && cell.state === 'known',
  )?.lead;
  const followed =
    lead === undefined ? points : points.filter(isOneCourse({ study: lead.study, dose: lead.dose }));
  const starts = followed.filter((point, index) => followed.findIndex(isOneCourse(point)) === index);
  const courses = starts.map((start) => ({
    option,
    study: start.study,
    points: takeOf(followed.filter(isOneCourse(start)), lead?.record),
  }));
  const longest = Math.max(1, ...courses.map(({ points: taken }) => taken.length));
  return longest < 2 ? undefined : courses.find(({ points: taken }) => taken.length === longest);
}

interface Track {
  readonly study: string;
  /** As `writeDose` says it. */
  readonly dose: string | undefined;
}

type StudyPoint = WeightPoint & Track;

function isOneCourse({ study, dose }: Track): (other: Track) => boolean {
  return (other) => other.study === study && other.dose === dose;
}

function pointsOf({ desk, outcome, window, candidates }: Assessed): readonly StudyPoint[] {
  const cell = `${desk.code}/${outcome}/${String(window.asked.months ?? 0)}m`;
  return candidates.flatMap(({ value, record, study }) => {
    const months = monthsOf(record.time);
    if (value.kind !== 'weight' || value.computed || months === undefined) return [];
    const dose = record.dose && writeDose(record.dose);
    return [{ months, value, record: record.id, cell, study: study.id, dose }];
  });
}

/** One point a time, earliest first; of two at one time the record that leads, else the first. */
function takeOf(own: readonly StudyPoint[], lead: string | undefined): readonly WeightPoint[] {
  const times = [...new Set(own.map(({ months }) => months))].sort((a, b) => a - b);
  return times.flatMap((time) => {
    const same = own.filter(({ months }) => months === time);
    const point = same.find(({ record }) => record === lead) ?? same[0];
    if (point === undefined) return [];
    const { months, value, record, cell } = point;
    return [{ months, value, record, cell }];
  });
}
