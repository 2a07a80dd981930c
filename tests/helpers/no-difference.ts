import type { TableDifference } from '../../src/model/difference.ts';

/** Two comparisons in which nothing differs, for tests to put one difference in. */
export const noDifference: TableDifference = {
  isSame: true,
  person: [],
  options: [],
  cells: [],
  cellCount: 0,
  horizon: [],
  courses: [],
  topics: [],
  cautions: [],
  conflicts: [],
  score: [],
  reasons: [],
  notes: [],
  records: [],
  elsewhere: [],
};
