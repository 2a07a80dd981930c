import type { Direction } from './palette.ts';
import type { Box, Field } from './draw-path.ts';
import { HANDLE, circlePath, inset, point, roundedPath, short } from './draw-path.ts';

/** Marks stand in ten groups, five across and two down, whatever the denominator. */
const GROUPS_ACROSS = 5;

export interface PeopleGrid {
  readonly of: 100 | 1000;
  readonly marksAcross: number;
  readonly marksDown: number;
  readonly pitchAcross: number;
  readonly pitchDown: number;
  readonly markWidth: number;
  readonly markHeight: number;
  readonly groupGapAcross: number;
  readonly groupGapDown: number;
  readonly hollowStroke: number;
  readonly width: number;
  readonly height: number;
}

const HUNDRED: PeopleGrid = {
  of: 100,
  marksAcross: 5,
  marksDown: 2,
  pitchAcross: 6.32,
  pitchDown: 11.64,
  markWidth: 4.8,
  markHeight: 9.37,
  groupGapAcross: 5.5,
  groupGapDown: 4,
  hollowStroke: 0.6,
  width: 180,
  height: 48.3,
};

const THOUSAND: PeopleGrid = {
  of: 1000,
  marksAcross: 10,
  marksDown: 10,
  pitchAcross: 3.28,
  pitchDown: 3.28,
  markWidth: 2.62,
  markHeight: 2.62,
  groupGapAcross: 4,
  groupGapDown: 4,
  hollowStroke: 0.4,
  width: 180,
  height: 69.6,
};

export function gridOf(of: 100 | 1000): PeopleGrid {
  return of === 100 ? HUNDRED : THOUSAND;
}

export type MarkState = 'had' | 'half' | 'may' | 'not';

/** Where mark `index` (0 is the first filled) stands: group by group, each group row by row, from the start-top corner. */
export function placeMark(grid: PeopleGrid, index: number): Box {
  const inGroup = grid.marksAcross * grid.marksDown;
  const group = Math.floor(index / inGroup);
  const inside = index % inGroup;
  const groupAcross = group % GROUPS_ACROSS;
  const groupDown = Math.floor(group / GROUPS_ACROSS);
  const across = groupAcross * grid.marksAcross + (inside % grid.marksAcross);
  const down = groupDown * grid.marksDown + Math.floor(inside / grid.marksAcross);
  return {
    start: across * grid.pitchAcross + groupAcross * grid.groupGapAcross,
    top: down * grid.pitchDown + groupDown * grid.groupGapDown,
    width: grid.markWidth,
    height: grid.markHeight,
  };
}

export interface PeopleCounts {
  readonly of: 100 | 1000;
  readonly filled: number;
  readonly may: number;
  readonly half: boolean;
}

/** State of each mark in filling order: had, then one half mark, then may, then not. Counts are kept within the picture. */
export function markStates(counts: PeopleCounts): readonly MarkState[] {
  const filled = Math.min(Math.max(Math.round(counts.filled), 0), counts.of);
  const halves = counts.half && filled < counts.of ? 1 : 0;
  const may = filled + halves + Math.max(Math.round(counts.may), 0);
  return Array.from({ length: counts.of }, (_, index): MarkState => {
    if (index < filled) return 'had';
    if (index < filled + halves) return 'half';
    return index < may ? 'may' : 'not';
  });
}

/** One person: a round head and a leaf for a body. The box is w wide and 1.95 w high. */
export function personPath(field: Field, box: Box, stroke = 0): string {
  const outer = inset(box, stroke / 2);
  const w = outer.width;
  const head = circlePath(field, [outer.start + w / 2, outer.top + 0.31 * w], 0.31 * w);
  const bodyTop = 0.78 * w + stroke;
  const body: Box = {
    start: outer.start,
    top: outer.top + bodyTop,
    width: w,
    height: outer.height - bodyTop,
  };
  const corners = { startTop: 0.5 * w, endTop: 0.2 * w, endBottom: 0.46 * w };
  return head + roundedPath(field, body, corners);
}

