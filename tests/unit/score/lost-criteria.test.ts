import { beforeAll, describe, expect, it } from 'vitest';

import type { Block, DocumentTree, Paragraph, StripRow } from '../../../src/model/document.ts';
import { scoreDocuments } from '../../../src/score/index.ts';
import type { ScoreInput } from '../../../src/score/index.ts';
import { outcomesOf, scoreInputOf } from '../../helpers/score-example.ts';

type Kind = DocumentTree['kind'];
type Change = (documents: readonly DocumentTree[]) => readonly DocumentTree[];
type OfType<T extends Block['type']> = Extract<Block, { readonly type: T }>;

/** Puts every block of a document, within topics too, through a change; undefined takes it out. */
function inDocument(kind: Kind, change: (block: Block) => Block | undefined): Change {
  const each = (block: Block): readonly Block[] => {
    const changed = change(block);
    if (changed === undefined) return [];
    return changed.type === 'topic' ? [{ ...changed, blocks: changed.blocks.flatMap(each) }] : [changed];
  };
  return (documents) =>
    documents.map((tree) => (tree.kind === kind ? { ...tree, blocks: tree.blocks.flatMap(each) } : tree));
}

function onType<T extends Block['type']>(
  kind: Kind,
  type: T,
  change: (block: OfType<T>) => Block | undefined,
): Change {
  const is = (block: Block): block is OfType<T> => block.type === type;
  return inDocument(kind, (block) => (is(block) ? change(block) : block));
}

const gone = (): undefined => undefined;

function withoutTopic(kind: Kind, question: string): Change {
  return onType(kind, 'topic', (block) =>
    block.question.replace(/\s/gu, ' ') === question ? undefined : block,
  );
}

function withoutDocument(gone: Kind): Change {
  return (documents) => documents.filter(({ kind }) => kind !== gone);
}

const inRows =
  (change: (row: StripRow) => StripRow) =>
  (block: OfType<'strip'>): Block => ({ ...block, rows: block.rows.map(change) });

function reworded(paragraph: Paragraph, change: (value: string) => string): Paragraph {
  return {
    ...paragraph,
    inlines: paragraph.inlines.map((inline) => ({ ...inline, value: change(inline.value) })),
  };
}

/** One more paragraph at the end of a document. */
function saying(kind: Kind, value: string): Change {
  const added: Block = { type: 'paragraph', role: 'body', origin: 'x:1', inlines: [{ type: 'text', value }] };
  return (documents) =>
    documents.map((tree) => (tree.kind === kind ? { ...tree, blocks: [...tree.blocks, added] } : tree));
}

const sentence = 'You walk a little each day and then you rest. ';

