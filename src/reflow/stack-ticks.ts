import type { Checklist, TalkTable, TickItem, TickItems } from '../model/care-blocks.ts';
import type { MattersGrid, Paragraph } from '../model/document.ts';

/** Things to tick by date: under each item the dates on which it is due. A head over the items alone says nothing new. */
export function checklistItems({ box, columns, rows, origin }: Checklist): TickItems {
  const items = rows.map((row): TickItem => ({
    box,
    words: [strong(row.name, row.origin), ...row.detail],
    boxes: columns.filter((_, index) => row.due[index] ?? true),
    origin: row.origin,
  }));
  return { type: 'tick-items', items, origin };
}

/** Statements with their answers, then lines for one's own. */
export function matterItems({ columns, statements, blanks, origin }: MattersGrid): TickItems {
  const item = (words: readonly Paragraph[], at: string): TickItem => ({
    box: false,
    words,
    boxes: columns,
    origin: at,
  });
  const own = Array.from({ length: blanks }, () => item([], origin));
  return {
    type: 'tick-items',
    items: [...statements.map((words) => item([words], words.origin)), ...own],
    origin,
  };
}

/** What was talked about, each with its box and its line for initials. */
export function talkItems({ columns, statements, origin }: TalkTable): TickItems {
  const items = statements.map((words): TickItem => ({
    box: false,
    words,
    boxes: [columns.box],
    line: columns.line,
    origin: words[0]?.origin ?? origin,
  }));
  return { type: 'tick-items', items, origin };
}

function strong(value: string, origin: string): Paragraph {
  return { type: 'paragraph', role: 'strong', inlines: [{ type: 'text', value }], origin };
}
