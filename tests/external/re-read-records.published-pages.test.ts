// Values read a second time on the published pages (abstracts, papers, labels) that re-read-records.json names.
// A weight lost is plus there, as in the records; a page that was read in a copy has its own address. Only what the
// page itself prints stands there, and no text of a page is kept.
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';

import { loadEvidence } from '../../src/evidence/index.ts';
import { canonicalJson, sha256 } from '../../src/io/digest.ts';
import { createNodeWorkspace } from '../../src/io/node-workspace.ts';
import { isPrintable } from '../../src/model/evidence.ts';
import type { EvidenceRecord } from '../../src/model/evidence-record.ts';

const figure = z.union([z.number(), z.string()]);
const ReReadSchema = z.strictObject({
  record: z.string(),
  value: z.record(z.string(), figure).refine((value) => Object.keys(value).length > 0),
  page: z.url(),
  read_on: z.iso.date(),
});
const file = new URL('re-read-records.json', import.meta.url);
const reRead = ReReadSchema.array().parse(JSON.parse(readFileSync(file, 'utf8')));

describe('a record that was read again at its source', () => {
  let records: ReadonlyMap<string, EvidenceRecord>;

  beforeAll(async () => {
    const digester = { sha256, canonicalJson };
    const loaded = await loadEvidence(createNodeWorkspace(), { folder: 'src/evidence/data', digester });
    if (!loaded.ok) throw new Error(JSON.stringify(loaded.diagnostics.slice(0, 5)));
    records = new Map(loaded.value.records.map((record) => [record.id, record]));
  });

  it.each(reRead)('$record has the value that its page prints', ({ record, value }) => {
    expect(records.get(record)?.value).toMatchObject(value);
  });

  it('is printed: what no page shows need not be read again', () => {
    const unprinted = reRead.filter(({ record }) => {
      const found = records.get(record);
      return found === undefined || !isPrintable(found);
    });
    expect(unprinted).toEqual([]);
  });

  it('is named once, and there are at least 40', () => {
    const named = reRead.map(({ record }) => record);
    expect(new Set(named).size).toBe(named.length);
    expect(named.length).toBeGreaterThanOrEqual(40);
  });

  it('leaves none of the large studies that lead on patient pages unread', () => {
    const leading = [
      'sleeve.weight-loss.12m.kaiser-2020.twl',
      'sleeve.weight-loss.60m.sleevebypass-2024.twl',
      'bypass.weight-loss.60m.sleevebypass-2024.twl',
      'bypass.weight-loss.120m.kaiser-2020.twl',
      'semaglutide.weight-loss.24m.step-5.twl',
      'tirzepatide.weight-loss.17m.surmount-5.twl',
      'usual-care.weight-loss.60m.kaiser-2020.twl',
      'sleeve.leak.30d.mbsaqip-2016-2021-leak',
      'bypass.leak.30d.mbsaqip-2015-2020',
      'sleeve.death.30d.mbsaqip-bmi60-2020-2021.bmi-under-60',
      'sleeve.major-complication.30d.nordic-registries-47101',
      'bypass.readmission.30d.mbsaqip-readmission-2015',
      'sleeve.reoperation.60m.pcornet-pcori-summary',
    ];
    const named = new Set(reRead.map(({ record }) => record));
    expect(leading.filter((record) => !named.has(record))).toEqual([]);
  });
});
