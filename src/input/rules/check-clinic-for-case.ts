import { documentsOf } from '../../model/case.ts';
import type { Case } from '../../model/case.ts';
import { ClinicProfileSchema } from '../../model/clinic.ts';
import type { ClinicProfile } from '../../model/clinic.ts';
import { likeOptions } from '../../model/protocol-of.ts';
import { listWords } from '../describe-value.ts';
import type { Finding, Path } from '../finding.ts';
import { fieldsOfRole } from '../read-fields.ts';
import { walkSchema } from '../walk-schema.ts';
import { checkLateSigns } from './check-late-signs.ts';
import { findMissing } from './check-words.ts';

interface Both {
  readonly case: Case;
  readonly clinic: ClinicProfile;
  readonly underStudy: readonly string[];
}

/** What the clinic profile lacks for this case, placed in the profile; warnings, but for a document that it alone can fill. */
export function checkClinicForCase(both: Both): Finding[] {
  return [
    ...checkApproval(both),
    ...checkSecondOpinion(both),
    ...checkProtocol(both),
    ...checkForms(both),
    ...checkNotice(both),
    ...checkLateSigns(both.case, both.clinic),
    ...checkLanguages(both),
  ];
}

function checkApproval({ clinic }: Both): Finding[] {
  if (clinic.approved !== null) return [];
  const message = 'nobody has approved this profile: packets stay drafts';
  const hint = 'Add approved: {by: name, on: date} once a responsible person has read it.';
  return [{ code: 'CASE_DRAFT_ONLY', severity: 'warning', path: ['approved'], at: 'absent', message, hint }];
}

function checkSecondOpinion({ case: { decision }, clinic }: Both): Finding[] {
  if (decision.leaning === null || clinic.second_opinion.length > 0) return [];
  const message = "the surgeon's opinion is printed, but not whom to ask for a second one";
  const hint = 'Add second_opinion: with a name and a phone number.';
  return [
    { code: 'CLINIC_INCOMPLETE', severity: 'warning', path: ['second_opinion'], at: 'absent', message, hint },
  ];
}

/** What the comparison prints of the protocol. */
const compared = ['stay', 'time_off', 'visits', 'for_life'] as const;

function checkProtocol({ case: { decision }, clinic }: Both): Finding[] {
  const silent = decision.options.filter(
    (option) => !compared.some((topic) => Object.hasOwn(clinic.protocol[topic], option)),
  );
  if (silent.length === 0) return [];
  const message = `the clinic's own practice is not written for: ${listWords(silent)}`;
  const hint = 'Add stay, time_off, visits or for_life for it; the page says to ask otherwise.';
  return [{ code: 'CLINIC_INCOMPLETE', severity: 'warning', path: ['protocol'], at: 'key', message, hint }];
}

function checkForms({ case: { decision }, clinic, underStudy }: Both): Finding[] {
  return decision.options.flatMap((option): Finding[] => {
    const entry = Object.hasOwn(clinic.under_study, option) ? clinic.under_study[option] : undefined;
    if (!underStudy.includes(option) || entry === undefined || entry.form !== null) return [];
    const message = 'no approval form is named: packets with this option stay drafts';
    const path: Path = ['under_study', option];
    return [
      {
        code: 'CASE_DRAFT_ONLY',
        severity: 'warning',
        path,
        at: 'key',
        message,
        hint: 'Add form: and the name of the approval form.',
      },
    ];
  });
}

function checkNotice({ case: asked, clinic }: Both): Finding[] {
  if (!documentsOf(asked).includes('language-notice') || clinic.language_notice !== null) return [];
  const message = 'the notice of language help is asked for, and its languages and number are not there';
  const hint = 'Add language_notice: {languages: [en, es], phone: "555-0100"}, or leave the document out.';
  return [{ code: 'CLINIC_INCOMPLETE', path: ['language_notice'], at: 'absent', message, hint }];
}

/** Words of the profile that this case would print, in the languages of the packet. */
function checkLanguages({ case: { decision, languages }, clinic }: Both): Finding[] {
  const texts: { path: Path; value: unknown }[] = [];
  for (const option of decision.options) {
    for (const topic of compared)
      texts.push({ path: ['protocol', topic, option], value: clinic.protocol[topic][option] });
    texts.push({ path: ['under_study', option, 'oversight'], value: clinic.under_study[option]?.oversight });
  }
  if (decision.chosen !== null) texts.push(...wordsAfterwards(clinic, decision.chosen));
  texts.push(
    ...clinic.prefer.map(({ reason }, index) => ({ path: ['prefer', index, 'reason'], value: reason })),
  );
  return texts.flatMap(({ path, value }) => findMissing({ path, value, languages }));
}

/** Words on the time after a treatment, which are printed once it is chosen. */
function wordsAfterwards(clinic: ClinicProfile, chosen: string): { path: Path; value: unknown }[] {
  const fields = walkSchema(ClinicProfileSchema, clinic);
  const options = likeOptions(clinic.protocol, chosen);
  return fieldsOfRole(fields, 'local-text').filter(({ path: [group, topic, option] }) => {
    return group === 'protocol' && options.includes(String(option)) && !compared.some((one) => one === topic);
  });
}
