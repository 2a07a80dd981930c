import type {
  Callout,
  Cover,
  Facts,
  Heading,
  List,
  MattersGrid,
  PictureKey,
  SurgeonPanel,
  Table,
  TableRow,
  TickList,
  WriteIn,
} from '../../model/document.ts';
import {
  buildInlines,
  buildParagraph,
  buildParagraphs,
  plainContent,
  requiredLabel,
} from './build-inlines.ts';
import type { MarkupElement } from './element.ts';
import {
  childNamed,
  childrenNamed,
  choiceOf,
  flagOf,
  numberOf,
  present,
  refuse,
  requiredNumber,
  requiredText,
  textOf,
} from './read-attributes.ts';

const marks = ['had', 'not', 'may', 'spread', 'average', 'change', 'uncertainty', 'today'] as const;

export function buildTable(element: MarkupElement): Table {
  const columns = childrenNamed(element, 'column').map((column) =>
    present({
      label: column.attributes['label'] ?? '',
      width: numberOf(column, 'width'),
      align:
        textOf(column, 'align') === undefined
          ? undefined
          : choiceOf(column, 'align', ['start', 'end'] as const),
    }),
  );
  const rows = childrenNamed(element, 'table-row').map(buildTableRow);
  const ragged = rows.find((row) => row.group === undefined && row.cells.length !== columns.length);
  if (ragged !== undefined)
    refuse(
      { ...element, origin: ragged.origin },
      'a <table-row> has another number of cells than the table has columns',
    );
  return {
    type: 'table',
    layout: choiceOf(element, 'layout', ['choices', 'dense'] as const),
    columns,
    rows,
    origin: element.origin,
  };
}

function buildTableRow(element: MarkupElement): TableRow {
  const cells = childrenNamed(element, 'cell').map((cell) => buildParagraphs(cell));
  return present({
    group: textOf(element, 'group'),
    tag: textOf(element, 'tag'),
    cells,
    origin: element.origin,
  });
}

export function buildCallout(element: MarkupElement): Callout {
  return {
    type: 'callout',
    kind: choiceOf(element, 'kind', ['health', 'study', 'interpreter'] as const),
    heading: requiredText(element, 'heading'),
    body: buildParagraphs(element),
    origin: element.origin,
  };
}

export function buildPanel(element: MarkupElement): SurgeonPanel {
  const lead = childNamed(element, 'lead');
  if (lead === undefined) refuse(element, '<panel> lacks its <lead>');
  return {
    type: 'panel',
    lead: buildInlines(lead),
    body: buildParagraphs(childNamed(element, 'body')),
    columns: childrenNamed(element, 'side').map((side) => ({
      heading: requiredText(side, 'heading'),
      items: buildParagraphs(side),
    })),
    closing: buildParagraphs(childNamed(element, 'closing')),
    origin: element.origin,
  };
}

export function buildKey(element: MarkupElement): PictureKey {
  const items = childrenNamed(element, 'mark').map((mark) => ({
    mark: choiceOf(mark, 'kind', marks),
    words: plainContent(mark),
  }));
  return { type: 'key', heading: requiredText(element, 'heading'), items, origin: element.origin };
}

export function buildMatters(element: MarkupElement): MattersGrid {
  return {
    type: 'matters',
    columns: childrenNamed(element, 'column').map((column) => requiredText(column, 'label')),
    statements: buildParagraphs(element),
    blanks: requiredNumber(element, 'blanks'),
    origin: element.origin,
  };
}

export function buildTicks(element: MarkupElement): TickList {
  const items = childrenNamed(element, 'item').map(plainContent);
  return { type: 'ticks', heading: requiredText(element, 'heading'), items, origin: element.origin };
}

export function buildList(element: MarkupElement): List {
  const steps = childrenNamed(element, 'step');
  const rows = steps.flatMap((step) => numberOf(step, 'row') ?? []);
  return present({
    type: 'list' as const,
    ordered: flagOf(element, 'ordered'),
    items: steps.map((step) => buildParagraphs(step)),
    first: numberOf(element, 'first'),
    citedIn: rows.length > 0 && rows.length === steps.length ? rows : undefined,
    origin: element.origin,
  });
}

export function buildWriteIn(element: MarkupElement): WriteIn {
  const prompt = childNamed(element, 'p');
  return present({
    type: 'write-in' as const,
    prompt: prompt === undefined ? undefined : buildParagraph(prompt),
    box: flagOf(element, 'box'),
    lines: requiredNumber(element, 'lines'),
    origin: element.origin,
  });
}

export function buildFacts(element: MarkupElement): Facts {
  const items = childrenNamed(element, 'fact').map((fact) => ({
    label: requiredLabel(fact, 'label'),
    value: requiredLabel(fact, 'value'),
  }));
  return { type: 'facts', items, origin: element.origin };
}

export function buildHeading(element: MarkupElement): Heading {
  const level = choiceOf(element, 'level', ['1', '2', '3'] as const);
  const text = plainContent(element);
  return present({
    type: 'heading' as const,
    level: level === '1' ? (1 as const) : level === '2' ? (2 as const) : (3 as const),
    text,
    language: languageOf(element),
    origin: element.origin,
  });
}

/** The language of all that an element says, where it is marked as being in one. */
function languageOf(element: MarkupElement): string | undefined {
  const found = buildInlines(element).map((run) => (run.type === 'text' ? run.language : undefined));
  return found.every((language) => language === found[0]) ? found[0] : undefined;
}

export function buildCover(element: MarkupElement): Cover {
  const lead = childNamed(element, 'lead');
  if (lead === undefined) refuse(element, '<cover> lacks its <lead>');
  return {
    type: 'cover',
    clinic: requiredText(element, 'clinic'),
    date: requiredText(element, 'date'),
    question: requiredText(element, 'question'),
    lead: buildInlines(lead),
    addressee: requiredText(element, 'addressee'),
    origin: element.origin,
  };
}
