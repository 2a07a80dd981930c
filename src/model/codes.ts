import { z } from 'zod';

/** Document kinds this version can make. */
export const documentKinds = [
  'comparison',
  'questions',
  'consent',
  'operation',
  'homecare',
  'warning-signs',
  'vitamins',
  'sources',
  'clinician-sheet',
  'contents',
  'language-notice',
] as const;
export const DocumentKindSchema = z.enum(documentKinds);
export type DocumentKind = z.infer<typeof DocumentKindSchema>;

/** Documents that say what studies found, or where it was read. */
export const studyDocuments: readonly DocumentKind[] = [
  'comparison',
  'consent',
  'operation',
  'sources',
  'clinician-sheet',
];

/** Documents about the time after a treatment, counted from its day. */
export const homeDocuments: readonly DocumentKind[] = ['homecare', 'warning-signs', 'vitamins'];

/** Named lists of documents for a patient, in order; the clinician sheet is asked for by name. */
export const packetDocuments = {
  choosing: ['contents', 'comparison', 'questions', 'sources'],
  operation: ['contents', 'operation', 'consent'],
  'going-home': ['contents', 'homecare', 'warning-signs', 'vitamins'],
} as const satisfies Record<string, readonly DocumentKind[]>;
export const PacketNameSchema = z.enum(['choosing', 'operation', 'going-home']);

/** Coded words a case may use. Cautions and risk factors of the evidence use the same codes. */
export const conditionCodes = [
  'type-2-diabetes',
  'uncontrolled-diabetes',
  'prediabetes',
  'high-blood-pressure',
  'sleep-apnoea',
  'heart-disease',
  'high-cholesterol',
  'fatty-liver',
  'knee-arthritis',
  'polycystic-ovaries',
  'reflux',
  'severe-reflux',
  'oesophagitis',
  'severe-oesophagitis',
  'barrett-oesophagus',
  'hiatal-hernia',
  'large-hiatal-hernia',
  'h-pylori',
  'needs-stomach-endoscopy',
  'bile-duct-disease',
  'slow-stomach-emptying',
  'inflammatory-bowel-disease',
  'cirrhosis',
  'kidney-disease',
  'kidney-stones',
  'previous-clot',
  'chronic-lung-disease',
  'transplant',
  'weakened-immunity',
  'alcohol-problem',
  'eating-disorder',
  'unstable-mental-illness',
  'cannot-attend-follow-up',
  'b12-deficiency',
  'iron-or-calcium-lack',
  'diabetic-eye-disease',
  'medullary-thyroid-cancer-self-or-family',
  'men2',
  'allergy-to-the-medicine',
  'latex-allergy',
  'metal-allergy',
  'band-erosion',
  'band-slip',
] as const;
export const medicineCodes = [
  'metformin',
  'insulin',
  'sulfonylurea',
  'sglt2-inhibitor',
  'weight-loss-injection',
  'anti-inflammatory',
  'aspirin',
  'steroid',
  'blood-thinner',
  'narrow-dose-range',
  'oral-contraceptive',
  'acid-medicine',
  'blood-pressure-medicine',
] as const;
export const historyCodes = ['pancreatitis', 'stomach-operation', 'gallbladder-removed'] as const;

/** What a person may say matters most, coded. Own words are free text. */
export const matterCodes = [
  'most-weight-loss',
  'fewest-serious-problems',
  'keep-options-open',
  'no-lifelong-vitamins',
  'keep-pain-medicine',
  'diabetes-better',
  'reflux-better',
  'soon-back-to-work',
  'no-operation-if-possible',
  'eat-with-family',
] as const;

/** Reasons a surgeon may code for leaning to an option or advising against one. */
export const reasonCodes = [
  'reflux-better',
  'reflux-worse',
  'diabetes-better',
  'more-weight-loss',
  'fewer-early-problems',
  'fewer-late-problems',
  'can-be-undone',
  'cannot-be-undone',
  'keeps-pain-medicine',
  'no-pain-medicine',
  'fits-what-matters',
  'fewer-vitamins',
  'more-vitamins',
  'safer-with-other-illness',
  'not-studied-enough',
  'earlier-operation',
] as const;
