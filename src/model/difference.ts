import type {
  CautionConflict,
  CautionHit,
  Cell,
  IndicationNote,
  OptionColumn,
  OutcomeCode,
  TopicId,
  WeightCourse,
} from './comparison.ts';
import type { MortalityScore } from './mortality-score.ts';
import type { ReasonCheck } from './reason-check.ts';

/** Something that is in one table, in the other, or in both and not the same. Null: not in that table. */
export interface Change<T> {
  readonly id: string;
  readonly before: T | null;
  readonly after: T | null;
}

export interface CellChange extends Change<Cell> {
  /**
   * Properties of the cell that differ, those of its lead one by one: `value`, `lead.record`, `setAside`. Empty where
   * the cell is in one table only.
   */
  readonly what: readonly string[];
  /** Of which case no page shows the row: the cell on that side was worked out to tell why. */
  readonly hidden?: 'before' | 'after';
}

/** How a topic's table is drawn, apart from its rows. */
export interface TopicFrame {
  readonly denominator: number;
  /** The outcome drawn as a picture. */
  readonly picture: OutcomeCode | null;
}

/** What differs between two comparisons; every list is empty where nothing does. */
export interface TableDifference {
  readonly isSame: boolean;
  /** Properties of the person; conditions in any order. */
  readonly person: readonly Change<unknown>[];
  /** Columns by option, without the stay, which is a cell. */
  readonly options: readonly Change<Omit<OptionColumn, 'stay'>>[];
  readonly cells: readonly CellChange[];
  /** Cells in either table. */
  readonly cellCount: number;
  /** `main`: months of the main horizon. */
  readonly horizon: readonly Change<number>[];
  /** By option and study. */
  readonly courses: readonly Change<WeightCourse>[];
  readonly topics: readonly (Change<TopicFrame> & { readonly id: TopicId })[];
  readonly cautions: readonly Change<CautionHit>[];
  /** By the caution that points somewhere, and where it points. */
  readonly conflicts: readonly Change<CautionConflict>[];
  /** `mortality`: the old score. */
  readonly score: readonly Change<MortalityScore>[];
  /** Coded reasons of the surgeon, as far as the case and the evidence bear them out. */
  readonly reasons: readonly Change<ReasonCheck>[];
  readonly notes: readonly Change<IndicationNote>[];
  /** Records that a patient page prints in one case and not in the other. */
  readonly records: readonly Change<string>[];
  /** Whatever else of the tables differs, by name. */
  readonly elsewhere: readonly string[];
}
