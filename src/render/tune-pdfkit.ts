import { copyPath } from './copy-path.ts';
import { readRows } from './repeated-figures.ts';
import type { FigureRow } from './repeated-figures.ts';
import { RowStamps } from './stamp-rows.ts';
import type { StampPad } from './stamp-rows.ts';

/** The parts of pdfkit that are replaced on a document by quicker ones, and what these need. */
export interface Tuned extends StampPad {
  _font: object;
  _fontSize: number;
  font(source: object, size: number): unknown;
  path(data: string): unknown;
  fill(...rule: readonly unknown[]): unknown;
  stroke(...rule: readonly unknown[]): unknown;
  fillAndStroke(...rule: readonly unknown[]): unknown;
  addContent(operators: string): unknown;
}

/** Takes the repeated work out of a pdfkit document before it is painted on. */
export function tunePdfkit(pdf: Tuned): void {
  rememberFaces(pdf);
  stampFigures(pdf);
}

/** pdfkit opens and compares a face anew for every run of text; here each is opened once a document. */
function rememberFaces(pdf: Tuned): void {
  const openFace = pdf.font.bind(pdf);
  const opened = new Map<object, object>();
  pdf.font = (source, size) => {
    const known = opened.get(source);
    if (known === undefined) {
      openFace(source, size);
      opened.set(source, pdf._font);
      tellApart((pdf._font as Partial<Embedded>).subset);
    } else {
      pdf._font = known;
      pdf._fontSize = size;
    }
    return pdf;
  };
}

/** A glyph with what it is read as, which is not always the same; see shaping/shape-line.ts. */
interface ReadGlyph {
  readonly id: number;
  readonly text: string;
}

interface Embedded {
  readonly subset: {
    readonly glyphs: number[];
    includeGlyph(glyph: number | ReadGlyph): number;
  };
}

/**
 * A shaped glyph stands for other letters in another word (a part of a ligature, a vowel sign set before its consonant). A
 * glyph that is read in two ways goes into the file as two, each with its own entry in the table that text is copied by.
 */
function tellApart(subset: Embedded['subset'] | undefined): void {
  if (subset === undefined) return;
  const include = subset.includeGlyph.bind(subset);
  const known = new Map<string, number>();
  subset.includeGlyph = (glyph) => {
    if (typeof glyph === 'number') return include(glyph);
    const key = `${glyph.id} ${glyph.text}`;
    const code = known.get(key) ?? subset.glyphs.push(glyph.id) - 1;
    known.set(key, code);
    return code;
  };
}

/** From so many like figures on, their rows are stored once and used again. */
const worthStoring = 20;

/** Operators that paint a path (ISO 32000-1, table 60), by the method of pdfkit that writes them. */
const painters = [
  ['fill', 'f'],
  ['stroke', 'S'],
  ['fillAndStroke', 'B'],
] as const;

/**
 * A picture of 1,000 marks takes 8,000 path commands, which pdfkit would parse letter by letter and deflate again for
 * every picture. Rows of marks are held back until it is known how they are painted, then stamped.
 */
function stampFigures(pdf: Tuned): void {
  const parsePath = pdf.path.bind(pdf);
  const stamps = new RowStamps(pdf);
  let waiting: readonly FigureRow[] | undefined;
  pdf.path = (data) => {
    const copied = copyPath(data);
    if (copied !== undefined) return pdf.addContent(copied);
    const rows = readRows(data);
    if (rows === undefined || countFigures(rows) < worthStoring) return parsePath(data);
    waiting = rows;
    return pdf;
  };
  for (const [method, operator] of painters) {
    const paint = pdf[method].bind(pdf);
    pdf[method] = (...options) => {
      if (waiting === undefined) return paint(...options);
      pdf.addContent(stamps.use(waiting, operator));
      waiting = undefined;
      return pdf;
    };
  }
}

function countFigures(rows: readonly FigureRow[]): number {
  return rows.reduce((sum, { count }) => sum + count, 0);
}
