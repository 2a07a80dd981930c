import type { Case } from '../../model/case.ts';
import type { Person } from '../../model/comparison.ts';

interface HealthQuestion {
  /** Key under `questions.health`. */
  readonly key: string;
  readonly applies: (file: Case, person: Person) => boolean;
}

type Condition = Case['health']['conditions'][number];
type Medicine = Case['health']['medicines'][number];

function has(...codes: readonly Condition[]): HealthQuestion['applies'] {
  return ({ health }) => codes.some((code) => health.conditions.includes(code));
}

function takes(...codes: readonly Medicine[]): HealthQuestion['applies'] {
  return ({ health }) => codes.some((code) => health.medicines.includes(code));
}

function either(...tests: readonly HealthQuestion['applies'][]): HealthQuestion['applies'] {
  return (file, person) => tests.some((test) => test(file, person));
}

/** What only a look with a camera can show: to ask whether one is needed would sound as if nobody had read the findings. */
const wasSeen = has('oesophagitis', 'severe-oesophagitis', 'barrett-oesophagus');
const hasReflux = either(
  has('reflux', 'severe-reflux', 'hiatal-hernia', 'large-hiatal-hernia'),
  takes('acid-medicine'),
);

/** Which question is worth asking in which state of health. No figures: the comparison holds those. */
export const healthQuestions: readonly HealthQuestion[] = [
  { key: 'pregnant_now', applies: ({ health }) => health.pregnancy.now },
  { key: 'pregnancy', applies: ({ health }) => health.pregnancy.planned_within_months !== null },
  { key: 'young', applies: (_, person) => person.age < 18 },
  { key: 'older', applies: (_, person) => person.age >= 65 },
  { key: 'high_bmi', applies: (_, person) => person.bmi >= 50 },
  { key: 'low_bmi', applies: (_, person) => person.bmi < 35 },
  {
    key: 'earlier_operation',
    applies: ({ health }) =>
      health.earlier_operations.length > 0 || health.history.includes('stomach-operation'),
  },
  {
    key: 'diabetes',
    applies: either(
      has('type-2-diabetes', 'uncontrolled-diabetes', 'diabetic-eye-disease'),
      takes('insulin', 'sulfonylurea', 'sglt2-inhibitor', 'metformin'),
    ),
  },
  { key: 'blood_pressure', applies: either(has('high-blood-pressure'), takes('blood-pressure-medicine')) },
  { key: 'sleep_apnea', applies: has('sleep-apnoea', 'chronic-lung-disease') },
  { key: 'heart', applies: has('heart-disease') },
  { key: 'reflux', applies: (file, person) => hasReflux(file, person) && !wasSeen(file, person) },
  { key: 'reflux_seen', applies: wasSeen },
  {
    key: 'stomach',
    applies: has(
      'h-pylori',
      'needs-stomach-endoscopy',
      'bile-duct-disease',
      'slow-stomach-emptying',
      'band-erosion',
    ),
  },
  { key: 'bowel', applies: has('inflammatory-bowel-disease') },
  { key: 'liver', applies: has('cirrhosis', 'fatty-liver') },
  { key: 'kidney', applies: has('kidney-disease', 'kidney-stones') },
  { key: 'clot', applies: either(has('previous-clot'), takes('blood-thinner')) },
  { key: 'pain_medicine', applies: takes('anti-inflammatory') },
  { key: 'aspirin', applies: takes('aspirin') },
  { key: 'exact_dose', applies: either(has('transplant', 'weakened-immunity'), takes('narrow-dose-range')) },
  { key: 'contraceptive', applies: takes('oral-contraceptive') },
  { key: 'vitamins', applies: has('b12-deficiency', 'iron-or-calcium-lack') },
  { key: 'smoking', applies: ({ health }) => health.smoking === 'current' },
  { key: 'alcohol', applies: has('alcohol-problem') },
  { key: 'mind', applies: has('eating-disorder', 'unstable-mental-illness') },
  { key: 'follow_up', applies: has('cannot-attend-follow-up') },
  { key: 'interpreter', applies: (file) => file.interpreter.needed },
];
