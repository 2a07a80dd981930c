import { describe, expect, it } from 'vitest';
import { readCase } from '../../../src/input/index.ts';
import { context, replaceIn, sampleCase } from '../../helpers/sample-case.ts';

type Change = readonly [part: string, by: string];

function messages(...changes: readonly Change[]): string[] {
  const text = changes.reduce((before, [part, by]) => replaceIn(before, part, by), sampleCase);
  const result = readCase(text, 'case.yaml', context);
  const found = result.ok ? result.warnings : result.diagnostics;
  return found.map(({ code, path, message }) => `${code} ${path ?? ''}: ${message}`);
}

function earlier(body: string): Change {
  return ['  smoking: never\n', `  smoking: never\n  earlier_operations: [${body}]\n`];
}

function decide(body: string): Change {
  return ['plan:', `  ${body}\nplan:`];
}

const second: Change = ['first-operation', 'second-operation'];
const removal: Change = ['first-operation', 'after-removal'];

describe('what is asked and what went before', () => {
  it.each([
    ['a second operation after a sleeve in place', second, earlier('{operation: sleeve, status: in-place}')],
    [
      'a second operation after a band that was removed',
      second,
      earlier('{operation: band, status: removed}'),
    ],
    ['after the removal of a band', removal, earlier('{operation: band, status: removed}')],
    ['after a reversal', removal, earlier('{operation: bypass, status: reversed}')],
    ['a first operation after a balloon that is out', earlier('{operation: balloon, status: removed}')],
  ])('%s is possible', (_, ...changes) => {
    expect(messages(...(changes as Change[]))).toEqual([]);
  });

  it.each([
    ['a second operation without a first', 'no earlier one is written', second],
    ['after a removal, and nothing was removed', 'no operation was removed', removal],
    [
      'after a removal, and all is in place',
      'no operation was removed',
      removal,
      earlier('{operation: band, status: in-place}'),
    ],
    [
      'a first operation beside a sleeve',
      'an earlier one is in place',
      earlier('{operation: sleeve, status: in-place}'),
    ],
  ])('%s is not', (_, message, ...changes) => {
    expect(messages(...(changes as Change[]))).toEqual([
      expect.stringMatching(`^CASE_CONFLICT decision.asked: .*${message}`),
    ]);
  });

  it('the date of an earlier operation lies between birth and today, as far as it is written', () => {
    const at = (date: string): string[] =>
      messages(second, earlier(`{operation: sleeve, date: ${date}, status: in-place}`));
    for (const possible of ['2026', '2026-11', '2026-11-25', '1984', '1984-07', '1984-07-21'])
      expect(at(possible)).toEqual([]);
    for (const future of ['2027', '2026-12', '2026-11-26'])
      expect(at(future)).toEqual([expect.stringContaining('in the future')]);
    for (const early of ['1983', '1984-06', '1984-07-20'])
      expect(at(early)).toEqual([expect.stringContaining('before the birth')]);
  });

  it('the lowest weight is compared across units', () => {
    const body = (lowest: string): Change =>
      earlier(`{operation: sleeve, weight_before: 120 kg, lowest_weight: ${lowest}, status: in-place}`);
    expect(messages(second, body('264 lb'))).toEqual([]);
    expect(messages(second, body('265 lb'))).toEqual([expect.stringContaining('above the weight before')]);
    expect(messages(second, body('120 kg'))).toEqual([]);
  });

  it('a band can only be taken out where one is in place', () => {
    const option: Change = ['bypass, no', 'band-removal, no'];
    expect(messages(second, option, earlier('{operation: band, status: in-place}'))).toEqual([]);
    expect(messages(second, option, earlier('{operation: band, status: removed}'))).toEqual([
      expect.stringContaining('no band is in place'),
    ]);
    expect(messages(second, option, earlier('{operation: sleeve, status: in-place}'))).toEqual([
      expect.stringContaining('no band is in place'),
    ]);
  });

  it('a band can only be exchanged where one is in place', () => {
    const plan: Change = ['plan: {', 'plan: {stages: one, '];
    expect(messages(second, plan, earlier('{operation: band, status: in-place}'))).toEqual([]);
    expect(messages(second, plan, earlier('{operation: sleeve, status: in-place}'))).toEqual([
      expect.stringContaining('plan.stages: this says how a band is exchanged'),
    ]);
  });

  it('a record of the talk needs a treatment that was chosen', () => {
    const documents: Change = ['documents: [comparison', 'documents: [consent, comparison'];
    expect(messages(documents)).toEqual([expect.stringContaining('decision.chosen is not there')]);
    expect(messages(documents, decide('chosen: bypass'))).toEqual([]);
  });

  it('the pages about an operation are for an operation or a treatment through the mouth', () => {
    const documents: Change = ['documents: [comparison', 'documents: [operation, comparison'];
    const chosen = (option: string): readonly string[] =>
      messages(documents, decide(`chosen: ${option}`), [
        'options: [sleeve, bypass',
        'options: [sleeve, endoscopic-sleeve, semaglutide, bypass',
      ]);
    expect(messages(documents)).toEqual([expect.stringContaining('decision.chosen is not there')]);
    expect(chosen('bypass')).toEqual([]);
    expect(chosen('endoscopic-sleeve')).toEqual([]);
    expect(chosen('semaglutide')).toEqual([expect.stringContaining('decision.chosen is neither')]);
    expect(chosen('no-operation')).toEqual([expect.stringContaining('decision.chosen is neither')]);
  });

  it('the trouble is a condition or an outcome', () => {
    const body = (trouble: string): Change =>
      earlier(`{operation: band, trouble: ${trouble}, status: in-place}`);
    expect(messages(second, body('slippage'))).toEqual([]);
    expect(messages(second, body('band-erosion'))).toEqual([]);
    expect(messages(second, body('hunger'))).toEqual([
      expect.stringContaining('neither a condition nor an outcome'),
    ]);
  });

  it('an earlier band that was taken out is written as a band', () => {
    expect(messages(second, earlier('{operation: band-removal, status: removed}'))).toEqual([
      expect.stringContaining('CASE_UNKNOWN_OPTION'),
    ]);
  });
});

