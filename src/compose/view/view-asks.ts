import type { Markup } from '../../model/locale.ts';
import type { LocalText } from '../../model/scalars.ts';
import { amountInWords } from './say-amount.ts';
import { onTroubleLeft } from './say-call-now.ts';
import { aboutBands, operationInPlace, takesBandOut } from './say-choice.ts';
import type { NamedOption, Scene } from './scene.ts';
import { flag, group, list } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, lineOf, plainRow, rowShape, tableShape } from './shared-shapes.ts';
import type { Line } from './shared-shapes.ts';
import { isProcedure } from './view-people.ts';
import { asMarkup } from './words.ts';

export const asksShape = group({
  table: tableShape,
  /** What each asks for life, where there is more to say than a narrow column holds. */
  forLife: list(rowShape),
  /** Whether the clinic's own protocol fills any cell, which a sentence then says. */
  fromClinic: flag,
});
export type AsksView = Viewed<typeof asksShape>;

type Protocol = Pick<Scene['clinic']['protocol'], 'stay' | 'time_off' | 'visits' | 'for_life'>;

/** What each option asks: stay, time off, visits, and for life. The clinic's own protocol wins and is printed as its own. */
export function viewAsks(scene: Scene): AsksView {
  const columns = [
    '',
    ...['stay', 'time_off', 'visits'].map((key) => scene.words.plain(`comparison.asks.${key}`)),
  ];
  const { protocol } = scene.clinic;
  return {
    table: {
      lead: [],
      columns: columns.map((label) => ({ label, width: '', align: 'start' })),
      rows: scene.options.map((option) => ({ group: '', tag: option.tag, cells: cellsOf(scene, option) })),
      notes: [],
    },
    forLife: scene.options.map((option) => plainRow(option, forLife(scene, option))),
    fromClinic: scene.options.some(({ code }) =>
      [protocol.stay, protocol.time_off, protocol.visits, protocol.for_life].some(
        (texts) => texts[code] !== undefined,
      ),
    ),
  };
}

function cellsOf(scene: Scene, option: NamedOption): readonly { readonly lines: readonly Line[] }[] {
  const { words } = scene;
  const treated = isProcedure(option);
  const none = [body(words.say('comparison.asks.none'))];
  const ask = [body(words.say('comparison.asks.ask'))];
  return [
    [lineOf('strong', asMarkup(option.name))],
    [...(ownText(scene, option, 'stay') ?? stayLines(scene, option)), ...bandBefore(scene, option)],
    ownText(scene, option, 'time_off') ?? (treated ? ask : none),
    // A visit a year would be too late for it.
    nonEmpty(onTroubleLeft(scene, option, 'asks.trouble_visits')) ?? ownText(scene, option, 'visits') ?? ask,
  ].map((lines) => ({ lines }));
}

/** The clinic's own words; null where it says nothing about this option. */
function ownText(scene: Scene, option: NamedOption, part: keyof Protocol): readonly Line[] | null {
  const text: LocalText | undefined = scene.clinic.protocol[part][option.code];
  return text === undefined ? null : [body(scene.words.free(text))];
}

function stayLines(scene: Scene, option: NamedOption): readonly Line[] {
  const { stay } = option.column;
  if (stay.state === 'not-possible') return [body(scene.words.say('comparison.asks.none'))];
  if (stay.state === 'not-known') return [body(scene.words.say('comparison.asks.ask'))];
  return [body(amountInWords(scene, stay)), lineOf('small', scene.words.say('comparison.asks.in_studies'))];
}

function nonEmpty(said: readonly Markup[]): readonly Line[] | null {
  return said.length === 0 ? null : said.map(body);
}

/** Where a band comes out in an operation of its own, the nights of that one are not among these. */
function bandBefore(scene: Scene, option: NamedOption): readonly Line[] {
  const isApart = scene.case.plan.stages === 'two' && takesBandOut(scene, option);
  return isApart ? [body(scene.words.say('comparison.asks.band_out_before'))] : [];
}

/** What an earlier operation asks for life goes on with every choice that makes no new operation. */
function goesOn(scene: Scene, option: NamedOption): readonly Line[] {
  const before = scene.evidence.options.find(({ code }) => code === operationInPlace(scene));
  const asksForLife = before?.kind === 'operation' && !aboutBands.includes(before.code);
  return asksForLife && !isProcedure(option) ? [body(scene.words.say('comparison.asks.vitamins_go_on'))] : [];
}

function forLife(scene: Scene, option: NamedOption): readonly Line[] {
  return [...chosenForLife(scene, option), ...goesOn(scene, option)];
}

function chosenForLife(scene: Scene, option: NamedOption): readonly Line[] {
  const own = ownText(scene, option, 'for_life');
  const signs = onTroubleLeft(scene, option, 'asks.trouble_for_life').map(body);
  if (own !== null) return [...signs, ...own];
  // "Nothing new" would contradict them.
  if (signs.length > 0) return signs;
  const usual = body(scene.words.say(`options.${option.code}.for_life`));
  // What operations ask for life stands in guidelines; the other texts only name the choice itself.
  return isProcedure(option)
    ? [usual, lineOf('small', scene.words.say('comparison.asks.not_clinic'))]
    : [usual];
}
