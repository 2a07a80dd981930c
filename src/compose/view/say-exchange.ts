import type { Cell, KnownCell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import type { Scene } from './scene.ts';
import type { Words } from './words.ts';

/**
 * How the people of a figure had their band exchanged, in a sentence. Null where it was as planned here, and where no
 * band was exchanged.
 */
export function sayExchange(
  { words, records, ...scene }: Scene,
  { lead }: KnownCell,
  form: Form = 'one',
): Markup | null {
  const reason = lead.match === 'near' ? lead.reasons[0] : undefined;
  if (reason?.code === 'stages') return words.say(`missing.near.${stagesForm(reason)}`);
  const theirs = records.get(lead.record)?.people.stages;
  const isOneWay = theirs === 'one' || theirs === 'two';
  if (theirs === undefined || (isOneWay && scene.case.plan.stages !== undefined)) return null;
  return words.say(keyFor(words, { group: 'exchange', code: theirs, form }));
}

/** Whether words are about a figure, or about figures of several studies. */
export type Form = 'one' | 'several';

interface Asked {
  readonly group: 'near' | 'exchange';
  readonly code: string;
  readonly form: Form;
}

/** Only words that name "the study" have others for several studies. */
export function keyFor({ has }: Words, { group, code, form }: Asked): string {
  const several = `missing.${group}_several.${code}`;
  return form === 'several' && has(several) ? several : `missing.${group}.${code}`;
}

/** Its words have a form for each way round: theirs at once and two operations planned, or two and one. */
export function stagesForm({ theirs }: { readonly theirs: 'one' | 'two' }): string {
  return theirs === 'two' ? 'stages-two' : 'stages';
}

/** The same for all figures of a strip, to be said once beneath it; null where it is not true of each. */
export function sharedExchange(scene: Scene, cells: readonly Cell[]): Markup | null {
  const said = exchanges(scene, cells);
  const [first] = said;
  return first !== undefined && said.every((one) => one?.markup === first?.markup) ? first : null;
}

function exchanges(scene: Scene, cells: readonly Cell[]): readonly (Markup | null)[] {
  return cells.flatMap((cell) => (cell.state === 'known' ? [sayExchange(scene, cell)] : []));
}
