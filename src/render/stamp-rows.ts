import { drawRow } from './repeated-figures.ts';
import type { FigureRow } from './repeated-figures.ts';

/** What is used of a pdfkit document. */
export interface StampPad {
  readonly page: { readonly xobjects: Record<string, unknown> };
  ref(data: Readonly<Record<string, unknown>>): { end(content: string): unknown };
}

/** Room for the line around a figure, in points. */
const strokeRoom = 2;

interface Stamp {
  readonly name: string;
  readonly reference: unknown;
}

/** Rows of figures that are stored once a document and used wherever they stand (ISO 32000-1, 8.10, form XObjects). */
export class RowStamps {
  private readonly pad: StampPad;
  private readonly stamps = new Map<string, Stamp>();

  constructor(pad: StampPad) {
    this.pad = pad;
  }

  /** Operators that paint the rows on the current page; colour and line width are those of the place of use. */
  use(rows: readonly FigureRow[], painter: string): string {
    let [left, top] = [0, 0];
    const lines = rows.map((row) => {
      const { name, reference } = this.stampOf(row, painter);
      this.pad.page.xobjects[name] = reference;
      const move = `1 0 0 1 ${short(row.x - left)} ${short(row.y - top)} cm`;
      [left, top] = [row.x, row.y];
      return `${move} /${name} Do`;
    });
    return ['q', ...lines, 'Q'].join('\n');
  }

  private stampOf(row: FigureRow, painter: string): Stamp {
    const key = [row.shape, row.stepX, row.stepY, row.count, painter].join(' ');
    const known = this.stamps.get(key);
    if (known !== undefined) return known;
    const stamp = { name: `Row${this.stamps.size + 1}`, reference: this.store(row, painter) };
    this.stamps.set(key, stamp);
    return stamp;
  }

  private store(row: FigureRow, painter: string): unknown {
    const { path, box } = drawRow(row);
    const [left, top, right, bottom] = box;
    const bounds = [left - strokeRoom, top - strokeRoom, right + strokeRoom, bottom + strokeRoom];
    const reference = this.pad.ref({ Type: 'XObject', Subtype: 'Form', BBox: bounds, Resources: {} });
    reference.end(`${path}\n${painter}`);
    return reference;
  }
}

function short(value: number): number {
  return Math.round(value * 1000) / 1000;
}
