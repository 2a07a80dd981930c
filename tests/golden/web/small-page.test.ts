import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../../src/model/document.ts';
import { shippedLocale } from '../../helpers/locale-words.ts';
import { para, peopleRow, topic } from '../../helpers/sample-documents.ts';
import { figure, paragraph, smallTree, words } from '../../helpers/small-tree.ts';
import { htmlOf } from '../../helpers/web-page.ts';

const update = process.env['UPDATE'] === '1';
if (update && (process.env['CI'] ?? '') !== '')
  throw new Error('UPDATE=1 is refused when CI is set: goldens are read by a person first');

const origin = 'small.hbs:1';
const blocks: readonly Block[] = [
  { type: 'heading', level: 1, text: 'My choices', origin },
  topic(
    'Who needs another operation?',
    ['There are 100 people in each picture.'],
    [
      {
        type: 'strip',
        layout: 'people',
        rows: [peopleRow('Sleeve', { of: 100, filled: 20 }, ['20 out of 100', '80 do not.'])],
        origin,
      },
      paragraph(origin, [
        words('After 1 year '),
        figure('9 out of 100', 'sleeve/again', ['r.1']),
        words(' had one.'),
      ]),
      {
        type: 'table',
        layout: 'choices',
        columns: [{ label: '' }, { label: 'A leak' }],
        rows: [{ cells: [[para('Sleeve')], [para('6', 'number')]], origin }],
        origin,
      },
    ],
  ),
];

/** One element a line, and the style sheet left out: it is looked at in a browser, not read. */
function readable(html: string): string {
  return html
    .replace(/<style>[^]*<\/style>/, '<style>…</style>')
    .replace(/ d="[^"]{60,}"/g, ' d="…"')
    .replace(/></g, '>\n<');
}

describe('a small page', () => {
  it('is what it was when it was last read', async () => {
    const page = readable(htmlOf([smallTree(blocks)], await shippedLocale('en')));
    const golden = join(import.meta.dirname, 'small-page.txt');
    if (update) writeFileSync(golden, page);
    expect(existsSync(golden) ? readFileSync(golden, 'utf8') : '').toBe(page);
  });
});
