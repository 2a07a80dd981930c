import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { copyPath } from '../../../src/render/copy-path.ts';

/** The operators that pdfkit itself writes for the same path data. */
function byPdfkit(data: string): string {
  const pdf = new PDFDocument();
  const written: string[] = [];
  pdf.addContent = (operators) => {
    written.push(String(operators));
    return pdf;
  };
  pdf.path(data);
  return written.join('\n');
}

function rounded(operators: string | undefined): string | undefined {
  return operators?.replace(/^ +/gm, '').replace(/-?\d+(\.\d+)?/g, (text) => Number(text).toFixed(2));
}

describe('copyPath', () => {
  it.each([
    ['lines', 'M10 20L30 40L-5.5 0.25Z'],
    ['curves', 'M0.586 1.31C1 2 3 4.5 5 6L7 8ZM1 1L2 2Z'],
  ])('writes what pdfkit would: %s', (_, data) => {
    expect(copyPath(data)).toBeDefined();
    expect(rounded(copyPath(data))).toBe(rounded(byPdfkit(data)));
  });

  it.each([
    '',
    'L1 2',
    'M1 2h3',
    'M1 2L3',
    'M1,2L3,4',
    'M1 2l3 4',
    'M1 2l3 4zL5 6',
    'M1e3 2L3 4',
    'm1 2l3 4z',
  ])('leaves other data to pdfkit: %j', (data) => {
    expect(copyPath(data)).toBeUndefined();
  });
});