describe('the decision', () => {
  it('needs leaning, chosen and advice to be about its options', () => {
    expect(messages(decide('leaning: {option: band, reasons: [{code: can-be-undone}]}'))).toEqual([
      expect.stringContaining('decision.leaning.option: this is not among'),
    ]);
    expect(messages(decide('chosen: band'))).toEqual([
      expect.stringContaining('decision.chosen: this is not among'),
    ]);
    expect(messages(decide('advised_against: [{option: band, reasons: [{code: can-be-undone}]}]'))).toEqual([
      expect.stringContaining('decision.advised_against[0].option: this is not among'),
    ]);
  });

  it('lets doing nothing be chosen or leaned to although it is added only later', () => {
    expect(messages([', no-operation]', ']'], decide('chosen: no-operation'))).toEqual([
      expect.stringContaining('CASE_OPTION_ADDED decision.options'),
    ]);
  });

  it('lets a person choose what the surgeon advises against', () => {
    expect(
      messages(
        decide('chosen: sleeve\n  advised_against: [{option: sleeve, reasons: [{code: reflux-worse}]}]'),
      ),
    ).toEqual([]);
  });

  it('does not advise twice against an option', () => {
    const body = '{option: sleeve, reasons: [{code: reflux-worse}]}';
    expect(messages(decide(`advised_against: [${body}, ${body}]`))).toEqual([
      expect.stringContaining('advised against twice'),
    ]);
  });

  it('refuses a reason without code and words, and one with both', () => {
    const wish = (body: string): string[] => messages(decide(`matters_most: [${body}]`));
    expect(wish('{}')).toEqual([
      'CASE_TYPE_MISMATCH decision.matters_most[0]: expected code or text, found a map of keys',
    ]);
    expect(wish('soon')).toEqual([
      'CASE_TYPE_MISMATCH decision.matters_most[0]: expected code or text, found text',
    ]);
    expect(wish('{code: soon}')).toEqual([
      expect.stringContaining('CASE_UNKNOWN_CODE decision.matters_most[0].code'),
    ]);
    expect(wish('{code: reflux-better, text: {en: a, es: b}}')).toEqual([
      expect.stringContaining('CASE_UNKNOWN_FIELD decision.matters_most[0].text'),
    ]);
    expect(wish('{text: {}}')).toEqual([
      expect.stringContaining('CASE_TYPE_MISMATCH decision.matters_most[0].text: expected words'),
    ]);
    expect(wish('{text: {en: "", es: b}}')).toEqual([
      expect.stringContaining('CASE_OUT_OF_RANGE decision.matters_most[0].text.en'),
    ]);
    expect(wish(`{text: {en: "${'a'.repeat(301)}", es: b}}`)).toEqual([
      expect.stringContaining('expected at most 300 characters'),
    ]);
    expect(wish('{text: {en: 5, es: b}}')).toEqual([
      expect.stringContaining('expected words, found a number'),
    ]);
    expect(wish('{text: {en: [a], es: b}}')).toEqual([
      expect.stringContaining('expected words, found a list'),
    ]);
    expect(wish('{text: {en: "a\\u202eb", es: b}}')).toEqual([
      expect.stringContaining('expected letters that can be printed'),
    ]);
  });

  it('warns once for each text that a packet lacks, naming the languages', () => {
    expect(messages(decide('matters_most: [{text: {fr: Bonjour}}]'))).toEqual([
      'CASE_DRAFT_ONLY decision.matters_most[0].text: these words are not there in en, es: that packet stays a draft',
    ]);
    expect(messages(['[en, es]', '[en]'], decide('matters_most: [{text: {en: Hello}}]'))).toEqual([]);
  });
});

