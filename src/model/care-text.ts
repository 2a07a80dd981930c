import { ribbonPieces, stagesWithoutLabel } from './calendar.ts';
import type { Calendar, CalendarDay } from './calendar.ts';
import type {
  Checklist,
  FieldRow,
  InterpreterBox,
  Sentence,
  Signatures,
  TalkTable,
  TeachBack,
  TickItem,
  WarningFrame,
} from './care-blocks.ts';
import type { Block } from './document.ts';
import { inlinePiece, optional, piece, textOfParagraph, textsOfParagraphs } from './text-piece.ts';
import type { Texts } from './text-piece.ts';

type OfType<T extends Block['type']> = Extract<Block, { readonly type: T }>;

type CareType =
  | 'warning-frames'
  | 'say'
  | 'answers'
  | 'asides'
  | 'calendar'
  | 'checklist'
  | 'tick-items'
  | 'talk'
  | 'teach-back'
  | 'signatures'
  | 'interpreter';

/** Texts of the blocks of the documents for going home and for consent, in the order they are printed. */
export const textsByCareType: { readonly [T in CareType]: (block: OfType<T>) => Texts } = {
  'warning-frames': (block) => block.frames.flatMap(textsOfFrame),
  say: textsOfSentences,
  answers: textsOfSentences,
  asides: (block) =>
    block.columns.flatMap((column) => [
      piece('heading', column.heading, block),
      ...textsOfParagraphs(column.items),
    ]),
  calendar: textsOfCalendar,
  checklist: textsOfChecklist,
  'tick-items': (block) => block.items.flatMap(textsOfTickItem),
  talk: (block) =>
    block.statements.length === 0
      ? []
      : [...headsOfTalk(block), ...textsOfParagraphs(block.statements.flat())],
  'teach-back': textsOfTeachBack,
  signatures: (block) => block.rows.flatMap((row) => textsOfFields(row, block)),
  interpreter: textsOfInterpreter,
};

function textsOfFrame(frame: WarningFrame): Texts {
  const phones = frame.phones.flatMap(({ label, hours, number }): Texts => [
    ...optional('label', label, frame),
    ...optional('label', hours, frame),
    { ...piece('label', number, frame), duty: 'phone' },
  ]);
  return [
    piece('heading', frame.heading, frame),
    ...optional('paragraph', frame.note, frame),
    ...phones,
    ...optional('paragraph', frame.first, frame),
    ...textsOfParagraphs(frame.items),
  ];
}

function textsOfSentences(block: OfType<'say' | 'answers'>): Texts {
  return [piece('heading', block.heading, block), ...block.sentences.map(textOfSentence)];
}

/** A blank prints nothing: the words on both sides of it are one sentence. */
function textOfSentence(sentence: Sentence): Texts[number] {
  const runs = sentence.parts.map((part) =>
    part.type === 'words' ? part.inlines : [{ type: 'text', value: ' ' } as const],
  );
  return inlinePiece('paragraph', runs.flat(), sentence);
}

function textsOfDay(day: CalendarDay): Texts {
  return [piece('label', day.label, day), ...day.notes.map((note) => piece('label', note, day))];
}

function headsOfCalendar(block: Calendar): Texts {
  return block.weekdays.map((label) => piece('label', label, block));
}

function textsOfCalendar(block: Calendar): Texts {
  const weeks = block.weeks.flatMap((week, index) => [
    ...week.flatMap((day) => (day === null ? [] : textsOfDay(day))),
    ...ribbonPieces(block, index).flatMap(({ stage, labelled }) =>
      labelled ? [piece('label', stage.label, stage)] : [],
    ),
  ]);
  const named = stagesWithoutLabel(block).map((stage) => piece('label', stage.dated, stage));
  return [...named, ...headsOfCalendar(block), ...weeks];
}

function headsOfChecklist(block: Checklist): Texts {
  return [block.head, ...block.columns].map((label) => piece('label', label, block));
}

function textsOfChecklist(block: Checklist): Texts {
  if (block.rows.length === 0) return [];
  const rows = block.rows.flatMap((row) => [piece('name', row.name, row), ...textsOfParagraphs(row.detail)]);
  return [...headsOfChecklist(block), ...rows];
}

function textsOfTickItem(item: TickItem): Texts {
  return [
    ...textsOfParagraphs(item.words),
    ...item.boxes.map((words) => piece('label', words, item)),
    ...optional('label', item.line, item),
  ];
}

function headsOfTalk(block: TalkTable): Texts {
  return [block.columns.box, block.columns.line].map((label) => piece('label', label, block));
}

function textsOfTeachBack(block: TeachBack): Texts {
  const boxes = block.boxes.map((words) => piece('label', words, block));
  return block.questions.flatMap((question) => [textOfParagraph(question), ...boxes]);
}

function textsOfFields(row: FieldRow, { plate }: Signatures | InterpreterBox): Texts {
  return row.fields.flatMap(({ kind, label }) => [
    ...(kind === 'signature' ? optional('label', plate, row) : []),
    piece('label', label, row),
  ]);
}

function textsOfInterpreter(block: InterpreterBox): Texts {
  return [
    piece('heading', block.heading, block),
    ...block.ways.map((words) => piece('label', words, block)),
    ...textsOfParagraphs(block.body),
    ...textsOfFields(block, block),
  ];
}

/** Heads that stand again where one of these blocks goes on. */
export function repeatedCareTexts(block: Block): Texts {
  switch (block.type) {
    case 'calendar':
      return headsOfCalendar(block);
    case 'checklist':
      return headsOfChecklist(block);
    case 'talk':
      return headsOfTalk(block);
    case 'panel':
      return [block.lead, ...block.columns.map(({ heading }) => heading)].map((text) =>
        piece('heading', text, block),
      );
    default:
      return [];
  }
}
