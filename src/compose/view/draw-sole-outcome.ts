import type { ComparisonTable, OutcomeRow, Topic } from '../../model/comparison.ts';

/** Topics whose figures a picture may show. */
const drawn: readonly string[] = ['first-month', 'later-years'];

/**
 * Where none of the outcomes that lead a topic is known and one other outcome is, that one is drawn: a table of one column
 * would say it in one form only.
 */
export function drawSoleOutcome(comparison: ComparisonTable): ComparisonTable {
  return { ...comparison, topics: comparison.topics.map(withPicture) };
}

function withPicture(topic: Topic): Topic {
  const told = topic.rows.filter(isTold);
  const [sole] = told;
  if (topic.picture !== null || sole === undefined || told.length > 1) return topic;
  if (!drawn.includes(topic.id) || !isCounted(sole)) return topic;
  // As all pictures of the first month, so that those of two people can be laid side by side.
  const denominator = topic.id === 'first-month' ? 1000 : topic.denominator;
  return { ...topic, picture: { ...sole, denominator } };
}

function isTold({ cells }: OutcomeRow): boolean {
  return cells.some(({ state }) => state === 'known');
}

/** Shares of people, with three events or more: fewer are said as they were counted and never as a rate. */
function isCounted({ cells }: OutcomeRow): boolean {
  const known = cells.flatMap((cell) => (cell.state === 'known' ? [cell] : []));
  return known.every(({ value }) => value.kind === 'proportion' && (value.events ?? fewest) >= fewest);
}

const fewest = 3;
