// Followed by hand on 2026-11-25 from the published page to the record to the printed page:
// - Arterburn DE et al., Ann Surg 2020, doi 10.1097/SLA.0000000000003826 (abstract, PubMed 32187033);
// - "When do leaks occur?", Surg Obes Relat Dis 2023;19:1128-1133 (abstract, PubMed 37258316);
// - Guerrier JB et al., the NSQIP analysis of 2010-2014 (abstract on the page of Northwestern University);
// - PCORI results summary of the PCORnet Bariatric Study (pcori.org/Arterburn218);
// - unit: 1 lb = 0.45359237 kg by definition.
// The person of the example weighs 118.4 kg (261.03 lb). What is expected below was worked out on paper from what
// the page prints, never taken from the program.
import { beforeAll, describe, expect, it } from 'vitest';

import { readBack } from '../../src/verify/read-back.ts';
import { loadEvidence } from '../../src/evidence/index.ts';
import { canonicalJson, sha256 } from '../../src/io/digest.ts';
import { createNodeWorkspace } from '../../src/io/node-workspace.ts';
import type { EvidenceBase } from '../../src/model/evidence.ts';
import { makeExample } from '../helpers/example-packets.ts';

interface Followed {
  readonly record: string;
  /** As the page prints it. */
  readonly published: Readonly<Record<string, number>>;
  /** As the packet must print it, and on paper why. */
  readonly printed: string;
  readonly sum: string;
}

const weights: readonly Followed[] = [
  {
    record: 'sleeve.weight-loss.60m.kaiser-2020.twl',
    published: { estimate: 16.0, low: 15.4, high: 16.6, n: 13900 },
    printed: '219 lb (99 kg) 42 lb less than today. The average could be 218 to 221 lb.',
    sum: '118.4 x 0.840 = 99.46 kg = 219.3 lb; 261 - 219 = 42; x 0.834 = 217.7 lb; x 0.846 = 220.8 lb',
  },
  {
    record: 'bypass.weight-loss.60m.kaiser-2020.twl',
    published: { estimate: 21.7, low: 21.5, high: 22.0, n: 17258 },
    printed: '204 lb (93 kg) 57 lb less than today. The average could be 204 to 205 lb.',
    sum: '118.4 x 0.783 = 92.71 kg = 204.4 lb; 261 - 204 = 57; x 0.780 = 203.6 lb; x 0.785 = 204.9 lb',
  },
  {
    record: 'usual-care.weight-loss.60m.kaiser-2020.twl',
    published: { estimate: 2.2, low: 2.0, high: 2.5, n: 87965 },
    printed: '255 lb (116 kg) 6 lb less than today. The average could be 255 to 256 lb.',
    sum: '118.4 x 0.978 = 115.80 kg = 255.3 lb; 261 - 255 = 6; x 0.975 = 254.50 lb; x 0.980 = 255.8 lb',
  },
];

/** The line over time of each option: today, then the measured times. */
const lines: readonly (Followed & { readonly option: string })[] = [
  {
    option: 'Sleeve',
    record: 'sleeve.weight-loss.12m.kaiser-2020.twl',
    published: { estimate: 23.0 },
    printed: '201',
    sum: '118.4 x 0.770 = 91.17 kg = 201.0 lb',
  },
  {
    option: 'Gastric bypass',
    record: 'bypass.weight-loss.12m.kaiser-2020.twl',
    published: { estimate: 28.4 },
    printed: '187',
    sum: '118.4 x 0.716 = 84.77 kg = 186.9 lb',
  },
  {
    option: 'Gastric bypass',
    record: 'bypass.weight-loss.120m.kaiser-2020.twl',
    published: { estimate: 20.2 },
    printed: '208',
    sum: '118.4 x 0.798 = 94.48 kg = 208.3 lb',
  },
  {
    option: 'No new treatment',
    record: 'usual-care.weight-loss.120m.kaiser-2020.twl',
    published: { estimate: 4.8 },
    printed: '248',
    sum: '118.4 x 0.952 = 112.72 kg = 248.5 lb',
  },
];

