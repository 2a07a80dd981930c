import type { WhoCode } from '../model/aftercare-codes.ts';
import type { Case } from '../model/case.ts';
import { ageOn, bodyMassIndex } from '../model/quantity.ts';

/** Whether words are for this person; `unknown`: the case cannot tell, so the page says for whom they are. */
export type IsFor = 'yes' | 'no' | 'unknown';

interface Person {
  readonly asked: Case;
  /** Whole years on the day of the treatment. */
  readonly age: number;
  /** kg/m². */
  readonly bmi: number;
}

/** Whom words are about, against the case. `date` is the day of the treatment, ISO. */
export function judgeWho(who: WhoCode, asked: Case, date: string): IsFor {
  const { born, weight, height } = asked.patient;
  return judges[who]({ asked, age: ageOn(born, date), bmi: bodyMassIndex(weight.kg, height.m) });
}

const always = (): IsFor => 'yes';
/** A case has no word for it. */
const untold = (): IsFor => 'unknown';

function has(list: 'conditions' | 'medicines', ...codes: readonly string[]): (person: Person) => IsFor {
  return ({ asked: { health } }) => (health[list].some((code) => codes.includes(code)) ? 'yes' : 'no');
}

/** Women of an age in which it may still be; no man, and nobody of whom the sex is not stated is left out. */
function woman({ asked: { patient }, age }: Person): IsFor {
  return patient.sex === 'male' || age >= latestMotherhood ? 'no' : 'unknown';
}

/** Far past the age at which a pregnancy is still possible: nobody is left out who could need the words. */
const latestMotherhood = 60;

function planning(person: Person): IsFor {
  const { now, planned_within_months: months } = person.asked.health.pregnancy;
  return woman(person) === 'no' ? 'no' : months !== null && !now ? 'yes' : 'unknown';
}

function pregnant(person: Person): IsFor {
  return woman(person) === 'no' ? 'no' : person.asked.health.pregnancy.now ? 'yes' : 'unknown';
}

const smoking: Readonly<Record<Case['health']['smoking'], readonly [now: IsFor, ever: IsFor]>> = {
  current: ['yes', 'yes'],
  former: ['no', 'yes'],
  never: ['no', 'no'],
  'not-asked': ['unknown', 'unknown'],
};

/** Signs of a high risk of a clot that a case can state: over 55 years, a BMI over 55, an earlier clot, sleep apnoea. */
function clotRisk(person: Person): IsFor {
  const { age, bmi } = person;
  const isKnown = has('conditions', 'previous-clot', 'sleep-apnoea')(person) === 'yes';
  return age > 55 || bmi > 55 || isKnown ? 'yes' : 'unknown';
}

function gallbladder({ asked: { health } }: Person): IsFor {
  return health.history.includes('gallbladder-removed') ? 'no' : 'unknown';
}

/** A list of medicines names the pill and no other oestrogen. */
function oestrogen(person: Person): IsFor {
  return has('medicines', 'oral-contraceptive')(person) === 'yes' ? 'yes' : woman(person);
}

const judges: Readonly<Record<WhoCode, (person: Person) => IsFor>> = {
  adults: always,
  everyone: always,
  smokes: ({ asked }) => smoking[asked.health.smoking][0],
  'ever-smoked': ({ asked }) => smoking[asked.health.smoking][1],
  'alcohol-misuse': has('conditions', 'alcohol-problem'),
  diabetes: has('conditions', 'type-2-diabetes', 'uncontrolled-diabetes'),
  'blood-pressure-medicine': has('medicines', 'blood-pressure-medicine'),
  'narrow-dose-range': (person) =>
    has('medicines', 'narrow-dose-range')(person) === 'yes' ? 'yes' : 'unknown',
  'sglt2-inhibitor': has('medicines', 'sglt2-inhibitor'),
  ertugliflozin: (person) => (has('medicines', 'sglt2-inhibitor')(person) === 'yes' ? 'unknown' : 'no'),
  'high-clot-risk': clotRisk,
  'oestrogen-pill': has('medicines', 'oral-contraceptive'),
  'hormone-replacement': ({ asked }) => (asked.patient.sex === 'male' ? 'no' : 'unknown'),
  oestrogen: (person) =>
    person.asked.patient.sex === 'male' ? 'no' : oestrogen(person) === 'yes' ? 'yes' : 'unknown',
  gallbladder,
  'gallbladder-no-stones': gallbladder,
  'long-vomiting': untold,
  'short-of-thiamine': untold,
  'poor-absorption': untold,
  'without-anaemia': untold,
  menstruates: woman,
  'does-not-menstruate': (person) => (woman(person) === 'no' ? 'yes' : 'unknown'),
  'could-become-pregnant': (person) => (planning(person) === 'yes' ? 'yes' : woman(person)),
  'plans-pregnancy': planning,
  'plans-pregnancy-usual-need': (person) => narrow(planning(person)),
  'plans-pregnancy-high-need': (person) => narrow(planning(person)),
  'plans-or-has-pregnancy': (person) => (planning(person) === 'yes' ? 'yes' : pregnant(person)),
  pregnant,
  'pregnant-high-need': (person) => narrow(pregnant(person)),
  'pregnant-vomiting': (person) => narrow(pregnant(person)),
  'desk-worker': untold,
  'measured-group': () => 'no',
};

/** Only some of those people. */
function narrow(judged: IsFor): IsFor {
  return judged === 'no' ? 'no' : 'unknown';
}
