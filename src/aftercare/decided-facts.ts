import type { AftercareSubject, AftercareTopic } from '../model/aftercare-codes.ts';
import type { AftercareFact } from '../model/aftercare.ts';
import { adviceSubjects } from '../model/protocol-codes.ts';
import { protocolOf } from '../model/protocol-of.ts';
import type { AfterTopic, Practice } from '../model/protocol-of.ts';
import { isForOther } from './plan-rules.ts';
import type { Setting } from './setting.ts';

/** Topics of the evidence that a list of the clinic decides as a whole, whatever else guidelines name. */
const wholeTopics: Readonly<Partial<Record<AftercareTopic, AfterTopic>>> = {
  'diet-stage': 'diet',
  'follow-up': 'follow_up',
  lifting: 'lifting',
  driving: 'driving',
  work: 'work',
  activity: 'walking',
  supplement: 'supplements',
  'blood-test': 'blood_tests',
  'other-test': 'blood_tests',
};

/** Ids of facts on which the clinic has spoken for this option. It wins over all sources, and over all sides of a conflict. */
export function decidedFacts(setting: Setting): ReadonlySet<string> {
  const spoken = spokenBy(setting);
  const direct = new Set(setting.facts.filter(({ fact }) => spoken(fact)).map(({ fact }) => fact.id));
  const sided = setting.facts.filter(({ fact }) => fact.conflict_with?.some((other) => direct.has(other)));
  return new Set([...direct, ...sided.map(({ fact }) => fact.id)]);
}

function spokenBy(setting: Setting): (fact: AftercareFact) => boolean {
  const { clinic, option } = setting;
  const medicines = protocolOf(clinic.protocol, 'medicines_after', option)?.practice ?? [];
  const advice = protocolOf(clinic.protocol, 'advice', option)?.practice ?? [];
  const advised = new Set<AftercareSubject>(advice.flatMap((entry) => adviceSubjects[entry.about]));
  const signs = spokenSigns(setting);
  return (fact) => {
    const { topic, subject } = fact;
    const whole = wholeTopics[topic];
    const isListed = whole !== undefined && protocolOf(clinic.protocol, whole, option) !== undefined;
    return isListed || speaksOf(medicines, fact) || advised.has(subject) || signs.has(subject);
  };
}

/**
 * Whether lines on medicines decide a fact. How to swallow tablets does not decide who takes care of a medicine whose dose
 * must be exact: only a line for these people does.
 */
function speaksOf(lines: Practice<'medicines_after'>, { topic, who }: AftercareFact): boolean {
  return lines.some(
    (line) => line.about === topic && (who !== 'narrow-dose-range' || line.for === 'narrow-dose-range'),
  );
}

function spokenSigns(setting: Setting): ReadonlySet<string> {
  const { clinic, option } = setting;
  const warnings = protocolOf(clinic.protocol, 'warnings', option)?.practice;
  if (warnings === undefined) return new Set();
  const { now, today, at_visit: atVisit, fever, pulse } = warnings;
  const calls = protocolOf(clinic.protocol, 'call', option)?.practice ?? [];
  const codes = [...now, ...today, ...atVisit].flatMap((sign) =>
    'code' in sign && !isForOther(setting, sign.for) ? [sign.code] : [],
  );
  return new Set<string>([
    ...codes,
    ...(fever === undefined ? [] : ['fever-number']),
    ...(pulse === undefined ? [] : ['fast-heartbeat-number']),
    // The clinic's own list of what can wait stands for the list of usual practice.
    ...(atVisit.length === 0 ? [] : ['late-problems-other']),
    // A list of numbers decides whom to call about thoughts of self-harm only if one of them is for that.
    ...(calls.some(({ about }) => about === 'self-harm') ? ['self-harm-line'] : []),
  ]);
}
