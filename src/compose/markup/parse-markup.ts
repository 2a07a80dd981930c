import { MarkupError, originAttribute } from './element.ts';
import type { MarkupElement, MarkupNode } from './element.ts';
import { unescapeText } from './escape-text.ts';

interface OpenElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly origin: string;
  readonly children: MarkupNode[];
}

// One tag: closing mark, name, attributes (no < inside a value), self-closing mark.
const tagForm = /<(\/?)([a-z][a-z0-9-]*)((?:\s+[a-z-]+="[^"<]*")*)\s*(\/?)>/y;
const attributeForm = /([a-z-]+)="([^"<]*)"/g;

/**
 * Reads the markup of a template: elements, quoted attributes, text, character references; no comments, no
 * declarations, no default values. Strict: whatever is not exactly that throws MarkupError with the nearest origin.
 */
export function parseMarkup(markup: string, file: string): readonly MarkupNode[] {
  const root: OpenElement = { name: '', attributes: {}, origin: `${file}:1`, children: [] };
  const open: OpenElement[] = [root];
  let position = 0;
  while (position < markup.length) {
    const next = markup.indexOf('<', position);
    const textEnd = next === -1 ? markup.length : next;
    if (textEnd > position) addText(open, markup.slice(position, textEnd));
    if (next === -1) break;
    position = readTag(markup, next, open);
  }
  const last = top(open);
  if (last !== root) throw new MarkupError('syntax', `<${last.name}> is not closed`, last.origin);
  return root.children;
}

function readTag(markup: string, start: number, open: OpenElement[]): number {
  tagForm.lastIndex = start;
  const match = tagForm.exec(markup);
  const parent = top(open);
  if (match === null) {
    throw new MarkupError('syntax', `a tag inside <${parent.name}> is not well-formed`, parent.origin);
  }
  const [, closing, name = '', attributes = '', selfClosing] = match;
  if (closing === '/') {
    close(open, name);
    return tagForm.lastIndex;
  }
  const element = readElement(name, attributes, parent.origin);
  if (selfClosing === '/') parent.children.push(finish(element));
  else open.push(element);
  return tagForm.lastIndex;
}

function readElement(name: string, source: string, nearest: string): OpenElement {
  const attributes: Record<string, string> = {};
  for (const [, key = '', raw = ''] of source.matchAll(attributeForm)) {
    const value = unescapeText(raw);
    if (value === null) throw new MarkupError('syntax', `${key} of <${name}> holds a bare &`, nearest);
    if (Object.hasOwn(attributes, key))
      throw new MarkupError('syntax', `<${name}> has ${key} twice`, nearest);
    attributes[key] = cleanSpaces(value).trim();
  }
  const { [originAttribute]: origin = nearest, ...others } = attributes;
  return { name, attributes: others, origin, children: [] };
}

function close(open: OpenElement[], name: string): void {
  const element = top(open);
  if (open.length === 1 || element.name !== name) {
    throw new MarkupError('syntax', `</${name}> closes nothing, inside <${element.name}>`, element.origin);
  }
  open.pop();
  top(open).children.push(finish(element));
}

function addText(open: readonly OpenElement[], raw: string): void {
  const parent = top(open);
  const value = unescapeText(raw);
  if (value === null)
    throw new MarkupError('syntax', `text of <${parent.name}> holds a bare &`, parent.origin);
  parent.children.push({ type: 'text', value: cleanSpaces(value) });
}

// A line feed has no glyph, and controls have none either: both become a space. No-break spaces stay.
function cleanSpaces(text: string): string {
  // eslint-disable-next-line no-control-regex
  return text.replace(/[\u0000-\u0020\u007f-\u009f\u2028\u2029]+/g, ' ');
}

function finish(element: OpenElement): MarkupElement {
  return { type: 'element', ...element };
}

function top(open: readonly OpenElement[]): OpenElement {
  const element = open.at(-1);
  if (element === undefined) throw new MarkupError('syntax', 'a tag closes the document', '');
  return element;
}
