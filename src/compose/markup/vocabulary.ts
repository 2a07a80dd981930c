/** What one element may carry. `content`: child elements by name, or `inline` for text with <b>, <fig>, <lang>, <stands>. */
export interface ElementRule {
  readonly required: readonly string[];
  readonly optional: readonly string[];
  readonly content: 'inline' | readonly string[];
}

const rule = (required: string, optional: string, content: string): ElementRule => ({
  required: split(required),
  optional: split(optional),
  content: content === 'inline' ? 'inline' : split(content),
});
const split = (names: string): readonly string[] => (names === '' ? [] : names.split(' '));

const care = 'warning-frames say answers asides calendar checklist talk teach-back signatures interpreter';
const flow = `p strip line-board drawing table callout panel key matters ticks list write-in facts heading ${care}`;

/** The closed vocabulary of the templates. An element is a block type of the document tree, or a part of one. */
const vocabulary: Readonly<Record<string, ElementRule>> = {
  document: rule('', '', `cover topic ${flow}`),
  topic: rule('question', '', `intro ${flow}`),
  intro: rule('', '', 'p'),
  p: rule('', 'role duty', 'inline'),
  cover: rule('clinic date question addressee', '', 'lead'),
  lead: rule('', '', 'inline'),
  heading: rule('level', '', 'inline'),
  strip: rule('layout', '', 'axis row'),
  axis: rule('min max today label', '', 'scale'),
  scale: rule('unit', '', 'tick'),
  tick: rule('at label', '', ''),
  row: rule('', 'name tag', 'name people range unknown way-back words'),
  name: rule('', '', 'inline'),
  words: rule('', '', 'p'),
  people: rule('of filled may half alt', '', ''),
  range: rule('average meaning alt', 'low high', ''),
  unknown: rule('of alt', '', ''),
  'way-back': rule('possible alt', '', ''),
  'line-board': rule('', '', 'weight-line'),
  'weight-line': rule('name min max today label alt', 'unknown-after', 'point time-tick value-tick'),
  point: rule('months at label cell records', 'low high', ''),
  'time-tick': rule('at label', '', ''),
  'value-tick': rule('at label', '', ''),
  drawing: rule('', '', 'view'),
  view: rule('heading alt height', 'food', 'layer pointer'),
  layer: rule('look', '', 'outline'),
  outline: rule('path', 'width', ''),
  pointer: rule('words side x y', '', ''),
  table: rule('layout', '', 'column table-row'),
  column: rule('label', 'width align', ''),
  'table-row': rule('', 'group tag', 'cell'),
  cell: rule('', '', 'p'),
  callout: rule('kind heading', '', 'p'),
  panel: rule('', '', 'lead body side closing'),
  body: rule('', '', 'p'),
  side: rule('heading', '', 'p'),
  closing: rule('', '', 'p'),
  key: rule('heading', '', 'mark'),
  mark: rule('kind', '', 'inline'),
  matters: rule('blanks', '', 'column p'),
  ticks: rule('heading', '', 'item'),
  item: rule('', '', 'inline'),
  list: rule('', 'ordered first', 'step'),
  step: rule('', 'row', 'p'),
  'write-in': rule('lines', 'box', 'p'),
  facts: rule('', '', 'fact'),
  fact: rule('', 'label value', 'label value'),
  label: rule('', '', 'inline'),
  value: rule('', '', 'inline'),
  'warning-frames': rule('', '', 'frame'),
  frame: rule('urgency heading', 'note', 'first phone p'),
  first: rule('', '', 'inline'),
  phone: rule('number', 'label hours', 'label hours'),
  hours: rule('', '', 'inline'),
  say: rule('heading', '', 'sentence'),
  answers: rule('heading', '', 'sentence'),
  asides: rule('', '', 'aside'),
  aside: rule('heading', 'boxes', 'p'),
  sentence: rule('', '', 'part blank'),
  part: rule('', '', 'inline'),
  blank: rule('share alt', '', ''),
  calendar: rule('first-weekday listed', '', 'weekday stage day'),
  weekday: rule('label', '', ''),
  stage: rule('pattern from to', 'label dated', 'label dated'),
  dated: rule('', '', 'inline'),
  day: rule('date label dated', 'comes-in', 'note event'),
  note: rule('', '', 'inline'),
  event: rule('', 'comes-in', 'inline'),
  checklist: rule('', 'head box', 'column check'),
  check: rule('name', 'due', 'p'),
  talk: rule('box line', '', 'step'),
  'teach-back': rule('lines', '', 'item p'),
  signatures: rule('', 'plate', 'fields'),
  fields: rule('', '', 'field'),
  field: rule('kind label', '', ''),
  interpreter: rule('heading', 'plate', 'item p field'),
  b: rule('', '', 'inline'),
  fig: rule('cell records', 'alone', 'inline'),
  lang: rule('code', '', 'inline'),
  stands: rule('on', '', 'inline'),
};

/** The rule of an element; undefined if there is no such element. */
export function ruleOf(name: string): ElementRule | undefined {
  return Object.hasOwn(vocabulary, name) ? vocabulary[name] : undefined;
}

/** Elements that stand inside a line of text. */
export const inlineElements: readonly string[] = ['b', 'fig', 'lang', 'stands'];
