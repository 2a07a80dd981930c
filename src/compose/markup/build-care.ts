import { urgencies } from '../../model/aftercare-codes.ts';
import type {
  Answers,
  Asides,
  Blank,
  Checklist,
  ChecklistRow,
  Field,
  FieldRow,
  InterpreterBox,
  SayPanel,
  Sentence,
  SentenceWords,
  Signatures,
  TalkTable,
  TeachBack,
  WarningFrame,
  WarningFrames,
} from '../../model/care-blocks.ts';
import { buildInlines, buildParagraphs, labelOf, plainContent } from './build-inlines.ts';
import type { MarkupElement } from './element.ts';
import {
  childNamed,
  childrenNamed,
  choiceOf,
  flagOf,
  present,
  refuse,
  requiredNumber,
  requiredText,
  textOf,
} from './read-attributes.ts';

export function buildWarningFrames(element: MarkupElement): WarningFrames {
  const frames = childrenNamed(element, 'frame').map(buildFrame);
  const order = frames.map(({ urgency }) => urgencies.indexOf(urgency));
  if (order.some((place, index) => index > 0 && place <= (order[index - 1] ?? -1)))
    refuse(element, `<warning-frames> takes one <frame> a degree of urgency: ${urgencies.join(', ')}`);
  return { type: 'warning-frames', frames, origin: element.origin };
}

function buildFrame(element: MarkupElement): WarningFrame {
  const phones = childrenNamed(element, 'phone').map((phone) =>
    present({
      label: labelOf(phone, 'label'),
      hours: labelOf(phone, 'hours'),
      number: requiredText(phone, 'number'),
    }),
  );
  return present({
    urgency: choiceOf(element, 'urgency', urgencies),
    heading: requiredText(element, 'heading'),
    note: textOf(element, 'note'),
    phones,
    first: firstOf(element),
    items: buildParagraphs(element),
    origin: element.origin,
  });
}

/** With what the words stand on, which a label would lose. */
function firstOf(frame: MarkupElement): WarningFrame['first'] {
  const first = childNamed(frame, 'first');
  return first === undefined ? undefined : buildInlines(first);
}

export function buildSay(element: MarkupElement): SayPanel {
  return { type: 'say', ...buildSentences(element) };
}

export function buildAnswers(element: MarkupElement): Answers {
  return { type: 'answers', ...buildSentences(element) };
}

function buildSentences(element: MarkupElement): Omit<SayPanel, 'type'> {
  return {
    heading: requiredText(element, 'heading'),
    sentences: childrenNamed(element, 'sentence').map(buildSentence),
    origin: element.origin,
  };
}

function buildSentence(element: MarkupElement): Sentence {
  const parts = childrenNamed(element, 'part', 'blank').map((part) =>
    part.name === 'blank' ? buildBlank(part) : buildWords(part),
  );
  if (!parts.some(({ type }) => type === 'words')) refuse(element, '<sentence> says nothing');
  return { parts, origin: element.origin };
}

function buildWords(element: MarkupElement): SentenceWords {
  const inlines = buildInlines(element);
  if (inlines.length === 0) refuse(element, '<part> says nothing');
  return { type: 'words', inlines };
}

function buildBlank(element: MarkupElement): Blank {
  const share = requiredNumber(element, 'share');
  if (share <= 0) refuse(element, 'share of <blank> is not over 0');
  return { type: 'blank', share, alt: requiredText(element, 'alt') };
}

const mostAsides = 3;

export function buildAsides(element: MarkupElement): Asides {
  const columns = childrenNamed(element, 'aside').map((aside) => ({
    heading: requiredText(aside, 'heading'),
    boxes: flagOf(aside, 'boxes'),
    items: buildParagraphs(aside),
  }));
  if (columns.length > mostAsides) refuse(element, `<asides> has more than ${mostAsides} <aside>`);
  return { type: 'asides', columns, origin: element.origin };
}

const mostColumns = 4;

export function buildChecklist(element: MarkupElement): Checklist {
  const columns = childrenNamed(element, 'column').map((column) => requiredText(column, 'label'));
  if (columns.length > mostColumns) refuse(element, `<checklist> has more than ${mostColumns} <column>`);
  return {
    type: 'checklist',
    head: textOf(element, 'head') ?? '',
    columns,
    box: textOf(element, 'box') === undefined || flagOf(element, 'box'),
    rows: childrenNamed(element, 'check').map((row) => buildCheck(row, columns.length)),
    origin: element.origin,
  };
}

/** `due` names columns by their number from 1, with spaces between; without it there is something to tick in all. */
function buildCheck(element: MarkupElement, columns: number): ChecklistRow {
  const due = textOf(element, 'due')?.split(' ').map(Number);
  if (due?.some((column) => !Number.isInteger(column) || column < 1 || column > columns) === true)
    refuse(element, 'due of <check> names a column that is not there');
  return {
    name: requiredText(element, 'name'),
    detail: buildParagraphs(element),
    due: Array.from({ length: columns }, (_, index) => due?.includes(index + 1) ?? true),
    origin: element.origin,
  };
}

export function buildTalk(element: MarkupElement): TalkTable {
  return {
    type: 'talk',
    columns: { box: requiredText(element, 'box'), line: requiredText(element, 'line') },
    statements: childrenNamed(element, 'step').map(buildPoint),
    origin: element.origin,
  };
}

function buildPoint(element: MarkupElement): TalkTable['statements'][number] {
  const words = buildParagraphs(element);
  if (words.length === 0) refuse(element, '<step> says nothing');
  return words;
}

export function buildTeachBack(element: MarkupElement): TeachBack {
  const lines = requiredNumber(element, 'lines');
  if (!Number.isInteger(lines) || lines < 1) refuse(element, 'lines of <teach-back> is not a count');
  return {
    type: 'teach-back',
    boxes: childrenNamed(element, 'item').map(plainContent),
    lines,
    questions: buildParagraphs(element),
    origin: element.origin,
  };
}

export function buildSignatures(element: MarkupElement): Signatures {
  const rows = childrenNamed(element, 'fields').map((row): FieldRow => ({
    fields: buildFields(row),
    origin: row.origin,
  }));
  return present({
    type: 'signatures' as const,
    plate: textOf(element, 'plate'),
    rows,
    origin: element.origin,
  });
}

export function buildInterpreter(element: MarkupElement): InterpreterBox {
  return present({
    type: 'interpreter' as const,
    heading: requiredText(element, 'heading'),
    ways: childrenNamed(element, 'item').map(plainContent),
    body: buildParagraphs(element),
    fields: buildFields(element),
    plate: textOf(element, 'plate'),
    origin: element.origin,
  });
}

function buildFields(element: MarkupElement): readonly Field[] {
  const fields = childrenNamed(element, 'field').map((field): Field => ({
    kind: choiceOf(field, 'kind', ['name', 'signature', 'date', 'time'] as const),
    label: requiredText(field, 'label'),
  }));
  if (fields.length === 0) refuse(element, `<${element.name}> has no <field>`);
  return fields;
}
