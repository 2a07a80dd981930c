import type { Cell } from '../../model/comparison.ts';
import type { KnownPair, PairFinding, ReasonFinding } from '../../model/reason-check.ts';
import type { LookOf } from '../../model/reason-rules.ts';
import { buildTopicRow } from '../build-topic-row.ts';
import { describeOption } from '../describe-option.ts';
import type { OptionDesk } from '../describe-option.ts';
import { laterWindows } from '../weigh-time.ts';
import { alikeOthers, meaningOf, windowsOf } from './reason-desk.ts';
import type { AskedOption, ReasonDesk } from './reason-desk.ts';
import type { RowSource } from './read-figures.ts';
import { weighPair } from './weigh-pair.ts';

/** The option against each other one: a claim holds against all of them, or it does not hold. */
export function lookCompare(look: LookOf<'compare'>, asked: AskedOption, room: ReasonDesk): ReasonFinding {
  const { desk } = asked;
  const source = sourceOf(room);
  const claim = { outcomes: look.outcomes, windows: windowsOf(look.times), has: look.has };
  const weigh = (others: readonly OptionDesk[]): readonly PairFinding[] =>
    others
      .map((theirs) => weighPair({ mine: desk, theirs }, claim, source))
      .filter((pair) => pair !== undefined);
  const alike = look.than === 'alike' ? weigh(alikeOthers(room.desks, desk)) : [];
  const pairs = alike.length > 0 ? alike : weigh(room.desks.filter(({ code }) => code !== desk.code));
  const isAgainst = pairs.some(({ result }) => result === 'no');
  const isFor = pairs.length > 0 && pairs.every(({ result }) => result === 'yes');
  const answer = isAgainst ? 'no' : isFor ? 'yes' : undefined;
  return { find: 'compare', means: meaningOf(look, answer), has: look.has, pairs };
}

/** People in whom something got better: more than without treatment, or where that is not known, more than a few. */
export function lookRecover(look: LookOf<'recover'>, { desk }: AskedOption, room: ReasonDesk): ReasonFinding {
  const claim = { outcomes: look.outcomes, windows: laterWindows, has: 'more' } as const;
  const theirs = untreatedDesk(desk, room);
  const pair = theirs === undefined ? undefined : weighPair({ mine: desk, theirs }, claim, sourceOf(room));
  return pair === undefined || pair.result === 'unknown'
    ? lookAlone(look, desk, room)
    : lookAgainst(look, pair);
}

function lookAgainst(look: LookOf<'recover'>, pair: KnownPair): ReasonFinding {
  const { outcome, asked, records, result } = pair;
  const [record = ''] = records;
  const own = 'mine' in pair ? { record, value: pair.mine } : null;
  const answer = result === 'unclear' ? undefined : result;
  return { find: 'recover', means: meaningOf(look, answer), outcome, asked, own, untreated: pair };
}

/** Without figures of people who are not treated: a few may get better by themselves, so it takes more than that. */
function lookAlone(look: LookOf<'recover'>, desk: OptionDesk, room: ReasonDesk): ReasonFinding {
  const cell = findOwn(look.outcomes, desk, room);
  if (cell === undefined) {
    const [outcome = ''] = look.outcomes;
    return { find: 'recover', means: 'nothing', outcome, asked: {}, own: null, untreated: null };
  }
  const { outcome, asked, value, lead } = cell;
  const low = value.kind === 'proportion' ? (value.interval?.low ?? 0) : 0;
  const means = meaningOf(look, low * 100 >= look.at_least ? 'yes' : undefined);
  return { find: 'recover', means, outcome, asked, own: { record: lead.record, value }, untreated: null };
}

/** Doing nothing more, among the options of the case or not; nothing to weigh it against itself. */
function untreatedDesk(
  { code, subject, clinic, surgeon }: OptionDesk,
  room: ReasonDesk,
): OptionDesk | undefined {
  if (code === 'no-operation') return undefined;
  const { desks, evidence } = room;
  const setting = { subject, evidence, clinic, surgeon };
  return desks.find((desk) => desk.code === 'no-operation') ?? describeOption('no-operation', setting);
}

/** The option's own figure of the most direct outcome that has one, the longest time first. */
function findOwn(
  outcomes: readonly string[],
  desk: OptionDesk,
  { desks, evidence }: ReasonDesk,
): Extract<Cell, { state: 'known' }> | undefined {
  for (const outcome of outcomes) {
    for (const window of laterWindows) {
      const { cells } = buildTopicRow(desks, evidence.topics, { outcome, window });
      const own = cells.filter((cell) => cell.state === 'known').find(({ option }) => option === desk.code);
      if (own !== undefined) return own;
    }
  }
  return undefined;
}

function sourceOf({ desks, evidence }: ReasonDesk): RowSource {
  return { desks, plans: evidence.topics };
}