describe('the person and the packet', () => {
  it.each([
    ['now: true', 'health.pregnancy.now'],
    ['planned_within_months: 12', 'health.pregnancy.planned_within_months'],
  ])('no pregnancy (%s) together with sex: male', (body, path) => {
    const pregnancy: Change = ['  smoking: never\n', `  smoking: never\n  pregnancy: {${body}}\n`];
    expect(messages(pregnancy)).toEqual([]);
    expect(messages(pregnancy, ['female', 'not-stated'])).toEqual([]);
    expect(messages(pregnancy, ['female', 'male'])).toEqual([
      `CASE_CONFLICT ${path}: a pregnancy together with sex: male`,
    ]);
  });

  it('an interpreter is for a language', () => {
    expect(messages(['plan:', 'interpreter: {needed: true, language: vi}\nplan:'])).toEqual([]);
    expect(messages(['plan:', 'interpreter: {needed: false}\nplan:'])).toEqual([]);
    expect(messages(['plan:', 'interpreter: {needed: true}\nplan:'])).toEqual([
      expect.stringContaining('CASE_CONFLICT interpreter.needed'),
    ]);
    expect(messages(['plan:', 'interpreter: {needed: true, language: Spanish}\nplan:'])).toEqual([
      expect.stringContaining('expected a language tag'),
    ]);
  });

  it('documents or a packet, not both, not neither', () => {
    const documents = 'documents: [comparison]\n';
    expect(messages([documents, 'packet: choosing\n'])).toEqual([]);
    expect(messages([documents, `${documents}packet: choosing\n`])).toEqual([
      'CASE_CONFLICT packet: both documents and a packet are named',
    ]);
    expect(messages([documents, ''])).toEqual([
      'CASE_CONFLICT documents: neither documents nor a packet is named',
    ]);
  });

  const chosen: Change = ['plan: {', 'plan: {operation_date: 2027-01-14, '];

  it.each(['homecare', 'warning-signs', 'vitamins'])('%s needs a treatment and its day', (kind) => {
    const documents: Change = ['[comparison]', `[${kind}]`];
    const choose = (option: string): Change => decide(`chosen: ${option}`);
    expect(messages(documents, choose('sleeve'), chosen)).toEqual([]);
    expect(messages(documents, chosen)).toEqual([
      `CASE_CONFLICT documents[0]: ${kind} is about the treatment that was chosen, and decision.chosen is not there`,
    ]);
    expect(messages(documents, choose('sleeve'))).toEqual([
      `CASE_CONFLICT documents[0]: ${kind} counts its days from the operation, and plan.operation_date is not there`,
    ]);
    expect(messages(documents, choose('no-operation'), chosen)).toEqual([
      `CASE_CONFLICT documents[0]: ${kind} is about the time after a treatment, and no-operation was chosen`,
    ]);
  });

  it('a packet needs what its documents need', () => {
    expect(messages(['documents: [comparison]\n', 'packet: going-home\n'])).toEqual([
      'CASE_CONFLICT packet: homecare is about the treatment that was chosen, and decision.chosen is not there',
    ]);
  });

  it.each([
    ['[en, es]', '[en, en]', 'languages[1]'],
    ['[comparison]', '[comparison, comparison]', 'documents[1]'],
    ['[reflux]', '[reflux, reflux]', 'health.conditions[1]'],
    ['[metformin]', '[metformin, metformin]', 'health.medicines[1]'],
  ])('%s may not become %s', (part, by, path) => {
    expect(messages([part, by])).toEqual([`CASE_CONFLICT ${path}: this stands twice in the list`]);
  });

  it('words after # are warned about where words or a name are printed', () => {
    expect(messages(['Oriel Fenwick-Salt', 'Oriel Fenwick-Salt # by her own wish'])).toEqual([
      'CASE_TEXT_CUT patient.name: what follows # is not read',
    ]);
    expect(
      messages(decide('matters_most:\n    - text:\n        en: One # two\n        es: "Uno" # dos')),
    ).toEqual(['CASE_TEXT_CUT decision.matters_most[0].text.en: what follows # is not read']);
  });
});

describe('the reference', () => {
  it.each(['Fenwick-12', 'x-oriel', 'P-1984-11-23'])(
    '%s is refused, since it says who the person is',
    (reference) => {
      const named = sampleCase
        .replace(/^case:.*$/m, `case: "${reference}"`)
        .replace(/born: .*/, 'born: 1984-11-23');
      const result = readCase(named, 'case.yaml', context);
      const found = result.ok ? [] : result.diagnostics.filter(({ path }) => path === 'case');
      expect(found.map(({ code }) => code)).toEqual(['CASE_CONFLICT']);
      expect(JSON.stringify(found)).not.toMatch(new RegExp(reference, 'i'));
    },
  );
});