/** What is taken out, and which criterion of the choosing packet is lost by it. */
const losses: readonly (readonly [id: string, what: string, change: Change])[] = [
  ['q-1', 'the cover', onType('comparison', 'cover', gone)],
  [
    'q-2',
    'the question on the cover',
    onType('comparison', 'cover', (cover) => ({ ...cover, question: 'My weight' })),
  ],
  [
    'q-3',
    'doing nothing new among the choices',
    onType('comparison', 'strip', (strip) => ({
      ...strip,
      rows: strip.rows.filter(({ name }) => name !== 'No new treatment'),
    })),
  ],
  ['q-4', 'the weights', withoutTopic('comparison', 'How much might I weigh after 5 years?')],
  ['q-6', 'what each asks of a person', withoutTopic('comparison', 'What does it ask of me?')],
  [
    'c-1',
    'the order of one strip',
    onType('comparison', 'strip', (strip) =>
      strip.layout === 'people' ? { ...strip, rows: [...strip.rows].reverse() } : strip,
    ),
  ],
  ['c-2', 'the studies', withoutTopic('sources', 'Which studies are these?')],
  ['c-3', 'the date on the cover', onType('comparison', 'cover', (cover) => ({ ...cover, date: '' }))],
  ['c-4', 'who made it', withoutTopic('sources', 'Who made this, and how old is it?')],
  [
    'c-5',
    'how sure one figure is',
    onType(
      'sources',
      'strip',
      inRows((row) => ({
        ...row,
        words: row.words.map((words) => reworded(words, (value) => value.replace(/very sure/u, ''))),
      })),
    ),
  ],
  ['c-6', 'who paid', onType('sources', 'list', (list) => ({ ...list, items: list.items.slice(0, -1) }))],
  ['k-1', 'what is not known of doing nothing', withoutTopic('comparison', 'What does nobody know yet?')],
  ['k-2', 'the short table', withoutTopic('comparison', 'In short')],
  [
    'k-4',
    'whom the studies measured',
    onType('comparison', 'paragraph', (paragraph) =>
      paragraph.origin.includes('people-topic') ? undefined : paragraph,
    ),
  ],
  [
    'k-5',
    'out of how many',
    onType(
      'comparison',
      'strip',
      inRows((row) => ({
        ...row,
        words: row.words.map((words) => reworded(words, (value) => value.replace(' out of 1,000', ''))),
      })),
    ),
  ],
  [
    'k-7',
    'the same number of people in one picture',
    onType(
      'comparison',
      'strip',
      inRows((row) =>
        row.name === 'Sleeve' && row.picture?.type === 'people'
          ? { ...row, picture: { ...row.picture, of: row.picture.of === 100 ? 1000 : 100 } }
          : row,
      ),
    ),
  ],
  ['k-8', 'how many each picture shows', onType('comparison', 'strip', inRows(withoutFigures))],
  ['k-9', 'what matters', onType('comparison', 'matters', gone)],
  ['k-11', 'the questions', withoutDocument('questions')],
  ['k-18', 'how figures were chosen', withoutTopic('sources', 'How were the numbers chosen?')],
  ['k-21', 'how hard it is to read', withoutTopic('sources', 'How hard are these pages to read?')],
  [
    'u-1',
    'a title',
    onType('questions', 'heading', (heading) => (heading.level === 1 ? undefined : heading)),
  ],
  ['u-5', 'the active voice', saying('questions', 'It is cooked. '.repeat(40).trim())],
  ['u-6', 'whole numbers', saying('questions', 'You lose 1.5 times as much, or 12% more.')],
  [
    'u-7',
    'how many do not have it',
    onType(
      'comparison',
      'strip',
      inRows((row) =>
        row.picture?.type === 'people' ? { ...row, words: row.words.filter((_, index) => index !== 1) } : row,
      ),
    ),
  ],
  ['u-8', 'short chunks', saying('questions', sentence.repeat(8).trim())],
  [
    'u-9',
    'the headings of a document',
    inDocument('questions', (block) =>
      block.type === 'topic' || (block.type === 'heading' && block.level > 1) ? undefined : block,
    ),
  ],
  ['u-17', 'what a picture shows, in words', onType('comparison', 'strip', inRows(withoutAlt))],
  [
    'u-19',
    'short heads',
    onType('comparison', 'table', (table) => ({
      ...table,
      columns: table.columns.map((column) => ({ ...column, label: `${column.label} ${sentence}` })),
    })),
  ],
  ['a-25', 'the keys of the pictures', onType('comparison', 'key', gone)],
  ['m-4', 'every picture', inDocument('comparison', (block) => (isPicture(block) ? undefined : block))],
  ['m-11', 'what is not known', withoutTopic('comparison', 'What does nobody know yet?')],
  ['m-15', 'a number that nobody can count', saying('comparison', 'It takes 3½ times as long.')],
  ['m-18', 'what a serious problem is', onType('comparison', 'topic', (topic) => ({ ...topic, intro: [] }))],
];

/** Takes out why some figures are of another time. */
function withoutAlt(row: StripRow): StripRow {
  return row.picture === undefined ? row : { ...row, picture: { ...row.picture, alt: '' } };
}

function withoutFigures(row: StripRow): StripRow {
  return row.picture?.type === 'people' ? { ...row, words: [] } : row;
}

function isPicture(block: Block): boolean {
  return block.type === 'line-board' || (block.type === 'strip' && block.layout !== 'text');
}

