import type { Inline, Paragraph, Strip, StripRow } from '../model/document.ts';
import { endsWide } from '../model/wide-marks.ts';

/**
 * A strip as large print has it: the axis is read from above, on every page, and each row says its weight in all units.
 * Where nothing is known no frame takes the room of a picture, and what is said under a figure runs on in one paragraph.
 * Rows without a picture have no axis: it stands right above the bars that are read from it, again where other rows
 * stand between.
 */
export function reflowStrip({ axis, ...strip }: Strip): readonly Strip[] {
  const rows =
    strip.layout === 'text' || strip.layout === 'way-back' ? strip.rows : strip.rows.map(reflowRow);
  if (axis === undefined) return [{ ...strip, rows }];
  const { min, max, today, top } = axis;
  const above = { axis: { min, max, today, top } };
  if (rows.length === 0) return [{ ...strip, rows, ...above }];
  return runsOf(rows).map((run) => ({ ...strip, rows: run, ...(isPictured(run[0]) ? above : {}) }));
}

function isPictured(row: StripRow | undefined): boolean {
  return row?.picture !== undefined;
}

/** Rows with a picture that follow each other, and rows without. */
function runsOf(rows: readonly StripRow[]): readonly (readonly StripRow[])[] {
  const runs: StripRow[][] = [];
  rows.forEach((row, index) => {
    const goesOn = index > 0 && isPictured(rows[index - 1]) === isPictured(row);
    if (goesOn) runs.at(-1)?.push(row);
    else runs.push([row]);
  });
  return runs;
}

function reflowRow({ picture, ...row }: StripRow): StripRow {
  if (picture?.type === 'unknown') return { ...row, words: runOn(row.words.map(asSentence)) };
  return { ...row, ...(picture === undefined ? {} : { picture }), words: runOn(row.words) };
}

/** "Not known" begins the sentence that goes on with why. */
function asSentence(paragraph: Paragraph): Paragraph {
  if (paragraph.role !== 'number') return paragraph;
  return { ...paragraph, role: 'body', inlines: paragraph.inlines.map((run) => ({ ...run, bold: true })) };
}

/** Short sentences that follow each other, in one paragraph. What the gate looks for by itself stays by itself. */
function runOn(words: readonly Paragraph[]): readonly Paragraph[] {
  return words.reduce<readonly Paragraph[]>((done, next) => {
    const last = done.at(-1);
    if (last === undefined || !isSentence(last) || !isSentence(next)) return [...done, next];
    const inlines = [...last.inlines, ...spaceAfter(last), ...next.inlines];
    return [...done.slice(0, -1), { ...last, role: 'body', inlines }];
  }, []);
}

function isSentence({ role, duty }: Paragraph): boolean {
  return (role === 'body' || role === 'small') && duty === undefined;
}

function spaceAfter({ inlines }: Paragraph): readonly Inline[] {
  return endsWide.test(inlines.at(-1)?.value ?? '') ? [] : [{ type: 'text', value: ' ' }];
}
