import { describe, expect, it } from 'vitest';

import { alignColumns } from '../../../src/cli/align-columns.ts';
import { createTerminal } from '../../../src/cli/terminal.ts';

function record(isTTY: boolean) {
  const written: string[] = [];
  const stream = { isTTY, write: (text: string | Uint8Array) => written.push(String(text)) > 0 };
  return { written, terminal: createTerminal({ out: stream, err: stream }) };
}

describe('a terminal', () => {
  it('takes its status line away before it prints anything else', () => {
    const { written, terminal } = record(true);
    terminal.status('making …');
    terminal.out('made');
    terminal.status('making …');
    terminal.status('');
    terminal.err('done');
    expect(written).toEqual(['making …', '\r\u001b[2K', 'made\n', 'making …', '\r\u001b[2K', 'done\n']);
  });

  it('shows no status where nobody watches, so that a log stays clean', () => {
    const { written, terminal } = record(false);
    terminal.status('making …');
    terminal.out('made');
    expect(written).toEqual(['made\n']);
  });
});

describe('columns', () => {
  it('stand under one another, without spaces at the ends of lines', () => {
    expect(
      alignColumns(
        [
          ['a', 'bbb', ''],
          ['aaaa', 'b', 'c'],
        ],
        '  ',
      ),
    ).toEqual(['  a     bbb', '  aaaa  b    c']);
  });
});
