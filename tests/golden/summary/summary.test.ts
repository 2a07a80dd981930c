import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

import { summarizeOutcomes } from '../../../src/batch/index.ts';
import { showSummary } from '../../../src/cli/show-summary.ts';
import { fridayOutcomes } from '../../helpers/batch-outcomes.ts';

const update = process.env['UPDATE'] === '1';
if (update && (process.env['CI'] ?? '') !== '')
  throw new Error('UPDATE=1 is refused when CI is set: goldens are read by a person first');

describe('the end of a batch of forty cases in six languages', () => {
  const text = `${showSummary(summarizeOutcomes(fridayOutcomes()))}\n`;

  it('says what it said when it was last read', () => {
    const golden = join(import.meta.dirname, 'friday.txt');
    if (update) writeFileSync(golden, text);
    expect(existsSync(golden) ? readFileSync(golden, 'utf8') : '').toBe(text);
  });

  it('fits on one screen, and no line is wider than a terminal of 110 letters', () => {
    const lines = text.split('\n');
    expect(lines.length).toBeLessThanOrEqual(40);
    expect(lines.filter((line) => line.length > 110)).toEqual([]);
  });
});
