import type { OutcomeRow, Topic } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { roundShare } from '../round-counts.ts';
import { sayExchange, sharedExchange } from './say-exchange.ts';
import { meaningOfDrawn } from './say-meanings.ts';
import { ownBmi } from './say-bmi.ts';
import { choiceInWords } from './say-choice.ts';
import { choiceWarnings } from './say-call-now.ts';
import { isShare, shareInWords, sourceOf } from './say-share.ts';
import { withMark } from './say-soundness.ts';
import { isFirstMonth, sayLength } from './say-time.ts';
import type { NamedOption, Scene } from './scene.ts';
import { group, list, markup, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, lineOf, plainRow, rowShape } from './shared-shapes.ts';
import type { Row, TableView } from './shared-shapes.ts';
import { tableShape } from './shared-shapes.ts';
import { isProcedure, viewPeople } from './view-people.ts';
import { saysShortTimes, shortWeightCell } from './view-weight.ts';
import { asMarkup, bold, figure, joined, runIn } from './words.ts';

export const coverShape = group({
  clinic: text,
  date: text,
  question: text,
  lead: markup,
  addressee: text,
});

export const choicesShape = group({
  rows: list(rowShape),
  short: tableShape,
  /** What a head of the short table means, and that some of its weights are of another time, and why. */
  apart: list(markup),
  ticks: list(text),
  /** Whether any picture of people is shown, so that its key is needed. */
  peopleKey: optional(text),
  /** Only what some picture shows: a sign that is nowhere would be looked for. */
  peopleMarks: list(group({ kind: text, words: text })),
});
export type ChoicesView = Viewed<typeof choicesShape>;

export function viewCover(scene: Scene): Viewed<typeof coverShape> {
  const { words, format, comparison, clinic } = scene;
  const { asked, weightKg } = comparison.person;
  return {
    clinic: clinic.clinic.name,
    date: format.date(scene.date),
    question: words.plain(`comparison.cover.question.${asked}`),
    lead: words.say(`comparison.cover.lead.${asked}`, {
      count: scene.options.length,
      weight: format.weight(weightKg, clinic.clinic.units),
      bmi: ownBmi(scene),
    }),
    addressee: words.plain('comparison.cover.for', { name: scene.case.patient.name }),
  };
}

/** Each option on one line, and the three figures that a reader asks for first. */
export function viewChoices(scene: Scene): ChoicesView {
  const { words } = scene;
  return {
    rows: scene.options.map((option): Row =>
      plainRow(option, [body(joined(choiceInWords(scene, option), ...choiceWarnings(scene, option)))]),
    ),
    short: viewShort(scene),
    apart: shortMeanings(scene),
    ticks: scene.options.map((option) => option.name),
    peopleKey: scene.comparison.topics.some((topic) => topic.picture !== null)
      ? words.plain('common.key.people')
      : null,
    peopleMarks: peopleMarks(scene),
  };
}

/** The signs that the pictures of people use. */
function peopleMarks(scene: Scene): ChoicesView['peopleMarks'] {
  const drawn = scene.comparison.topics
    .flatMap((topic) => viewPeople(scene, topic)?.rows ?? [])
    .flatMap(({ people }) => (people === null ? [] : [people]));
  const isUsed = {
    had: drawn.some(({ filled, half }) => filled > 0 || half),
    not: drawn.some(({ of, filled, may }) => filled + may < of),
    may: drawn.some(({ may }) => may > 0),
  };
  return (['had', 'not', 'may'] as const)
    .filter((kind) => isUsed[kind])
    .map((kind) => ({ kind, words: scene.words.plain(`common.key.${kind}`) }));
}

interface ShortColumn {
  readonly label: string;
  readonly cell: (option: NamedOption, index: number) => Markup;
}

/** "In short": weight, serious problems, whether it can be undone; one line an option. */
function viewShort(scene: Scene): TableView {
  const columns = [weightColumn(scene), ...troubleColumn(scene), undoColumn(scene)];
  return {
    lead: [],
    columns: ['', ...columns.map((column) => column.label)].map((label) => ({
      label,
      width: '',
      align: 'start',
    })),
    rows: scene.options.map((option, index) => ({
      group: '',
      tag: option.tag,
      cells: [
        { lines: [lineOf('strong', asMarkup(option.name))] },
        ...columns.map((column) => ({ lines: [body(column.cell(option, index))] })),
      ],
    })),
    notes: [],
  };
}

function weightColumn(scene: Scene): ShortColumn {
  const { words, comparison } = scene;
  const time = sayLength(scene, { months: comparison.weight.mainMonths });
  return {
    label: saysShortTimes(scene)
      ? words.plain('comparison.short.weight_later')
      : words.plain('comparison.short.weight', { time }),
    cell: (option) => shortWeightCell(scene, option),
  };
}

function shortMeanings(scene: Scene): readonly Markup[] {
  const picture = earlyPicture(scene);
  if (picture === null) return [];
  return [...meaningOfDrawn(scene, picture.outcome), ...shortExchange(scene, picture)];
}

/** What a reader must know of a short figure at once: that the band came out in another way than planned here. */
function shortExchange(scene: Scene, { outcome, cells }: OutcomeRow): readonly Markup[] {
  const shared = sharedExchange(scene, cells);
  if (shared !== null) return [labelled(scene, scene.words.plain(`outcomes.${outcome}.name`), shared)];
  return scene.options.flatMap((option, index) => {
    const cell = cells[index];
    const said = cell?.state === 'known' ? sayExchange(scene, cell) : null;
    return said === null ? [] : [labelled(scene, option.name, said)];
  });
}

function labelled({ words }: Scene, name: string, said: Markup): Markup {
  return runIn(words, bold(words.say('common.table.meaning', { outcome: name })), said);
}

function earlyPicture({ comparison }: Scene): Topic['picture'] {
  return comparison.topics.find((topic) => topic.id === 'first-month')?.picture ?? null;
}

function troubleColumn(scene: Scene): readonly ShortColumn[] {
  const picture = earlyPicture(scene);
  if (picture === null) return [];
  const { words } = scene;
  const outcome = words.plain(`outcomes.${picture.outcome}.name`);
  const time = isFirstMonth(picture.asked)
    ? words.plain('codes.time.first_month')
    : sayLength(scene, picture.asked);
  return [
    {
      label: words.plain('comparison.short.trouble', { outcome, time }),
      cell: (option, index) => {
        const cell = picture.cells[index];
        if (cell?.state === 'not-possible')
          return words.say(
            isProcedure(option) ? 'common.table.not_possible' : 'comparison.short.no_procedure',
          );
        if (cell?.state !== 'known' || !isShare(cell)) return words.say('common.table.not_known');
        const share = roundShare(cell.value, picture.denominator);
        const said = figure(shareInWords(scene, share, picture.denominator), sourceOf(cell));
        return withMark(scene, cell, said);
      },
    },
  ];
}

function undoColumn(scene: Scene): ShortColumn {
  return {
    label: scene.words.plain('comparison.short.undone'),
    cell: (option) => scene.words.say(`common.undo.${option.column.reversibility.possible}`),
  };
}
