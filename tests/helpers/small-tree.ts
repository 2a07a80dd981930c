import type { Block, DocumentTree, FigureRun, Inline, Paragraph } from '../../src/model/document.ts';

/** A small document of an invented person; replace what the test is about. */
export function smallTree(blocks: readonly Block[], changes: Partial<DocumentTree> = {}): DocumentTree {
  return {
    kind: 'comparison',
    audience: 'patient',
    language: 'en',
    direction: 'ltr',
    paper: 'a4',
    title: 'My choices',
    colon: ': ',
    furniture: {
      header: { start: 'Ilsa Marchetti-Boone', end: 'My choices · 25 November 2026' },
      headerOnFirstPage: false,
      footer: {
        call: 'Call us: day 555-0142, night 555-0199. Emergency: 911.',
        deferral: 'This does not replace your surgeon.',
        id: 'PE-0417-en-1-3f9a2c',
        page: 'Page {page} of {pages}',
      },
      phones: ['555-0142', '555-0199', '911'],
      tab: 'Example. Invented person.',
      continued: 'continued',
    },
    blocks,
    ...changes,
  };
}

export function words(value: string): Inline {
  return { type: 'text', value };
}

export function figure(value: string, cell: string, records: readonly string[] = []): FigureRun {
  return { type: 'figure', value, cell, records };
}

export function paragraph(origin: string, inlines: readonly Inline[], duty?: Paragraph['duty']): Paragraph {
  return { type: 'paragraph', role: 'body', origin, inlines, ...(duty === undefined ? {} : { duty }) };
}
