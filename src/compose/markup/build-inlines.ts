import type { Duty, FigureRun, Inline, Label, Paragraph, TextRun } from '../../model/document.ts';
import { endsWide, withoutDoubleWhite } from '../../model/wide-marks.ts';
import type { MarkupElement } from './element.ts';
import {
  childNamed,
  childrenNamed,
  choiceOf,
  present,
  refuse,
  requiredText,
  textOf,
} from './read-attributes.ts';

interface Style {
  readonly bold: boolean;
  readonly language?: string;
  readonly statements?: readonly string[];
}

const roles: readonly Paragraph['role'][] = ['body', 'lead', 'number', 'strong', 'small'];
const duties: readonly Duty[] = ['caution', 'phone', 'standard'];

export function buildParagraph(element: MarkupElement): Paragraph {
  const inlines = buildInlines(element);
  if (inlines.length === 0) refuse(element, '<p> says nothing');
  const role = textOf(element, 'role') === undefined ? 'body' : choiceOf(element, 'role', roles);
  const duty = textOf(element, 'duty') === undefined ? undefined : choiceOf(element, 'duty', duties);
  return present({ type: 'paragraph' as const, role, inlines, duty, origin: element.origin });
}

/** The paragraphs of an element that holds nothing else. */
export function buildParagraphs(element: MarkupElement | undefined): readonly Paragraph[] {
  return element === undefined ? [] : childrenNamed(element, 'p').map(buildParagraph);
}

/**
 * Runs of text and figures; white space at both ends is dropped, and that after a mark of Chinese, which brings its own;
 * equal neighbours are joined.
 */
export function buildInlines(element: MarkupElement): readonly Inline[] {
  return trimEnds(singleWhite(joinTexts(collect(element, { bold: false }))));
}

function singleWhite(inlines: readonly Inline[]): readonly Inline[] {
  return inlines.map((inline, index) => {
    if (inline.type === 'figure') return inline;
    const before = inlines[index - 1]?.value ?? '';
    const value = withoutDoubleWhite(inline.value);
    return { ...inline, value: endsWide.test(before) ? value.replace(/^ +/, '') : value };
  });
}

/** The text of an element whose place in the tree takes no runs. */
export function plainContent(element: MarkupElement): string {
  const text = buildInlines(element)
    .map((inline) => inline.value)
    .join('');
  if (text === '') refuse(element, `<${element.name}> says nothing`);
  return text;
}

/**
 * Words of a name or a label: an attribute where they are sure to be in the language of the document, else a child element
 * of that name. Absent or empty gives undefined.
 */
export function labelOf(element: MarkupElement, name: string): Label | undefined {
  const child = childNamed(element, name);
  const text = textOf(element, name);
  if (child === undefined) return text;
  if (text !== undefined) refuse(element, `<${element.name}> has ${name} twice`);
  const inlines = buildInlines(child);
  if (inlines.length === 0) return undefined;
  const isForeign = inlines.some((inline) => inline.type === 'text' && inline.language !== undefined);
  return isForeign ? inlines : plainContent(child);
}

/** The same where it must say something. */
export function requiredLabel(element: MarkupElement, name: string): Label {
  const label = labelOf(element, name);
  if (label === undefined) refuse(element, `${name} of <${element.name}> is empty`);
  return label;
}

function collect(element: MarkupElement, style: Style): readonly Inline[] {
  return element.children.flatMap((child): readonly Inline[] => {
    if (child.type === 'text') return [textRun(child.value, style)];
    if (child.name === 'fig') return [figureRun(child, style)];
    if (child.name === 'b') return collect(child, { ...style, bold: true });
    if (child.name === 'stands')
      return collect(child, { ...style, statements: idsIn(requiredText(child, 'on')) });
    return collect(child, { ...style, language: requiredText(child, 'code') });
  });
}

function textRun(value: string, style: Style): TextRun {
  return present({
    type: 'text' as const,
    value,
    bold: style.bold ? true : undefined,
    language: style.language,
    statements: style.statements,
  });
}

/** Ids as an attribute holds them, with white between. */
export function idsIn(text: string): readonly string[] {
  return text.split(' ').filter((id) => id !== '');
}

function figureRun(element: MarkupElement, style: Style): FigureRun {
  if (element.children.some((child) => child.type !== 'text')) refuse(element, '<fig> may hold text only');
  const value = element.children
    .map((child) => (child.type === 'text' ? child.value : ''))
    .join('')
    .trim();
  if (value === '') refuse(element, '<fig> says nothing');
  return present({
    type: 'figure' as const,
    value,
    alone: textOf(element, 'alone'),
    cell: requiredText(element, 'cell'),
    records: idsIn(textOf(element, 'records') ?? ''),
    bold: style.bold ? true : undefined,
  });
}

function joinTexts(inlines: readonly Inline[]): readonly Inline[] {
  const joined: Inline[] = [];
  for (const inline of inlines) {
    const before = joined.at(-1);
    if (before?.type === 'text' && inline.type === 'text' && sameStyle(before, inline)) {
      const value = `${before.value}${inline.value}`.replace(/ {2,}/g, ' ');
      joined.splice(-1, 1, { ...before, value });
    } else {
      joined.push(inline);
    }
  }
  return joined;
}

function sameStyle(a: TextRun, b: TextRun): boolean {
  return (
    a.bold === b.bold && a.language === b.language && a.statements?.join(' ') === b.statements?.join(' ')
  );
}

function trimEnds(inlines: readonly Inline[]): readonly Inline[] {
  const last = inlines.length - 1;
  return inlines
    .map((inline, index) => {
      const start = index === 0 ? inline.value.replace(/^ +/, '') : inline.value;
      return { ...inline, value: index === last ? start.replace(/ +$/, '') : start };
    })
    .filter((inline) => inline.value !== '');
}