describe('a criterion of the packet for choosing', () => {
  let input: ScoreInput;

  beforeAll(async () => {
    input = await scoreInputOf('QB-1041', 'en');
  });

  it.each(losses)('%s is lost with %s', (id, _, change) => {
    const before = outcomesOf(scoreDocuments(input));
    const after = outcomesOf(scoreDocuments({ ...input, documents: change(input.documents) }));
    expect(before.get(id)).toBe('met');
    expect(after.get(id)).not.toBe('met');
    expect(after.get(id)).not.toBe('not-applicable');
  });

  it('on whole numbers stays met by a dose, a reading of a thermometer and a value of a lab', () => {
    const change = saying('questions', 'Take 1.5 mg. Call from 100.4 °F on. Your HbA1c is under 6.5%.');
    const outcomes = outcomesOf(scoreDocuments({ ...input, documents: change(input.documents) }));
    expect(outcomes.get('u-6')).toBe('met');
  });

  it('on medical words is lost with one that is not explained, and else left to a person', () => {
    const change = saying('questions', 'Is dumping a problem?');
    const outcomes = outcomesOf(scoreDocuments({ ...input, documents: change(input.documents) }));
    expect([outcomesOf(scoreDocuments(input)).get('u-4'), outcomes.get('u-4')]).toEqual([
      'person',
      'not-met',
    ]);
  });

  it('is owed by the publisher where nobody says who paid', () => {
    const { documents } = input;
    const change = withoutTopic('sources', 'Who made this, and how old is it?');
    expect(outcomesOf(scoreDocuments({ ...input, documents: change(documents) })).get('c-6')).toBe(
      'organisation',
    );
  });

  it('on the same time is met without a reason where all options are weighed at one time', () => {
    const timeless = onType('comparison', 'table', (table) => ({
      ...table,
      rows: table.rows.map((row) => ({
        ...row,
        cells: row.cells.map((cell) =>
          cell.map((words) => reworded(words, (value) => value.replace(/\d+\s(?:month|year|week)s?/u, ''))),
        ),
      })),
    }));
    const strips = onType(
      'comparison',
      'strip',
      inRows((row) => ({
        ...row,
        words: row.words.map((words) =>
          reworded(words, (value) =>
            value.replace(/\d+\s(?:month|year)s?:|after \d+\s(?:month|year)s?/gu, ''),
          ),
        ),
      })),
    );
    const documents = strips(timeless(input.documents));
    expect(outcomesOf(scoreDocuments(input)).get('k-6')).toBe('not-met');
    expect(outcomesOf(scoreDocuments({ ...input, documents })).get('k-6')).toBe('met');
  });

  it('of clear communication is lost with the one main message that it hangs on', () => {
    const second = onType('questions', 'heading', (heading) => ({ ...heading, level: 1 }));
    const outcomes = outcomesOf(scoreDocuments({ ...input, documents: second(input.documents) }));
    expect(['m-1', 'm-2', 'm-3', 'm-4'].map((id) => outcomes.get(id))).toEqual(
      Array.from({ length: 4 }, () => 'not-met'),
    );
  });

  it('on everyday words is lost with one document that is too hard', () => {
    const readings = input.readings.map((reading) => ({
      ...reading,
      results: reading.results.map((result) => ({ ...result, passes: reading.kind !== 'questions' })),
    }));
    expect(outcomesOf(scoreDocuments({ ...input, readings })).get('u-3')).toBe('not-met');
  });

  it('on how hard the pages are to read is lost where no formula is checked', () => {
    const readings = input.readings.map((reading) => ({ ...reading, results: [] }));
    expect(outcomesOf(scoreDocuments(input)).get('k-21')).toBe('met');
    expect(outcomesOf(scoreDocuments({ ...input, readings })).get('k-21')).toBe('not-met');
  });

  it('is left to a person in a language of which nothing is known', () => {
    const outcomes = outcomesOf(
      scoreDocuments({
        ...input,
        readings: [],
        locale: { ...input.locale, tag: 'vi', passive: null, readerWords: [] },
      }),
    );
    expect(['u-3', 'u-5', 'a-21', 'm-6'].map((id) => outcomes.get(id))).toEqual(
      Array.from({ length: 4 }, () => 'person'),
    );
  });

  it('on a decision does not apply to a packet without a comparison', () => {
    const documents = withoutDocument('comparison')(input.documents);
    const { sets } = scoreDocuments({ ...input, documents });
    expect(sets.qualifying.percent).toBeNull();
    expect(sets.quality.applicable).toBe(0);
  });

  it('is never met by the clinician sheet', () => {
    const documents = input.documents.filter(({ audience }) => audience === 'clinician');
    expect(scoreDocuments({ ...input, documents }).items.filter(({ outcome }) => outcome === 'met')).toEqual(
      [],
    );
  });
});

describe('a criterion of the packet for after the choice', () => {
  it.each([
    ['u-11', 'what the pages on the operation come to', withoutTopic('operation', 'In short')],
    ['m-10', 'what the pages for home come to', withoutTopic('homecare', 'In short')],
    ['m-11', 'what is not known of it', withoutTopic('operation', 'What does nobody know yet?')],
    ['m-11', 'what is not known at home', withoutTopic('homecare', 'What does nobody know yet?')],
  ] as const)('%s is lost with %s', async (id, _, change) => {
    const input = await scoreInputOf('QB-1128', 'en');
    const after = outcomesOf(scoreDocuments({ ...input, documents: change(input.documents) }));
    expect(outcomesOf(scoreDocuments(input)).get(id)).toBe('met');
    expect(after.get(id)).toBe('not-met');
  });

  it('on a summary is not met by a packet that tells of nothing at length', async () => {
    const input = await scoreInputOf('QB-1128', 'en');
    const documents = input.documents.filter(({ kind }) => kind === 'warning-signs');
    const outcomes = outcomesOf(scoreDocuments({ ...input, documents }));
    expect([outcomes.get('u-11'), outcomes.get('m-11')]).toEqual(['not-met', 'not-met']);
  });
});
