import type { Label, NodeBase } from './paragraph.ts';
import { labelRuns, labelText } from './text-piece.ts';

/** Columns of a week. */
export const daysInWeek = 7;
/** Width of a day's column on a patient's page, in points. */
const dayWidth = 492 / daysInWeek;

/** Patterns of the ribbon, from thin to solid as the food is. */
export const ribbonPatterns = ['dots', 'lines', 'slant', 'light', 'mid'] as const;
export type RibbonPattern = (typeof ribbonPatterns)[number];

/** Weeks from the day of the operation, with what to eat as a ribbon at the foot of each. */
export interface Calendar extends NodeBase {
  readonly type: 'calendar';
  /** Seven heads; the first column is the day that the week of the locale begins with. */
  readonly weekdays: readonly string[];
  /** Seven days each; null for a day before the first or after the last. */
  readonly weeks: readonly (readonly (CalendarDay | null)[])[];
  readonly stages: readonly CalendarStage[];
  /** How to read it where its days are listed, in place of the words over the weeks. */
  readonly listed: string;
}

export interface CalendarDay extends NodeBase {
  /** As printed: the day of the month, on the first day and on the first of a month with its month. */
  readonly label: string;
  /** The whole date with its weekday, where days are listed. */
  readonly dated: string;
  /** A day to come in. */
  readonly comesIn: boolean;
  /** What has room in a week: at most two. */
  readonly notes: readonly string[];
  /** Everything that happens or changes on this day; `comesIn`: what the person comes in for. */
  readonly events: readonly { readonly words: string; readonly comesIn: boolean }[];
  /** Index of its stage. */
  readonly stage?: number;
}

export interface CalendarStage extends NodeBase {
  readonly pattern: RibbonPattern;
  readonly label: Label;
  /** The stage with its dates, for those who hear the page; printed where the label has no room. */
  readonly dated: Label;
}

/** The ribbon of one stage within one week. */
export interface RibbonPiece {
  readonly stage: CalendarStage;
  /** Of the stage, from 0. */
  readonly index: number;
  /** First column, from 0. */
  readonly column: number;
  readonly days: number;
  /** Whether the stage begins here; else it goes on from the week before. */
  readonly begins: boolean;
  /** Whether its label is printed: left out where the piece is shorter. */
  readonly labelled: boolean;
}

/** Pieces of the ribbon at the foot of a week, in order; days without a stage have none. */
export function ribbonPieces(calendar: Calendar, week: number): readonly RibbonPiece[] {
  const days = calendar.weeks[week] ?? [];
  return days.flatMap((day, column): readonly RibbonPiece[] => {
    const index = day?.stage;
    const stage = index === undefined ? undefined : calendar.stages[index];
    // A piece is made on its first day.
    if (index === undefined || stage === undefined || days[column - 1]?.stage === index) return [];
    const end = days.findIndex((later, at) => at > column && later?.stage !== index);
    const length = (end === -1 ? days.length : end) - column;
    const begins = !lasted(calendar, { week, column, index });
    return [
      {
        stage,
        index,
        column,
        days: length,
        begins,
        labelled: ribbonLabelFits(labelText(stage.label), length),
      },
    ];
  });
}

interface Spot {
  readonly week: number;
  readonly column: number;
  readonly index: number;
}

/** Whether the day before is of the same stage. */
function lasted({ weeks }: Calendar, { week, column, index }: Spot): boolean {
  const before = column > 0 ? weeks[week]?.[column - 1] : weeks[week - 1]?.[daysInWeek - 1];
  return before?.stage === index;
}

/** Stages whose label fits none of their pieces: their names are printed above the calendar. */
export function stagesWithoutLabel(calendar: Calendar): readonly CalendarStage[] {
  const pieces = calendar.weeks.flatMap((_, week) => ribbonPieces(calendar, week));
  return calendar.stages.filter(
    (_, index) => !pieces.some((piece) => piece.index === index && piece.labelled),
  );
}

/** What is said of a stage to those who hear the page. */
export interface SaidOfStage {
  readonly text: string;
  /** Set where it is in another language than the document. */
  readonly language?: string;
}

/** A stage with its dates in one text, or in one for each language: a text that stands for a picture has one alone. */
export function saidOfStage({ dated }: CalendarStage): readonly SaidOfStage[] {
  return labelRuns(dated).flatMap(({ value, ...run }) => {
    // What joins a name to its dates is said by the pause between two texts.
    const text = value.replace(/^[\p{P}\s]+|\s+$/gu, '');
    const language = run.type === 'text' ? run.language : undefined;
    return text === '' ? [] : [{ text, ...(language === undefined ? {} : { language }) }];
  });
}

/** White before the plate of a label, within it on both sides, and ribbon left to be seen after it. In points. */
export const ribbonLabel = { before: 5, side: 5, after: 3, size: 12 } as const;

/**
 * Whether a label fits a piece of so many days. Renderers and the read-back gate must agree on it, so it is judged here,
 * by widths that no letter of the typeface goes over.
 */
export function ribbonLabelFits(label: string, days: number): boolean {
  const { before, side, after, size } = ribbonLabel;
  const room = days * dayWidth - before - 2 * side - after;
  const widest = Array.from(label.normalize('NFD'), widestLetter).reduce((sum, width) => sum + width, 0);
  return widest * size <= room;
}

/** Kinds of letters and the widest of each in semibold, as a share of the type size. The first that fits counts. */
const letterWidths: readonly (readonly [RegExp, number])[] = [
  // A horn widens its letter, a caron beside a tall letter too; other marks stand above or below.
  [/\u031b/u, 0.05],
  [/\u030c/u, 0.12],
  [/\p{Mn}/u, 0],
  [/[ ijl.,;:!'·]/u, 0.3],
  [/[frtI()-]/u, 0.45],
  [/[mwMW]/u, 0.9],
  [/[a-z0-9]/u, 0.6],
  [/[A-Z]/u, 0.7],
];

/** Greatest width of a letter of text type, as a share of the type size. */
export function widestLetter(letter: string): number {
  return letterWidths.find(([kind]) => kind.test(letter))?.[1] ?? 1.2;
}