/** A mark of a thousand, written in relative steps: a thousand of them in absolute ones would be twice as long. */
function smallLeafPath(field: Field, box: Box): string {
  const r = box.width / 2;
  const k = r * HANDLE;
  const turn = field.direction === 'rtl' ? -1 : 1;
  const step = (along: number, down: number): string => `${short(turn * along)} ${short(down)}`;
  return [
    `M${point(field, box.start, box.top + r)}`,
    `c${step(0, -k)} ${step(r - k, -r)} ${step(r, -r)}`,
    `l${step(r, 0)}l${step(0, r)}`,
    `c${step(0, k)} ${step(k - r, r)} ${step(-r, r)}`,
    `l${step(-r, 0)}z`,
  ].join('');
}

function markPath(field: Field, grid: PeopleGrid, box: Box): string {
  return grid.of === 100 ? personPath(field, box) : smallLeafPath(field, box);
}

function hollowPath(field: Field, grid: PeopleGrid, box: Box): string {
  if (grid.of === 100) return personPath(field, box, grid.hollowStroke);
  return smallLeafPath(field, inset(box, grid.hollowStroke / 2));
}

/** The lower end triangle of a mark: fewer than one. On a person it lies in the body. */
function halfPath(field: Field, grid: PeopleGrid, box: Box): string {
  const bodyTop = grid.of === 100 ? 0.78 * box.width : 0;
  const area: Box = { ...box, top: box.top + bodyTop, height: box.height - bodyTop };
  const r = area.width * (grid.of === 100 ? 0.46 : 0.5);
  const end = area.start + area.width;
  const bottom = area.top + area.height;
  const rest = r * (1 - HANDLE);
  const at = (offset: number, top: number): string => point(field, offset, top);
  const bend = `C${at(end, bottom - rest)} ${at(end - rest, bottom)} ${at(end - r, bottom)}`;
  return `M${at(end, area.top)}L${at(end, bottom - r)}${bend}L${at(area.start, bottom)}Z`;
}

/** Three paths for a whole picture, whatever the number of marks: solid ink, solid light, hollow. */
export interface PeoplePicture {
  readonly width: number;
  readonly height: number;
  readonly had: string;
  readonly not: string;
  readonly hollow: string;
  readonly hollowStroke: number;
}

export function drawPeople(counts: PeopleCounts, direction: Direction): PeoplePicture {
  const grid = gridOf(counts.of);
  const { width, height } = grid;
  return { width, height, ...drawMarks(markStates(counts), grid, { width, direction }) };
}

/** Marks in filling order from the first place of a grid, in a field of their own. */
function drawMarks(
  states: readonly MarkState[],
  grid: PeopleGrid,
  field: Field,
): Omit<PeoplePicture, 'width' | 'height'> {
  const paths = { had: [] as string[], not: [] as string[], hollow: [] as string[] };
  states.forEach((state, index) => {
    const box = placeMark(grid, index);
    if (state === 'had') paths.had.push(markPath(field, grid, box));
    if (state === 'not') paths.not.push(markPath(field, grid, box));
    if (state === 'may' || state === 'half') paths.hollow.push(hollowPath(field, grid, box));
    if (state === 'half') paths.had.push(halfPath(field, grid, box));
  });
  return {
    had: paths.had.join(''),
    not: paths.not.join(''),
    hollow: paths.hollow.join(''),
    hollowStroke: grid.hollowStroke,
  };
}

/** The marks of one group of ten, drawn from its own left and top edge, and where that lies in the picture. */
export interface PeopleGroup {
  readonly left: number;
  readonly top: number;
  /** What all its marks are, where they are alike: such groups look the same in every picture. */
  readonly alike: MarkState | undefined;
  readonly marks: Pick<PeoplePicture, 'had' | 'not' | 'hollow' | 'hollowStroke'>;
}

/** The picture of `drawPeople` by its ten groups, for renderers that can paint one group many times. */
export function drawPeopleGroups(counts: PeopleCounts, direction: Direction): readonly PeopleGroup[] {
  const grid = gridOf(counts.of);
  const inGroup = grid.marksAcross * grid.marksDown;
  const width = grid.marksAcross * grid.pitchAcross;
  const states = markStates(counts);
  return Array.from({ length: counts.of / inGroup }, (_, group): PeopleGroup => {
    const own = states.slice(group * inGroup, (group + 1) * inGroup);
    const { start, top } = placeMark(grid, group * inGroup);
    const [first] = own;
    return {
      left: direction === 'rtl' ? grid.width - start - width : start,
      top,
      alike: own.every((state) => state === first) ? first : undefined,
      marks: drawMarks(own, grid, { width, direction }),
    };
  });
}
