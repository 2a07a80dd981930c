/** Way in which a page is read; pictures that have a direction turn with it. */
export type Direction = 'ltr' | 'rtl';

/** Text and thin lines are pure black: an office printer screens any other dark and its edges go woolly. */
export const palette = {
  ink: '#000000',
  line: '#595959',
  leaf: '#3B4A22',
  mid: '#8A9378',
  light: '#B1B8A3',
  grid: '#C2C6B6',
  pale: '#F4F5EE',
  white: '#FFFFFF',
} as const;

/** Width of the column in which the pictures of a strip stand, in points. */
export const pictureColumn = 192;
