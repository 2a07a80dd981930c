import { readFileSync } from 'node:fs';

const data = 'src/evidence/data';

/** What is added to the shipped files, by path: an option, an outcome and records that nobody ever measured. */
const additions: Readonly<Record<string, string>> = {
  [`${data}/options.yaml`]: `
- code: clasp
  name: Gastric clasp
  kind: operation
  meaning: A clasp is closed round the stomach.
  choosable: true
  maturity: newer
  figures_from: clasp
`,
  [`${data}/outcomes.yaml`]: `
- code: hiccups
  group: [living-with-it]
  better: lower
  meaning: Hiccups that come back every day.
  applies_to: [operation, endoscopic, medicine, programme, none]
`,
  [`${data}/records/clasp.yaml`]: `
- id: clasp.leak.30d.clasp-trial
  study: clasp-trial
  option: clasp
  outcome: leak
  kind: risk
  people: &people { indication: first-operation, bmi: { low: 35, high: 60 }, age: { low: 18, high: 65 }, diabetes: mixed }
  time: { days: 30, basis: by }
  value: { events: 29, n: 1731 }
  certainty: moderate
  seen: page
- id: clasp.weight-loss.60m.clasp-trial
  study: clasp-trial
  option: clasp
  outcome: weight-loss
  kind: weight
  people: *people
  time: { months: 60, basis: at }
  value: { metric: TWL, estimate: 23.7, unit: '%', sd: 6.1, n: 1731, reference: before-this-operation }
  certainty: moderate
  seen: page
- id: clasp.hiccups.12m.clasp-trial
  study: clasp-trial
  option: clasp
  outcome: hiccups
  kind: risk
  people: *people
  time: { months: 12, basis: at }
  value: { events: 613, n: 1731 }
  certainty: low
  seen: page
`,
  [`${data}/records/sleeve.yaml`]: `
- id: sleeve.hiccups.12m.clasp-trial
  study: clasp-trial
  option: sleeve
  outcome: hiccups
  kind: risk
  people: { indication: first-operation, bmi: { low: 35, high: 60 }, age: { low: 18, high: 65 }, diabetes: mixed }
  time: { months: 12, basis: at }
  value: { events: 211, n: 1697 }
  certainty: low
  seen: page
`,
  [`${data}/studies/invented.yaml`]: `
- id: clasp-trial
  design: randomised-trial
  cohort: clasp-trial
  citation: { authors: Nobody A, year: 2026, title: A clasp or a sleeve, journal: J Invent 1:1-9 }
  setting: nowhere
  seen_at: ['https://example.org/clasp']
  seen_on: 2026-11-20
`,
  [`${data}/reversibility.yaml`]: `
- option: clasp
  undo:
    possible: 'yes'
    how: The clasp can be opened.
    what_remains: Small scars.
    weight_after: { statement: Nobody has followed it., basis: not-known }
    data: []
  change_to: [sleeve, bypass]
  sources: [{ point: opening it, study: clasp-trial, seen: page }]
`,
  [`${data}/standing.yaml`]: `
- id: clasp.us.2026
  option: clasp
  standing: endorsed-by-society
  maturity: newer
  jurisdiction: US
  body: An invented society
  date: '2026-01-15'
  statement: It is on the list.
  source: https://example.org/list
  seen: page
`,
  [`${data}/caution-coverage.yaml`]: `
- code: every-code
  by_row: []
  others: [{ options: [clasp], why: not known }]
`,
  'locales/en/options.yaml': `
clasp:
  name: Stomach clasp
  in_text: a stomach clasp
  trade: Gastric clasp
  choice: A surgeon closes a clasp round your stomach. Nothing is taken out.
  undo: A small operation can open the clasp. Small scars stay.
  weight_after: It is not known what happens to weight after that.
  unknown: We found no figures for the years after the fifth.
  for_life: Vitamins and a check-up each year.
`,
  'locales/es/options.yaml': `
clasp:
  name: Broche gástrico
  in_text: un broche gástrico
  trade: Broche gástrico
  choice: El equipo de cirugía cierra un broche alrededor del estómago. No se quita nada.
  undo: Una operación pequeña puede abrir el broche. Quedan cicatrices pequeñas.
  weight_after: No se sabe qué pasa con el peso después.
  unknown: No encontramos datos para los años después del quinto.
  for_life: Vitaminas y un control al año.
`,
  'locales/en/outcomes.yaml': `
hiccups:
  name: Hiccups
  explained: Hiccups that come back every day.
`,
  'locales/es/outcomes.yaml': `
hiccups:
  name: Hipo
  explained: Un hipo que vuelve todos los días.
`,
};

const rowsBefore = '  rows:\n    - reflux\n';

/** The shipped files that the invented option touches, whole, and those that it adds. */
export function inventedFiles(): Record<string, string> {
  const added = Object.entries(additions).map(([path, text]): [string, string] => [
    path,
    shipped(path) + text,
  ]);
  const topics = `${data}/topics.yaml`;
  const parts = shipped(topics).split(rowsBefore);
  if (parts.length !== 2) throw new Error('the topics do not begin the things to live with by reflux');
  return {
    ...Object.fromEntries(added),
    [topics]: parts.join('  rows:\n    - hiccups\n    - reflux\n'),
    'week/clinic.yaml': shipped('examples/clinic.yaml'),
    'week/case.yaml': shipped('examples/cases/QB-1041.yaml')
      .replace(/^ {2}options: .*$/m, '  options: [clasp, sleeve, no-operation]')
      .replace('option: bypass', 'option: clasp'),
  };
}

/** Empty for a file that is new. */
function shipped(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
}
