import type { Block } from '../../model/document.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';

export type HeadingTag = 'H1' | 'H2' | 'H3';

/** What a block knows of the place it stands in. */
export interface Place {
  readonly theme: Theme;
  /** Prefix of the keys of its units. */
  readonly key: string;
  /** The word after a heading that is repeated. */
  readonly continued: string;
  /** The heading above, to be repeated where the block goes on. */
  readonly title?: string;
  /** That heading is a small one, and is repeated as such. */
  readonly smallTitle?: boolean;
  /** The question over a small heading, to be repeated above it. */
  readonly question?: string;
  /** Tag of a heading of this level here: levels are never skipped, whatever the template does. */
  readonly headingTag: (level: 1 | 2 | 3) => HeadingTag;
}

export type OfType<T extends Block['type']> = Extract<Block, { readonly type: T }>;

/** Headings counted as they come: one is never more than one level below the last. */
export function countHeadings(): Place['headingTag'] {
  let last = 0;
  return (level) => {
    last = Math.min(level, last + 1);
    return last === 1 ? 'H1' : last === 2 ? 'H2' : 'H3';
  };
}

/** A block that is one unit. */
export function singleUnit(block: Block, place: Place, element: Unit['element']): readonly Unit[] {
  return [{ key: place.key, origin: block.origin, element, gapBefore: 0, keepWithNext: false }];
}

/** Rows of one block that stays whole if it fits a page; else rather at least two rows stand on either side of a break. */
export function groupRows(units: readonly Unit[], group: string): readonly Unit[] {
  const last = units.length - 1;
  return units.map((unit, index) => ({
    ...unit,
    group,
    ...(last > 0 && (index === 0 || index === last - 1) ? { keepsRow: true } : {}),
  }));
}

/**
 * The same for rows of which two may not fit a page together with their heading: where `high`, one row stands with the
 * heading, and no row is bound to another.
 */
export function groupHighRows(units: readonly Unit[], group: string, high: boolean): readonly Unit[] {
  return high ? units.map((unit) => ({ ...unit, group })) : groupRows(units, group);
}

/** Binds the last unit of a list to what follows. */
export function keepLast(units: readonly Unit[]): readonly Unit[] {
  return units.map((unit, index) => (index === units.length - 1 ? { ...unit, keepWithNext: true } : unit));
}
