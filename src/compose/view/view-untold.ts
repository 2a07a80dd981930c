import type { Topic } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { outcomeMeanings, quotedList } from './say-meanings.ts';
import type { Scene } from './scene.ts';
import { body } from './shared-shapes.ts';
import type { ChoiceTableView } from './shared-shapes.ts';
import { isProcedure } from './view-people.ts';
import { joined } from './words.ts';

/** Outcomes that are not known for any option take a sentence, not a table of gaps. */
export function untoldView(scene: Scene, outcomes: readonly string[], why: Markup): ChoiceTableView {
  const names = outcomes.map((outcome) => scene.words.plain(`outcomes.${outcome}.name`));
  const none = scene.words.say('common.table.none_known', { outcomes: quotedList(scene, names) });
  const lead = [joined(...outcomeMeanings(scene, outcomes)), joined(none, why)];
  return {
    lead: lead.filter(({ markup }) => markup !== '').map(body),
    columns: [],
    rows: [],
    firstNote: 1,
    notes: [],
  };
}

/**
 * What everybody asks of the first month first, where no option has a figure for it: the outcome that leads the topic, and
 * the first of its table. Whoever looks for a number must read that there is none.
 */
export function untoldEarly(scene: Scene, topic: Topic): readonly ChoiceTableView[] {
  const plan = scene.evidence.topics['first-month'];
  if (topic.id !== 'first-month' || !scene.options.some(isProcedure)) return [];
  const told = [topic.picture, ...topic.rows].map((row) => row?.outcome);
  const untold = [plan.picture, plan.rows.slice(0, 1)]
    .filter((alike) => !alike.some((outcome) => told.includes(outcome)))
    .flatMap((alike) => alike.slice(0, 1));
  return untold.length === 0 ? [] : [untoldView(scene, untold, scene.words.say('common.table.none_holds'))];
}