/** Columns of the table of the first month: leak, bleeding, another operation, out of 1,000. */
const firstMonth: readonly (Followed & { readonly row: string; readonly column: number })[] = [
  {
    row: 'Sleeve',
    column: 1,
    record: 'sleeve.leak.30d.mbsaqip-2015-2020',
    published: { events: 598, n: 370369 },
    printed: '2',
    sum: '598 / 370,369 = 1.61 in 1,000',
  },
  {
    row: 'Gastric bypass',
    column: 1,
    record: 'bypass.leak.30d.mbsaqip-2015-2020',
    published: { events: 520, n: 159280 },
    printed: '3',
    sum: '520 / 159,280 = 3.26 in 1,000',
  },
  {
    row: 'Sleeve',
    column: 2,
    record: 'sleeve.bleeding.30d.nsqip-2010-2014',
    published: { percent: 1.0, n: 47982 },
    printed: '10',
    sum: '1.00% = 10 in 1,000',
  },
  {
    row: 'Gastric bypass',
    column: 2,
    record: 'bypass.bleeding.30d.nsqip-2010-2014',
    published: { percent: 1.6, n: 66380 },
    printed: '16',
    sum: '1.60% = 16 in 1,000',
  },
  {
    row: 'Sleeve',
    column: 3,
    record: 'sleeve.reoperation.30d.nsqip-2010-2014',
    published: { percent: 1.34, n: 47982 },
    printed: '13',
    sum: '1.34% = 13.4 in 1,000',
  },
  {
    row: 'Gastric bypass',
    column: 3,
    record: 'bypass.reoperation.30d.nsqip-2010-2014',
    published: { percent: 2.56, n: 66380 },
    printed: '26',
    sum: '2.56% = 25.6 in 1,000',
  },
];

const later: readonly Followed[] = [
  {
    record: 'sleeve.reoperation.60m.pcornet-pcori-summary',
    published: { percent: 9 },
    printed: '9 out of 100 91 do not.',
    sum: '9%, 100 - 9 = 91',
  },
  {
    record: 'bypass.reoperation.60m.pcornet-pcori-summary',
    published: { percent: 12 },
    printed: '12 out of 100 88 do not.',
    sum: '12%, 100 - 12 = 88',
  },
];

describe('figures followed by hand from the published page to the printed page', () => {
  let pages: readonly string[];
  let evidence: EvidenceBase;

  beforeAll(async () => {
    const { pdf } = await makeExample('QB-1041', 'en');
    const read = await readBack(pdf);
    pages = (read?.pages ?? []).map((page) => page.normalize('NFC').replace(/\s+/g, ' '));
    const loaded = await loadEvidence(createNodeWorkspace(), {
      folder: 'src/evidence/data',
      digester: { sha256, canonicalJson },
    });
    if (!loaded.ok) throw new Error('the evidence does not load');
    evidence = loaded.value;
  }, 200_000);

  const pageWith = (heading: string): string => {
    const found = pages.filter((page) => page.includes(heading));
    return found.join(' ');
  };

  it.each([...weights, ...lines, ...firstMonth, ...later])(
    '$record holds what its page prints',
    ({ record, published }) => {
      const held = evidence.records.find(({ id }) => id === record);
      expect(held).toMatchObject({ seen: 'page', value: published });
    },
  );

  it.each(weights)('$record is printed as worked out: $sum', ({ printed }) => {
    expect(pageWith('How much might I weigh after 5 years?')).toContain(printed);
  });

  it.each(lines)('$record is printed on the line of $option: $sum', ({ option, printed }) => {
    const page = pageWith('How might my weight change over time?');
    const [, after = ''] = page.split(new RegExp(`${option} (?=You today|260|\\d)`));
    expect(after.split(/(?:Sleeve|Gastric bypass|No new treatment)/)[0]).toMatch(
      new RegExp(`\\b${printed}\\b`),
    );
  });

  it.each(firstMonth)('$record is printed in its column of $row: $sum', ({ row, column, printed }) => {
    const page = pageWith('Which problems happen in the first month?');
    expect(page).toContain('Death A leak Bleeding Another operation');
    const cells = new RegExp(`${row} (fewer than 1) (\\d+) (\\d+) (\\d+)`).exec(page)?.slice(1);
    expect(cells?.[column]).toBe(printed);
  });

  it.each(later)('$record is printed as worked out: $sum', ({ printed }) => {
    expect(pageWith('Who needs another operation within 5 years?')).toContain(printed);
  });
});
