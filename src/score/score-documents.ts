import type { DocumentKind } from '../model/codes.ts';
import type { Criterion, CriterionSet } from '../model/criterion.ts';
import type { CriterionOutcome, DocumentScore, ScoredCriterion } from '../model/document-score.ts';
import type { DocumentTree } from '../model/document.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import type { Locale } from '../model/locale.ts';
import type { DocumentReading } from '../model/reading-level.ts';
import { forPerson, missing } from './check.ts';
import type { Finding } from './check.ts';
import { checks } from './checks.ts';
import { comparisonOf } from './pages.ts';
import type { Pages } from './pages.ts';
import { tallySets } from './tally.ts';

export interface ScoreInput {
  /** The documents of a packet; those for clinicians are not looked at. */
  readonly documents: readonly DocumentTree[];
  readonly readings: readonly DocumentReading[];
  readonly locale: Locale;
  readonly evidence: Pick<EvidenceBase, 'criteria' | 'date' | 'nextReview' | 'madeBy' | 'paidBy'>;
}

/** Sets about a decision: a packet for after it has none to be measured. */
const aboutDecisions: readonly CriterionSet[] = ['qualifying', 'certification', 'quality'];

/** To find a page, to look a figure up, and what the law wants said in many languages. */
const annexes: readonly DocumentKind[] = ['contents', 'sources', 'language-notice'];

/** Holds the patient documents of a packet, as they were made, against every criterion. */
export function scoreDocuments({ documents, evidence, ...input }: ScoreInput): DocumentScore {
  const patient = documents.filter(({ audience }) => audience === 'patient');
  const reader = patient.filter(({ kind }) => !annexes.includes(kind));
  const pages: Pages = { ...input, evidence, documents: patient, reader };
  const alone = evidence.criteria.map((criterion) => judge(criterion, pages));
  const items = alone.map((item) => heldTo(item, alone));
  return { items, sets: tallySets(items) };
}

function judge(criterion: Criterion, pages: Pages): ScoredCriterion {
  const { by, set } = criterion;
  const outside = aboutDecisions.includes(set) && comparisonOf(pages).length === 0;
  if (by === 'none' || outside) return { criterion, outcome: 'not-applicable', places: [] };
  const finding = look(criterion, pages);
  const places = 'places' in finding ? finding.places : [];
  return { criterion, outcome: outcomeOf(criterion, finding), places };
}

function look({ check }: Criterion, pages: Pages): Finding {
  if (check === undefined) return missing;
  return check === 'person' ? forPerson : checks[check](pages);
}

/** What is missing is owed by whoever can bring it; what may not be left out counts as missing. */
function outcomeOf({ by, may_not_apply: may }: Criterion, { found }: Finding): CriterionOutcome {
  if (found === 'met' || found === 'person') return found;
  if (found === 'not-applicable' && may === true) return 'not-applicable';
  return by === 'generator' || by === 'none' ? 'not-met' : by;
}

/** Some criteria count only where another is met. */
function heldTo(item: ScoredCriterion, all: readonly ScoredCriterion[]): ScoredCriterion {
  const { after } = item.criterion;
  const needed = after === undefined ? undefined : all.find(({ criterion }) => criterion.id === after);
  if (needed === undefined || needed.outcome === 'met' || item.outcome !== 'met') return item;
  return { ...item, outcome: 'not-met', places: needed.places };
}
