import { endsWide } from './wide-marks.ts';

const arabic = /\p{Script=Arabic}/u;
const chinese = /\p{Script=Han}/u;

/** The comma between two of a list, by the letters of the one before it. */
export function listComma(before: string): string {
  if (arabic.test(before)) return '، ';
  return chinese.test(before) ? '、' : ', ';
}

/** What stands between a label and its words: the colon of the language, after a mark of its own a space at most. */
export function afterLabel(label: string, colon: string): string {
  if (endsWide.test(label)) return '';
  return /\p{P}$/u.test(label) ? ' ' : colon;
}

/** Whether a comma shows decimals in one of these: none may stand between them, "45,9, 35" would be a number too many. */
export function hasDecimalComma(texts: readonly string[], decimalMark: string): boolean {
  return decimalMark === ',' && texts.some((text) => /\p{Nd},\p{Nd}/u.test(text));
}
