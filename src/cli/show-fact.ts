import type { FactDetails } from '../evidence/index.ts';
import type { AftercareFact, AftercareSource } from '../model/aftercare.ts';
import { alignColumns, countOf } from './align-columns.ts';
import { showCitation, showReviewOf } from './show-record.ts';

/** Facts on aftercare one a line: id, whom, use, how it was read, what it says. */
export function showFacts(facts: readonly AftercareFact[]): string {
  const lines = facts.map((fact) => [fact.id, fact.who, fact.use, fact.seen, showValue(fact)]);
  return [...alignColumns(lines), '', countOf(facts.length, 'fact')].join('\n');
}

/** Everything about one fact, where it was read, and why it may not print. */
export function showFactDetails({ fact, source, withheld, others, review }: FactDetails): string {
  const lines: readonly (readonly [string, string | undefined])[] = [
    ['fact', fact.id],
    ['says', showValue(fact)],
    ['about', `${fact.topic}, ${fact.subject}${fact.urgency === undefined ? '' : `, call: ${fact.urgency}`}`],
    ['options', fact.options.join(', ')],
    ['treated alike', fact.extrapolated_to?.join(', ')],
    ['people', [fact.who, fact.people].filter((part) => part !== undefined).join('; ')],
    ['not for', fact.not_for?.join(', ')],
    ['time', showTiming(fact)],
    ['taken', fact.route],
    ['read', fact.seen],
    [
      'prints',
      withheld.length === 0 ? 'as the rule of its source' : `never as a rule: ${withheld.join(', ')}`,
    ],
    ['conflicts with', fact.conflict_with?.join(', ')],
    ['one of', listAlternatives(fact, others)],
    ['note', fact.note],
    ...(source === undefined ? [] : showSource(source)),
    ['read at', (fact.seen_at === undefined ? source?.seen_at : [fact.seen_at])?.join(' ')],
    ['read again', showReviewOf({ review })],
  ];
  const given = lines.flatMap(([name, value]) =>
    value === undefined || value === '' ? [] : [[name, value]],
  );
  return alignColumns(given).join('\n');
}

function listAlternatives(
  { one_of: group }: AftercareFact,
  others: readonly AftercareFact[],
): string | undefined {
  if (group === undefined) return undefined;
  return others
    .filter((other) => other.one_of === group)
    .map(({ id }) => id)
    .join(', ');
}

function showSource(source: AftercareSource): readonly (readonly [string, string | undefined])[] {
  const edition = source.replaced === true ? '; a newer edition exists' : '';
  return [
    ['source', `${source.id} (${source.kind}${edition})`],
    ...showCitation(source.citation),
    ['country', source.country],
  ];
}

/** As the data file has it, for example `60 to 80 g/day` or `at least 12 mg/day`. */
function showValue({ value }: AftercareFact): string {
  if (typeof value === 'string') return value;
  if ('tests' in value) return value.tests.join(', ');
  const { low, high, unit } = value;
  if (low === null) return `at most ${String(high)} ${unit}`;
  if (high === null) return `at least ${String(low)} ${unit}`;
  return low === high ? `${String(low)} ${unit}` : `${String(low)} to ${String(high)} ${unit}`;
}

function showTiming({ timing }: AftercareFact): string | undefined {
  if (timing === undefined) return undefined;
  return Object.entries(timing)
    .map(([key, part]: [string, unknown]) =>
      key === 'phase' ? String(part) : `${key.replaceAll('_', ' ')} ${String(part)}`,
    )
    .join(', ');
}
