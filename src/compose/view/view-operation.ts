import type { Markup } from '../../model/locale.ts';
import type { OperationPicture } from '../drawings/read-drawings.ts';
import { choiceInWords } from './say-choice.ts';
import { gainOf } from './say-gain.ts';
import { chosenOption, onlyAbout } from './scene.ts';
import type { NamedOption, Scene } from './scene.ts';
import { group, list, markup, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { rowShape } from './shared-shapes.ts';
import { asksShape, viewAsks } from './view-asks.ts';
import { viewBeforeDay } from './view-before-day.ts';
import { contactNote, contactsOf } from './view-contacts.ts';
import { drawingShape, pictureFor, viewDrawing } from './view-drawing.ts';
import { healthShape, viewHealth } from './view-health.ts';
import { lineBoardShape, viewLines } from './view-lines.ts';
import { askForInterpreter } from './view-next.ts';
import { surgeonName } from './view-opinion.ts';
import { originsOf } from './view-rules.ts';
import { shortOperation } from './view-short.ts';
import { studyShape, viewStudies } from './view-study.ts';
import { viewUndo } from './view-undo.ts';
import { viewWhy, whyShape } from './view-why.ts';
import { joined } from './words.ts';

export const operationShape = group({
  heading: text,
  lead: text,
  facts: list(group({ label: text, value: text })),
  /** What the pages come to. */
  short: list(markup),
  /** What nobody knows of this operation. */
  unknown: markup,
  why: whyShape,
  health: healthShape,
  study: studyShape,
  /** In a sentence, where no drawing and no steps tell. */
  what: markup,
  /** Absent where nobody has drawn this operation after the one that came before. */
  drawing: optional(drawingShape),
  steps: list(markup),
  before: list(markup),
  day: list(markup),
  asks: asksShape,
  undo: list(rowShape),
  /** What stays for good. */
  stays: optional(markup),
  weight: markup,
  /** Absent where no weight is known at all. */
  lineIntro: optional(markup),
  lines: optional(lineBoardShape),
  calls: list(group({ label: markup, value: text })),
  /** Where lines of guidelines come from. */
  origins: list(markup),
});
export type OperationView = Viewed<typeof operationShape>;

/** The operation that was chosen, for the person who will have it. The case names one, or the input stage has refused. */
export function viewOperation(scene: Scene): OperationView {
  const option = chosenOption(scene);
  const alone = onlyAbout(scene, option);
  const { words } = scene;
  const kind = option.column.kind === 'endoscopic' ? 'endoscopic' : 'operation';
  const picture = pictureFor(scene, option);
  const lines = viewLines(alone);
  return {
    heading: words.plain(`operation.heading.${kind}`, { option: option.inText }),
    lead: words.plain('operation.lead', { option: option.inText }),
    facts: factsOf(scene, option),
    short: shortOperation(scene, alone, option),
    unknown: words.say(`options.${option.code}.unknown`),
    why: viewWhy(scene, option),
    health: viewHealth(alone),
    study: viewStudies(alone),
    what: choiceInWords(scene, option),
    drawing: picture === undefined ? null : viewDrawing(words, picture),
    steps: stepsOf(scene, picture),
    before: viewBeforeDay(scene),
    day: dayOf(scene),
    asks: viewAsks(alone),
    undo: viewUndo(alone),
    stays: staysOf(scene, option),
    weight: gainOf(scene, option),
    lineIntro: isWeightKnown(scene, option) ? introOf(scene, lines) : null,
    lines,
    calls: callsOf(scene),
    origins: originsOf(scene, scene.aftercare?.before ?? []),
  };
}

function factsOf(scene: Scene, option: NamedOption): OperationView['facts'] {
  const { words, format } = scene;
  const { operation_date: date } = scene.case.plan;
  const facts: readonly (readonly [key: string, value: string])[] = [
    ['planned', date === undefined ? words.plain('operation.not_yet') : format.date(date)],
    ['surgeon', surgeonName(scene)],
    ['trade', words.plain(`options.${option.code}.trade`)],
  ];
  return facts.map(([key, value]) => ({ label: words.plain(`operation.facts.${key}`), value }));
}

function stepsOf(scene: Scene, picture: OperationPicture | undefined): OperationView['steps'] {
  const inTwo = scene.case.plan.stages === 'two';
  return (picture?.steps ?? []).map((step) =>
    scene.words.say(`operation.step.${step === 'band_out' && inTwo ? 'band_out_first' : step}`),
  );
}

/** A plain description, like that of what is done: it holds no figure and stands on no row. */
function staysOf({ words }: Scene, { code }: NamedOption): Markup | null {
  const key = `operation.stays.${code.replaceAll('-', '_')}`;
  return words.has(key) ? words.say(key) : null;
}

function isWeightKnown({ comparison: { weight } }: Scene, { code }: NamedOption): boolean {
  const cells = [weight.main, ...weight.over].flatMap((row) => row.cells);
  return cells.some((cell) => cell.option === code && cell.state === 'known');
}

/** What the line is, and its band where there is one; else why there is none. */
function introOf({ words, unit }: Scene, lines: OperationView['lines']): Markup {
  if (lines === null) return words.say('operation.weight.no_line');
  const line = words.say('operation.weight.line', { unit: words.plain(`common.units.${unit}`) });
  const banded = lines.lines.some(({ points }) => points.some(({ low }) => low !== null));
  return joined(line, ...(banded ? [words.say('comparison.lines.band')] : []));
}

function dayOf(scene: Scene): OperationView['day'] {
  const {
    case: { plan },
    words,
    format,
  } = scene;
  const { operation_date: date } = plan;
  return [
    date === undefined
      ? words.say('operation.day.come_later')
      : words.say('operation.day.come', { date: format.date(date) }),
    ...askForInterpreter(scene),
    ...['sleep', 'wake', 'up'].map((key) => words.say(`operation.day.${key}`)),
  ];
}

function callsOf(scene: Scene): OperationView['calls'] {
  const { words } = scene;
  return contactsOf(scene).map((contact) => {
    const { name, number } = contact;
    const note = contactNote(scene, contact);
    return {
      label: note === null ? name : words.say('common.aside', { words: name, aside: note }),
      value: number,
    };
  });
}
