import type { AftercareSubject, AftercareTopic, WhoCode } from './aftercare-codes.ts';

/** Supplements that a clinic may list. A salt of iron is weighed as the salt, iron as the element. */
export const supplementCodes = [
  'multivitamin-mineral',
  'thiamine',
  'vitamin-b12',
  'folic-acid',
  'iron',
  'iron-as-ferrous-sulfate',
  'iron-as-ferrous-fumarate',
  'iron-as-ferrous-gluconate',
  'calcium',
  'vitamin-d3',
  'vitamin-a',
  'vitamin-e',
  'vitamin-k',
  'zinc',
  'copper',
  'protein',
  'other',
] as const satisfies readonly (AftercareSubject | 'other')[];

export type SupplementCode = (typeof supplementCodes)[number];

/** What a medicine after the operation is for. */
export const medicineTopics = [
  'acid-medicine',
  'clot-prevention',
  'pain-medicine',
  'gallstone-medicine',
  'diabetes-medicine',
  'blood-pressure-medicine',
  'medicine-form',
  'sickness-medicine',
  'other',
] as const satisfies readonly (AftercareTopic | 'sickness-medicine' | 'other')[];

/** What else a clinic may advise, each with the subjects of the evidence that it decides. */
export const adviceSubjects = {
  'low-calorie-diet': ['low-calorie-diet', 'low-calorie-diet-length'],
  'tests-before-operation': ['tests-before-operation'],
  'smoking-before': ['smoking-before'],
  'smoking-after': ['smoking-after'],
  'alcohol-before': ['alcohol-before'],
  'alcohol-after': ['alcohol-after', 'alcohol-stronger', 'alcohol-trouble'],
  'drinks-with-meals': ['drinks-with-meals'],
  protein: ['protein', 'protein-per-kg', 'protein-per-kg-ideal-weight'],
  fluid: ['fluid'],
  'weekly-activity': ['weekly-activity', 'weekly-activity-goal'],
  'wait-before-conceiving': ['wait-before-conceiving'],
  contraception: ['oral-pill', 'fertility-returns'],
  'pregnancy-tests': ['pregnancy-tests'],
  'glucose-drink-test': ['glucose-drink-test'],
  'surgery-details': ['surgery-details'],
  // On these nothing was read: only a clinic says anything.
  bowels: [],
  travel: [],
  sex: [],
  caffeine: [],
  'missed-dose': [],
  'own-medicines': [],
} as const satisfies Record<string, readonly AftercareSubject[]>;
export type AdviceCode = keyof typeof adviceSubjects;
export const adviceCodes = Object.keys(adviceSubjects) as readonly AdviceCode[];

/** Signs that a clinic may sort by how fast to call; its own words can be added. */
export const signCodes = [
  'belly-pain',
  'fast-heartbeat',
  'fever',
  'chest-pain-breathless',
  'vomiting',
  'vomiting-or-pain-after-plication',
  'blockage-or-internal-hernia',
  'bleeding-signs',
  'fainting',
  'leg-swelling',
  'thiamine-brain-signs',
  'self-harm',
  'cannot-swallow',
  'wound',
  'not-keeping-fluids-down',
  'band-problems',
  'late-problems',
  'food-sticking',
  'dumping',
  'low-sugar',
  'hair-loss',
  'numb-feet',
  'low-mood',
  'alcohol-worry',
  'weight-regain',
] as const;
export type SignCode = (typeof signCodes)[number];

/** Signs with a number to call of their own. */
export const callSigns = ['self-harm'] as const satisfies readonly SignCode[];

/** Whom a line of the protocol is for, where it is not for everybody. */
export const personCodes = [
  'smokes',
  'ever-smoked',
  'alcohol-misuse',
  'diabetes',
  'blood-pressure-medicine',
  'narrow-dose-range',
  'sglt2-inhibitor',
  'high-clot-risk',
  'oestrogen',
  'gallbladder',
  'menstruates',
  'does-not-menstruate',
  'could-become-pregnant',
  'plans-pregnancy',
  'pregnant',
] as const satisfies readonly WhoCode[];

/** Whom a visit is with. */
export const staffCodes = [
  'surgeon',
  'weight-doctor',
  'nurse',
  'dietitian',
  'psychologist',
  'physiotherapist',
  'pharmacist',
  'family-doctor',
] as const;
export type StaffCode = (typeof staffCodes)[number];
