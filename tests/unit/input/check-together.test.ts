import { describe, expect, it } from 'vitest';
import { checkTogether, readCase, readClinic } from '../../../src/input/index.ts';
import type { Pairing } from '../../../src/input/index.ts';
import { context, replaceIn, sampleCase, sampleClinic } from '../../helpers/sample-case.ts';

function pair(caseText: string, clinicText: string, underStudy: readonly string[] = ['plication']): Pairing {
  const [asked, clinic] = [
    readCase(caseText, 'case.yaml', context),
    readClinic(clinicText, 'clinic.yaml', context),
  ];
  if (!asked.ok || !clinic.ok) throw new Error('the samples must be valid');
  const files = {
    case: { file: 'case.yaml', text: caseText },
    clinic: { file: 'clinic.yaml', text: clinicText },
  };
  return { case: asked.value, clinic: clinic.value, files, known: context, underStudy };
}

function said(pairing: Pairing): string[] {
  const result = checkTogether(pairing);
  const found = result.ok ? result.warnings : result.diagnostics;
  return found.map(
    ({ severity, code, span, path }) =>
      `${severity} ${code} ${span?.file ?? ''}:${String(span?.line)} ${path ?? ''}`,
  );
}

const withPlication = replaceIn(sampleCase, 'bypass, no', 'plication, no');
const study =
  'under_study:\n  plication: {oversight: {en: Board, es: Comité}, approval: "1", contact: "555-0107", form: "Form 3"}\n';
const stay = '    plication: {en: 1 night, es: 1 noche}\n';
const clinicWithStudy = replaceIn(sampleClinic, '    bypass:', `${stay}    bypass:`) + study;

describe('a case together with the clinic profile', () => {
  it('has nothing to say when the two fit', () => {
    expect(checkTogether(pair(sampleCase, sampleClinic))).toEqual({
      ok: true,
      value: undefined,
      warnings: [],
    });
    expect(said(pair(withPlication, clinicWithStudy))).toEqual([]);
  });

  it('refuses a surgeon whom the profile has not, with the nearest id and the list', () => {
    const result = checkTogether(pair(replaceIn(sampleCase, 'tamsin', 'tamsyn'), sampleClinic));
    expect(result.ok).toBe(false);
    const [diagnostic] = result.ok ? [] : result.diagnostics;
    expect(diagnostic).toMatchObject({
      code: 'CASE_UNKNOWN_CODE',
      path: 'plan.surgeon',
      span: { file: 'case.yaml', line: 19, column: 17 },
    });
    expect(diagnostic?.hint).toBe('Did you mean tamsin? Choose one of: tamsin.');
    expect(diagnostic?.related?.[0]?.span).toMatchObject({ file: 'clinic.yaml', line: 8 });
  });

  it('keeps a packet a draft when an option under study has no entry, or no approval form', () => {
    const silent = replaceIn(clinicWithStudy, study, '');
    expect(said(pair(withPlication, silent))).toEqual([
      'warning CASE_DRAFT_ONLY case.yaml:18 decision.options[1]',
    ]);
    expect(said(pair(withPlication, silent, []))).toEqual([]);
    const formless = replaceIn(clinicWithStudy, ', form: "Form 3"', '');
    expect(said(pair(withPlication, formless))).toEqual([
      'warning CASE_DRAFT_ONLY clinic.yaml:23 under_study.plication',
    ]);
  });

  it('refuses the notice of language help where the profile lists no language', () => {
    const noticed = replaceIn(sampleCase, 'documents: [comparison]', 'documents: [language-notice]');
    expect(said(pair(noticed, sampleClinic))).toEqual([
      'error CLINIC_INCOMPLETE clinic.yaml:1 language_notice',
    ]);
    const listed = `${sampleClinic}language_notice: {languages: [es], phone: "555-0128"}\n`;
    expect(said(pair(noticed, listed))).toEqual([]);
  });

  it('keeps a packet a draft when nobody approved the profile', () => {
    const text = replaceIn(sampleClinic, 'approved: {by: Dr. Harun Velde, on: 2026-10-05}\n', '');
    expect(said(pair(sampleCase, text))).toEqual(['warning CASE_DRAFT_ONLY clinic.yaml:1 approved']);
  });

  it('asks for a second opinion only where the surgeon gives one', () => {
    const alone = replaceIn(
      sampleClinic,
      'second_opinion:\n  - {name: Dunmere Valley Hospital, phone: "555-0191"}\n',
      '',
    );
    const leaning = replaceIn(
      sampleCase,
      'plan:',
      '  leaning: {option: bypass, reasons: [{code: reflux-better}]}\nplan:',
    );
    expect(said(pair(sampleCase, alone))).toEqual([]);
    expect(said(pair(leaning, alone))).toEqual(['warning CLINIC_INCOMPLETE clinic.yaml:1 second_opinion']);
  });

  it("names options for which the clinic's practice is not written", () => {
    expect(said(pair(replaceIn(sampleCase, 'bypass,', 'bypass, balloon,'), sampleClinic))).toEqual([
      'warning CLINIC_INCOMPLETE clinic.yaml:13 protocol',
    ]);
  });

  it('wants the words of the profile in every language of the packet, for the options of the case', () => {
    const english = replaceIn(
      clinicWithStudy,
      '{en: 1 night, es: 1 noche}\n    plication',
      '{en: 1 night}\n    plication',
    ).replace(', es: Comité', '');
    const preferred = `${english}prefer: [{record: a.b, reason: {en: Ours}}]\n`;
    expect(said(pair(withPlication, preferred))).toEqual([
      'warning CASE_DRAFT_ONLY clinic.yaml:15 protocol.stay.sleeve',
      'warning CASE_DRAFT_ONLY clinic.yaml:23 under_study.plication.oversight',
      'warning CASE_DRAFT_ONLY clinic.yaml:24 prefer[0].reason',
    ]);
    expect(said(pair(replaceIn(withPlication, '[en, es]', '[en]'), preferred))).toEqual([]);
  });

  it('asks for words on the time afterwards only of the option that is chosen, and of those it is the same as', () => {
    const after =
      '  same_as: {bypass: sleeve}\n  walking: {sleeve: [{what: {en: Walk.}}], band: [{what: {en: Go.}}]}\n';
    const clinic = replaceIn(sampleClinic, 'second_opinion:', `${after}second_opinion:`);
    const chosen = (option: string): string =>
      replaceIn(sampleCase, 'no-operation]', `no-operation]\n  chosen: ${option}`);
    expect(said(pair(sampleCase, clinic))).toEqual([]);
    const missing = ['warning CASE_DRAFT_ONLY clinic.yaml:19 protocol.walking.sleeve[0].what'];
    expect(said(pair(chosen('sleeve'), clinic))).toEqual(missing);
    expect(said(pair(chosen('bypass'), clinic))).toEqual(missing);
    expect(said(pair(chosen('no-operation'), clinic))).toEqual([]);
  });

  it('still answers when the texts cannot be read again', () => {
    const pairing = pair(replaceIn(sampleCase, 'tamsin', 'tamsyn'), sampleClinic);
    const broken = { ...pairing, files: { ...pairing.files, clinic: { file: 'clinic.yaml', text: '"' } } };
    expect(said(broken)).toEqual(['error CASE_UNKNOWN_CODE case.yaml:19 plan.surgeon']);
  });
});

