/** Which outcomes each topic may show, in the order of the page. */

/** What is drawn for the first month: the first of these that any option has. */
export const firstMonthPicture = ['major-complication', 'any-complication'] as const;

/** Most important first; the first four with a figure are shown: one table, as wide as a page. */
export const firstMonthRows = [
  'death',
  'leak',
  'bleeding',
  'clot',
  'reoperation',
  'readmission',
  'infection',
] as const;
export const firstMonthLimit = 4;

export const laterPicture = ['reoperation', 'reintervention', 'removal', 'conversion'] as const;

export const laterRows = [
  'conversion',
  'removal',
  'ulcer',
  'obstruction',
  'internal-hernia',
  'stricture',
  'gallstones',
  'gallbladder-removal',
  'deficiency-iron',
  'deficiency-vitamin-b12',
  'anaemia',
  'malnutrition',
  'fracture',
  'alcohol-problem',
  'self-harm',
  'oesophagitis',
  'barrett',
  'slippage',
  'erosion',
  'port-problem',
  'pancreatitis',
  'serious-adverse-event',
  'new-diabetes',
] as const;
export const laterLimit = 8;

export const livingRows = [
  'reflux',
  'dumping',
  'nausea',
  'vomiting',
  'diarrhoea',
  'constipation',
  'abdominal-pain',
  'hair-loss',
  'acid-medicine',
  'excess-skin',
  'side-effect-stop',
] as const;
export const livingLimit = 4;

/** Benefits per condition of the person; of several outcomes the first with a figure, else the first. */
export const benefitRows: readonly { readonly condition: string; readonly outcomes: readonly string[] }[] = [
  { condition: 'type-2-diabetes', outcomes: ['diabetes-remission'] },
  { condition: 'high-blood-pressure', outcomes: ['hypertension-remission'] },
  { condition: 'sleep-apnoea', outcomes: ['sleep-apnoea-remission', 'sleep-apnoea-improved'] },
  { condition: 'reflux', outcomes: ['reflux-remission'] },
];
