import { beforeAll, describe, expect, it } from 'vitest';

import type { ConsentOutcome, ConsentPlace } from '../../../src/model/consent-element.ts';
import type { Block, DocumentTree, Paragraph } from '../../../src/model/document.ts';
import type { Locale } from '../../../src/model/locale.ts';
import { labelText } from '../../../src/model/text-piece.ts';
import { checkConsent } from '../../../src/score/check-consent.ts';
import type { ConsentInput } from '../../../src/score/check-consent.ts';
import { consentAbout, consentCase, wholeCase } from '../../helpers/consent-cases.ts';

type Change = (block: Block) => Block | undefined;

/** Puts every block of the record, within topics too, through a change; undefined takes it out. */
function changed(input: ConsentInput, change: Change): ConsentInput {
  const each = (block: Block): readonly Block[] => {
    const done = change(block);
    if (done === undefined) return [];
    return done.type === 'topic' ? [{ ...done, blocks: done.blocks.flatMap(each) }] : [done];
  };
  const documents = input.documents.map((tree: DocumentTree) =>
    tree.kind === 'consent' ? { ...tree, blocks: tree.blocks.flatMap(each) } : tree,
  );
  return { ...input, documents };
}

const outcomesOf = (input: ConsentInput): ReadonlyMap<string, ConsentOutcome> =>
  new Map(checkConsent(input).map(({ element, outcome }) => [element.id, outcome]));

const textOf = ({ inlines }: Paragraph): string => inlines.map(({ value }) => value).join('');
const bare = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** How the words of a place begin on the page, up to their first variable; of plural forms the one for many. */
function beginningOf({ words }: ConsentPlace, { translator }: Locale): string {
  const key = translator.has(`${words}_other`) ? `${words}_other` : words;
  const mark = '\u0001';
  const variables = Object.fromEntries(
    ['option', 'phone', 'approval', 'who', 'n', 'form'].map((name) => [name, mark]),
  );
  return bare(translator.text(key, variables).split(mark)[0] ?? '');
}

/** Takes out what begins with these words, wherever in the record it stands; says whether there was any. */
function takingOut(words: string): { readonly change: Change; readonly taken: () => number } {
  let count = 0;
  const stays = (text: string): boolean => {
    const gone = bare(text).startsWith(words);
    count += gone ? 1 : 0;
    return !gone;
  };
  const keep = (paragraphs: readonly Paragraph[]): readonly Paragraph[] =>
    paragraphs.filter((one) => stays(textOf(one)));
  const inBlock: Change = (block) => {
    switch (block.type) {
      case 'paragraph':
        return stays(textOf(block)) ? block : undefined;
      case 'facts':
        return { ...block, items: block.items.filter(({ label }) => stays(labelText(label))) };
      case 'callout':
        return { ...block, body: keep(block.body) };
      case 'talk':
        return { ...block, statements: block.statements.filter((all) => stays(all.map(textOf).join(' '))) };
      case 'teach-back':
        return { ...block, questions: keep(block.questions) };
      case 'checklist':
        return { ...block, rows: block.rows.filter(({ name }) => stays(name)) };
      case 'interpreter':
        return { ...block, fields: block.fields.filter(({ label }) => stays(label)) };
      case 'signatures':
        return {
          ...block,
          rows: block.rows.map((row) => ({ ...row, fields: row.fields.filter(({ label }) => stays(label)) })),
        };
      default:
        return block;
    }
  };
  const change: Change = (block) => {
    if (block.type === 'topic') return stays(block.question) ? block : undefined;
    return inBlock(block);
  };
  return { change, taken: () => count };
}