describe('low blood sugar that the profile leaves for the next visit', () => {
  const found = (health: string, signs: string, documents = 'warning-signs'): string[] => {
    const asked = replaceIn(sampleCase, '[comparison]', `[${documents}]`)
      .replace('  conditions: [reflux]\n  medicines: [metformin]\n', health)
      .replace('options: [sleeve,', 'chosen: sleeve\n  options: [sleeve,')
      .replace('surgeon: tamsin', 'surgeon: tamsin, operation_date: 2026-12-14');
    const clinic = replaceIn(
      sampleClinic,
      'second_opinion:',
      `  warnings: {sleeve: {${signs}}}\nsecond_opinion:`,
    );
    return said(pair(asked, clinic)).filter((one) => one.includes('CLINIC_SIGN_LATE'));
  };
  const healthOf = (medicine: string, condition = 'type-2-diabetes'): string =>
    `  conditions: [${condition}]\n  medicines: [${medicine}]\n`;
  const late = 'at_visit: [{code: hair-loss}, {code: low-sugar}]';
  const warned = ['warning CLINIC_SIGN_LATE clinic.yaml:18 protocol.warnings.sleeve.at_visit[1]'];

  it.each(['insulin', 'sulfonylurea'])('is a warning for a person who takes %s', (medicine) => {
    expect(found(healthOf(medicine), late)).toEqual(warned);
    expect(found(healthOf(medicine), `${late}, today: [{code: vomiting}]`)).toEqual(warned);
  });

  it('is none for others, nor where no page of warning signs is asked for', () => {
    expect(found(healthOf('metformin'), late)).toEqual([]);
    expect(found(healthOf('insulin'), late, 'vitamins')).toEqual([]);
    expect(found(healthOf('insulin'), 'at_visit: [{code: hair-loss}]')).toEqual([]);
  });

  it('is none where a more urgent line reaches this person, and one that does not is no help', () => {
    const forDiabetes = `${late}, today: [{code: low-sugar, for: diabetes}]`;
    expect(found(healthOf('insulin'), forDiabetes)).toEqual([]);
    expect(found(healthOf('insulin', 'uncontrolled-diabetes'), forDiabetes)).toEqual([]);
    expect(found(healthOf('insulin', 'reflux'), forDiabetes)).toEqual(warned);
    expect(found(healthOf('insulin'), `${late}, today: [{code: low-sugar, for: smokes}]`)).toEqual(warned);
  });
});
