import { endsWide } from './wide-marks.ts';

const arabic = /\p{Script=Arabic}/u;
const chinese = /\p{Script=Han}/u;

/** The comma between two of a list, by the letters of the one before it. */
export function listComma(before: string): string {
  if (arabic.test(before)) return '، ';
  return chinese.test(before) ? '、' : ', ';
}

/** What stands between a label and its words: after a label with a mark of its own a space at most. */
export function afterLabel(label: string): string {
  if (endsWide.test(label)) return '';
  if (/\p{P}$/u.test(label)) return ' ';
  return chinese.test(label) ? '：' : ': ';
}