describe.each(['en', 'es'])('an element of a consent, in %s,', (language) => {
  let input: ConsentInput;
  let whole: ReadonlyMap<string, ConsentOutcome>;

  beforeAll(async () => {
    ({ input } = await consentCase(wholeCase, language));
    whole = outcomesOf(input);
  });

  it('is never missing from a record of an operation under study with an interpreter, and each is judged', () => {
    expect([...whole].filter(([, outcome]) => outcome === 'lost')).toEqual([]);
    expect([...whole.keys()]).toEqual(input.elements.map(({ id }) => id));
  });

  it('is lost when any of its places is taken out of the record', () => {
    const placed = input.elements.flatMap(({ id, by, where = [] }) =>
      where.map((place) => ({ id, by, place })),
    );
    expect(placed.length).toBeGreaterThan(35);
    for (const { id, by, place } of placed) {
      const { change, taken } = takingOut(beginningOf(place, input.locale));
      const outcome = outcomesOf(changed(input, change)).get(id);
      expect([id, place.words, taken() > 0, outcome]).toEqual([
        id,
        place.words,
        true,
        by === 'clinic' ? 'clinic' : 'lost',
      ]);
    }
  });

  it('that has no place on the pages is owed by the talk, the clinic or the study', () => {
    const without = input.elements.filter(({ where }) => where === undefined);
    expect(without.map(({ id }) => [id, whole.get(id)])).toEqual([
      ['beyond-numbers', 'talk'],
      ['talk-policy', 'clinic'],
      ['in-the-record', 'clinic'],
      ['interpreter-qualified', 'clinic'],
      ['research-form', 'study'],
      ['registry-sentence', 'study'],
    ]);
  });
});

describe('an empty place', () => {
  let input: ConsentInput;

  beforeAll(async () => {
    ({ input } = await consentCase(wholeCase, 'en'));
  });

  const lostBy = (change: Change): readonly string[] =>
    [...outcomesOf(changed(input, change))].flatMap(([id, outcome]) => (outcome === 'lost' ? [id] : []));

  it('is a fact without a value', () => {
    expect(
      lostBy((block) =>
        block.type === 'facts'
          ? { ...block, items: block.items.map((item) => ({ ...item, value: ' ' })) }
          : block,
      ),
    ).toEqual(['hospital-named', 'procedure-named', 'practitioner-named']);
  });

  it('is a point of the talk that is only its own heading', () => {
    const heading = (inlines: Paragraph['inlines']): Paragraph['inlines'] => inlines.slice(0, 1);
    const lost = lostBy((block) =>
      block.type === 'talk'
        ? {
            ...block,
            statements: block.statements.map(([first]) =>
              first === undefined ? [] : [{ ...first, inlines: heading(first.inlines) }],
            ),
          }
        : block,
    );
    expect(lost).toEqual(expect.arrayContaining(['diagnosis', 'benefits', 'material-risks', 'what-matters']));
  });

  it('is a list to tick without columns', () => {
    const lost = lostBy((block) => (block.type === 'checklist' ? { ...block, columns: [] } : block));
    expect(lost).toEqual(['learners', 'teaching-exams', 'no-other-surgeon', 'decision-recorded']);
  });

  it('is a question under which nothing stands', () => {
    const lost = lostBy((block) =>
      block.type === 'topic' && block.question.startsWith('What did I not')
        ? { ...block, blocks: [] }
        : block,
    );
    expect(lost).toEqual(['alternatives', 'decision-recorded']);
  });
});

describe('what applies', () => {
  it('leaves out a study, an interpreter and parts of an operation where there is none', async () => {
    const { input } = await consentCase(['QB-1115', consentAbout('semaglutide')], 'en');
    const ids = [...outcomesOf(input).keys()];
    const conditions = new Map(input.elements.map(({ id, when }) => [id, when]));
    expect(ids.filter((id) => conditions.get(id) !== undefined)).toEqual([]);
    expect([...outcomesOf(input).values()]).not.toContain('lost');
  });

  it('is nothing in a packet without a record of the talk', async () => {
    const { input } = await consentCase(wholeCase, 'en');
    expect(
      checkConsent({ ...input, documents: input.documents.filter(({ kind }) => kind !== 'consent') }),
    ).toEqual([]);
  });

  it('is on a second language, a clinic that names no study, and a surgeon without counts: owed, not lost', async () => {
    const { prepared, input } = await consentCase(wholeCase, 'en');
    const panel: Change = (block) =>
      block.type === 'callout' && block.kind === 'study' ? { ...block, body: block.body.slice(0, 1) } : block;
    const outcomes = outcomesOf(changed(input, panel));
    expect(
      prepared.evidence.consentElements.filter(({ id }) => outcomes.get(id) === 'clinic').map(({ id }) => id),
    ).toEqual(
      expect.arrayContaining(['research-contact', 'research-oversight', 'own-experience', 'approval-form']),
    );
    expect(outcomes.get('research-voluntary')).toBe('lost');
  });
});
