import { beforeAll, describe, expect, it } from 'vitest';

import { planAftercare } from '../../../src/aftercare/index.ts';
import { composeDocument } from '../../../src/compose/index.ts';
import type { ComposeInput, Templates } from '../../../src/compose/index.ts';
import { InternalError } from '../../../src/diagnostics/diagnostic.ts';
import { ProtocolSchema } from '../../../src/model/clinic-protocol.ts';
import { documentKinds } from '../../../src/model/codes.ts';
import type { CautionHit, ComparisonTable } from '../../../src/model/comparison.ts';
import type { DocumentTree } from '../../../src/model/document.ts';
import type { Locale } from '../../../src/model/locale.ts';
import { expectedText, furnitureTexts } from '../../../src/model/tree-text.ts';
import { aftercareInput } from '../../helpers/aftercare-inputs.ts';
import { makeCase, makeClinic, readShippedEvidence } from '../../helpers/compare-inputs.ts';
import {
  blocksOfType,
  evidenceFor,
  fiveOptions,
  makeComparison,
  practiceHit,
  realLocale,
  realTemplates,
  refluxHit,
  tenOptions,
  textOf,
  undoingOf,
} from '../../helpers/compose-inputs.ts';

let templates: Templates;
const locales = new Map<string, Locale>();

beforeAll(async () => {
  templates = await realTemplates();
  for (const tag of ['en', 'es']) locales.set(tag, await realLocale(tag));
});

function localeOf(tag: string): Locale {
  const locale = locales.get(tag);
  if (locale === undefined) throw new Error(`no locale ${tag}`);
  return locale;
}

function inputFor(comparison: ComparisonTable, changes: Partial<ComposeInput> = {}): ComposeInput {
  return {
    kind: 'comparison',
    case: makeCase({ decision: { options: comparison.options.map(({ code }) => code) } }),
    clinic: { ...makeClinic(), language_notice: { languages: ['en', 'es'], phone: '555 0100' } },
    evidence: evidenceFor(comparison),
    comparison,
    aftercare: planAftercare(aftercareInput()),
    locale: localeOf('en'),
    otherLocales: [localeOf('es')],
    state: 'example',
    date: '2026-11-25',
    documentId: 'T-1-C',
    templates,
    ...changes,
  };
}

function compose(comparison: ComparisonTable, changes: Partial<ComposeInput> = {}): DocumentTree {
  const result = composeDocument(inputFor(comparison, changes));
  if (!result.ok) throw new Error(result.diagnostics.map(({ message }) => message).join('; '));
  return result.value;
}

/** Namespaces of the words: a text that looks like one of their keys is a key that was printed. */
const printedKey =
  /\b(common|comparison|questions|sources|clinician-sheet|options|outcomes|codes|cautions|missing)\.[a-z]+[._-]/;

describe.each(['en', 'es'])('documents in %s', (tag) => {
  describe.each([
    ['two options', ['sleeve', 'no-operation']],
    ['five options', fiveOptions],
    ['ten options', tenOptions],
  ])('with %s', (_, options) => {
    it.each(documentKinds)('says everything of a %s in words, with no placeholder and no key', (kind) => {
      const comparison = makeComparison(options, { cautions: [refluxHit, practiceHit], notes: ['under-35'] });
      const tree = compose(comparison, { kind, locale: localeOf(tag) });
      expect(tree).toMatchObject({ kind, language: tag, paper: 'letter', direction: 'ltr' });
      expect(tree.blocks.length).toBeGreaterThan(2);
      for (const text of [
        ...expectedText(tree).map((piece) => piece.text),
        ...furnitureTexts(tree, 2, 7),
        tree.title,
      ]) {
        expect(text).not.toMatch(/\{\{|\}\}|undefined|NaN|\[object|\n/);
        // Record ids of the clinician sheet look like keys, but begin with an option.
        expect(text).not.toMatch(printedKey);
        expect(text).not.toMatch(/<\/?[a-z]+/);
      }
    });
  });

  it('says the same whichever empty fields a case leaves out', () => {
    const comparison = makeComparison(['sleeve', 'no-operation'], { topics: [], cautions: [], notes: [] });
    for (const kind of documentKinds) {
      const tree = compose(comparison, { kind, locale: localeOf(tag) });
      expect(expectedText(tree).every(({ text }) => text.trim() !== '')).toBe(true);
    }
  });
});

describe('furniture', () => {
  it('carries name, date, numbers to call, id and review on every page', () => {
    const { furniture } = compose(makeComparison(fiveOptions));
    expect(furniture).toMatchObject({
      header: { start: 'Ilsa Marchetti-Boone', end: 'My choices · November\u00a025,\u00a02026' },
      headerOnFirstPage: false,
      phones: ['555 0100', '555 0101', '911'],
      tab: 'Example. This person is invented.',
    });
    expect(furniture.footer.call).toContain('555 0100');
    expect(furniture.footer.call).toContain('555 0101');
    expect(furniture.footer.call).toContain('911');
    expect(furniture.footer.id).toBe('T-1-C · next check November\u00a02027');
    expect(furniture.footer.page).toBe('Page {page} of {pages}');
    expect(furniture).not.toHaveProperty('draftEdges');
  });

  it('names every other number that the clinic gives, once, so that it can be dialled', () => {
    const clinic = {
      ...makeClinic(),
      second_opinion: [{ name: 'Dunmere Valley Hospital', phone: '555 0191' }],
      language_notice: { languages: ['en'], phone: '555 0128' },
      protocol: ProtocolSchema.parse({
        call: { sleeve: [{ who: { en: 'Nurse' }, phone: '555 0128', urgency: ['today'] }] },
      }),
    };
    const { furniture } = compose(makeComparison(fiveOptions), { clinic });
    expect(furniture.otherPhones).toEqual(['555 0128', '555 0191']);
  });

  it('keeps the name off the clinician sheet and says that it is not for the patient', () => {
    const tree = compose(makeComparison(fiveOptions), { kind: 'clinician-sheet' });
    expect(tree.audience).toBe('clinician');
    expect(tree.furniture.header.start).toBe('T-1 · not for the patient');
    expect(textOf(tree)).toContain('Not for the patient.');
    expect(textOf(tree)).not.toContain('Ilsa');
  });

  it('marks a draft on its edges and lists what is open at its end', () => {
    const comparison = makeComparison(fiveOptions, { cautions: [practiceHit] });
    const tree = compose(comparison, { state: 'draft' });
    // Words not reviewed, profile not approved, no approval form for the plication, one practice caution.
    expect(tree.furniture.tab).toBe('Draft. Not for signature. 4 points are open, see the list at the end.');
    expect(tree.furniture.draftEdges).toEqual(['Draft', 'Draft']);
    const last = blocksOfType(tree, 'topic').at(-1);
    expect(last?.question).toBe('What is still open?');
    expect(textOf({ ...tree, blocks: last === undefined ? [] : [last] })).toContain(
      'Stomach folding is under study',
    );
    expect(blocksOfType(compose(comparison), 'topic').at(-1)?.question).toBe('What happens next?');
  });
});

describe('what no text of a case can do', () => {
  const nasty = `<b>&"'><fig cell="x" records="">1</fig></p>{{t 'common.title'}}`;

  it.each(documentKinds)('add structure to a %s', (kind) => {
    const comparison = makeComparison(fiveOptions, { cautions: [refluxHit] });
    const decision = {
      options: fiveOptions,
      matters_most: [{ text: { en: nasty } }],
      leaning: { option: 'sleeve', reasons: [{ text: { en: nasty } }] },
      advised_against: [{ option: 'bypass', reasons: [{ text: { es: nasty } }] }],
    };
    const plain = compose(comparison, {
      kind,
      case: makeCase({ decision: { ...decision, matters_most: [{ text: { en: 'x' } }] } }),
    });
    const tree = compose(comparison, {
      kind,
      case: makeCase({ patient: { name: nasty.slice(0, 80) }, decision }),
    });
    expect(tree.blocks.map(({ type }) => type)).toEqual(plain.blocks.map(({ type }) => type));
    const figures = expectedText(tree).flatMap((piece) => piece.figures);
    expect(figures.some(({ cell }) => cell === 'x')).toBe(false);
  });

  it('be lost: it is printed as it was written', () => {
    const decision = { options: fiveOptions, matters_most: [{ text: { en: nasty } }] };
    const tree = compose(makeComparison(fiveOptions), {
      case: makeCase({ patient: { name: nasty.slice(0, 80) }, decision }),
    });
    expect(textOf(tree)).toContain(`“${nasty}”`);
    expect(textOf(tree)).toContain(`For ${nasty.slice(0, 80)}`);
    expect(tree.furniture.header.start).toBe(nasty.slice(0, 80));
  });

  it('marks free text that is in another language', () => {
    const decision = { options: fiveOptions, matters_most: [{ text: { es: 'Quiero subir escaleras.' } }] };
    const tree = compose(makeComparison(fiveOptions), { case: makeCase({ decision }) });
    const [statement] = blocksOfType(tree, 'matters').flatMap(({ statements }) => statements);
    expect(statement?.inlines).toContainEqual({
      type: 'text',
      value: 'Quiero subir escaleras.',
      language: 'es',
    });
  });
});

describe('the last gate before paper', () => {
  it.each(documentKinds)('refuses a %s with a figure that nobody read at its source', (kind) => {
    const comparison = makeComparison(fiveOptions);
    const unread = 'sleeve.leak.study-a';
    const result = composeDocument(
      inputFor(comparison, { kind, evidence: evidenceFor(comparison, {}, [unread]) }),
    );
    expect(result).toMatchObject({ ok: false, diagnostics: [{ code: 'EVIDENCE_UNVERIFIED', path: unread }] });
  });

  it('refuses a record that the evidence does not hold', () => {
    const comparison = makeComparison(fiveOptions);
    const { recordsUsed, ...rest } = comparison;
    const evidence = evidenceFor({ ...rest, recordsUsed: recordsUsed.slice(1) });
    const result = composeDocument(inputFor(comparison, { evidence }));
    expect(result.ok ? [] : result.diagnostics.map(({ path }) => path)).toEqual([recordsUsed[0]]);
  });

  it('prints only what to ask where the evidence says that no source was read, whatever the comparison says', () => {
    const comparison = makeComparison(fiveOptions, { cautions: [{ ...practiceHit, basis: 'page' }] });
    expect(textOf(compose(comparison))).toContain(
      'Ask your surgeon how your BMI changes the risk of this operation.',
    );
  });

  it.each([
    ['what undoing takes', 'undo:bypass', { sources: [{ study: 'study-a', seen: 'page-2nd' as const }] }],
    [
      'weight once it is undone',
      'undo:bypass#weight_after',
      {
        undo: {
          ...undoingOf('bypass').undo,
          weight_after: { statement: 'Not known.', basis: 'not-known' as const },
        },
      },
    ],
  ])('refuses a figure on %s that nobody read at its source', (_, id, changes) => {
    const comparison = makeComparison(fiveOptions);
    const { reversibility, ...evidence } = evidenceFor(comparison);
    const rows = new Map([...reversibility, ['bypass', undoingOf('bypass', changes)] as const]);
    const result = composeDocument(inputFor(comparison, { evidence: { ...evidence, reversibility: rows } }));
    expect(result).toMatchObject({ ok: false, diagnostics: [{ code: 'EVIDENCE_UNVERIFIED', path: id }] });
  });

  it('refuses words on undoing with a figure where the evidence says nothing of undoing', () => {
    const comparison = makeComparison(['bypass', 'no-operation']);
    const evidence = evidenceFor(comparison, { reversibility: new Map() });
    const result = composeDocument(inputFor(comparison, { evidence }));
    const found = result.ok ? [] : result.diagnostics;
    // One for each paragraph of the words that holds a figure.
    expect(found.map(({ code, path }) => [code, path])).toEqual([
      ['EVIDENCE_UNVERIFIED', ''],
      ['EVIDENCE_UNVERIFIED', ''],
    ]);
  });

  it('refuses a document that lacks a statement of its kind', () => {
    const comparison = makeComparison(fiveOptions);
    const documents = new Map(templates.documents);
    const sources = documents.get('sources');
    if (sources !== undefined)
      documents.set('sources', { ...sources, required: ['comparison.short.question'] });
    const result = composeDocument(
      inputFor(comparison, { kind: 'sources', templates: { ...templates, documents } }),
    );
    expect(result).toMatchObject({
      ok: false,
      diagnostics: [{ code: 'TEMPLATE_STATEMENT_MISSING', path: 'comparison.short.question' }],
    });
  });

  it('reports words that a language lacks, with their key', () => {
    const comparison = makeComparison(['sleeve', 'no-operation'], { notes: ['no-such-note' as 'under-35'] });
    const result = composeDocument(inputFor(comparison));
    expect(result).toMatchObject({
      ok: false,
      diagnostics: [{ code: 'LOCALE_KEY_MISSING', path: 'comparison.notes.no-such-note' }],
    });
  });

  it('reports markup that is not well-formed at the template, where it names no line', () => {
    const documents = new Map(templates.documents);
    const sources = documents.get('sources');
    if (sources !== undefined) documents.set('sources', { ...sources, run: () => '<p>open' });
    const changed = { kind: 'sources' as const, templates: { ...templates, documents } };
    expect(composeDocument(inputFor(makeComparison(fiveOptions), changed))).toMatchObject({
      ok: false,
      diagnostics: [{ code: 'TEMPLATE_SYNTAX', span: { file: 'sources/main.hbs', line: 1 } }],
    });
  });

  it('refuses a figure that names no record, unless the clinic counted it itself', () => {
    const documents = new Map(templates.documents);
    const sources = documents.get('sources');
    const figure = (cell: string): string => `<p><fig cell="${cell}" records="">24</fig></p>`;
    if (sources !== undefined)
      documents.set('sources', {
        ...sources,
        required: [],
        run: () => `${figure('sleeve/leak/30d')}${figure('sleeve/leak/30d/own')}`,
      });
    const changed = { kind: 'sources' as const, templates: { ...templates, documents } };
    const result = composeDocument(inputFor(makeComparison(fiveOptions), changed));
    expect(
      result.ok ? [] : result.diagnostics.map(({ code, path, span }) => [code, path, span?.file]),
    ).toEqual([['EVIDENCE_UNVERIFIED', 'sleeve/leak/30d', 'sources/main.hbs']]);
  });

  it('takes a kind without a template, and a fault that is none of words or markup, for its own mistake', () => {
    const comparison = makeComparison(fiveOptions);
    const none = { ...templates, documents: new Map() };
    expect(() => composeDocument(inputFor(comparison, { templates: none }))).toThrow(InternalError);
    const broken = { ...comparison, person: { ...comparison.person, bmi: Number.NaN } };
    expect(() => composeDocument(inputFor(broken))).toThrow(InternalError);
  });

  it('reports markup that a template breaks, at its line', () => {
    const comparison = makeComparison(fiveOptions);
    const documents = new Map(templates.documents);
    const sources = documents.get('sources');
    if (sources !== undefined)
      documents.set('sources', {
        ...sources,
        run: () => '<p origin="sources/main.hbs:3">x</p><blink origin="sources/main.hbs:4"/>',
      });
    const result = composeDocument(
      inputFor(comparison, { kind: 'sources', templates: { ...templates, documents } }),
    );
    expect(result).toMatchObject({
      ok: false,
      diagnostics: [{ code: 'TEMPLATE_UNKNOWN_BLOCK', span: { file: 'sources/main.hbs', line: 4 } }],
    });
  });
});

describe('sentences that stand on a row of the evidence', () => {
  const standing = (tree: DocumentTree): readonly (readonly [string, string])[] => {
    const found: (readonly [string, string])[] = [];
    JSON.stringify(tree.blocks, (_, node: unknown) => {
      if (node !== null && typeof node === 'object' && 'statements' in node && 'value' in node)
        found.push([String(node.statements), String(node.value)]);
      return node;
    });
    return found;
  };
  const person = makeComparison(fiveOptions, { cautions: [refluxHit, practiceHit], notes: ['asian-25'] });

  it('name it in the comparison: undoing and weight afterwards apart, cautions, notes and their causes', () => {
    const found = standing(compose(person));
    const rows = ['sleeve', 'bypass', 'plication', 'semaglutide', 'usual-care'];
    expect(found.map(([ids]) => ids)).toEqual([
      'definition:asian-obesity-2022,definition:indication-asian-2022',
      'plainleaf:case',
      'caution:reflux-sleeve',
      'plainleaf:case',
      'caution:bmi-very-high-others',
      ...rows.flatMap((row) => [`undo:${row}`, `undo:${row}#weight_after`]),
    ]);
    expect(found[2]?.[1]).toMatch(/^After 10 years, /);
    expect(found[7]?.[1]).toMatch(/^A second large operation .* and 1 died\.$/);
    expect(found[8]?.[1]).toMatch(/^Part of the weight comes back\. .* about 18 in a year, on average\.$/);
  });

  it('name it also where a warning is asked about, and where it is explained to the clinician', () => {
    expect(standing(compose(person, { kind: 'questions' }))).toEqual([
      ['caution:bmi-very-high-others', expect.stringMatching(/^Ask /)],
    ]);
    expect(standing(compose(person, { kind: 'clinician-sheet' })).map(([ids]) => ids)).toEqual([
      'caution:reflux-sleeve',
      'caution:bmi-very-high-others',
    ]);
  });

  it('leave out the figures for those in whom undoing was not measured, and still name the row', () => {
    const young = { ...person, person: { ...person.person, age: 16 } };
    const bypass = standing(compose(young)).filter(([ids]) => ids.startsWith('undo:bypass'));
    expect(bypass.map(([ids]) => ids)).toEqual(['undo:bypass', 'undo:bypass#weight_after']);
    expect(bypass.map(([, words]) => words).join(' ')).not.toMatch(/\d/);
  });
});

describe('the sentences that are shipped', () => {
  const { reversibility, cautions } = readShippedEvidence();
  const hits = cautions.map(({ id, basis, effect, strength }): CautionHit => ({
    ...{ id, basis, effect, strength, options: ['sleeve'] },
    triggers: ['condition:type-2-diabetes', 'condition:b12-deficiency'],
  }));
  const notes = ['under-35', 'under-30', 'asian-27-5', 'asian-25', 'under-18-5', 'adolescent'] as const;

  const codes = [...reversibility.keys()].filter((code) => code !== 'usual-care');

  it.each(['en', 'es'])('hold in %s no figure without a row that was read on a page', (tag) => {
    // A case takes ten options at most.
    for (const some of [codes.slice(0, 7), codes.slice(7)]) {
      const options = [...some, 'no-operation'];
      const comparison = makeComparison(options, { cautions: hits, notes });
      const evidence = evidenceFor(comparison, { reversibility, cautions });
      const [comparing] = documentKinds.map((kind) =>
        compose(comparison, { kind, evidence, locale: localeOf(tag) }),
      );
      if (comparing === undefined) throw new Error('no document');
      const callouts = blocksOfType(comparing, 'callout').flatMap(({ body }) => body);
      expect(callouts.length).toBeGreaterThan(hits.length);
      const [wayBack] = blocksOfType(comparing, 'strip').filter(({ layout }) => layout === 'way-back');
      expect(wayBack?.rows).toHaveLength(options.length);
    }
    expect(codes.length).toBeGreaterThan(10);
  });
});

describe('every figure of a document', () => {
  it.each(documentKinds)('names a cell and its records in a %s', (kind) => {
    const comparison = makeComparison(fiveOptions);
    const figures = expectedText(compose(comparison, { kind })).flatMap((piece) => piece.figures);
    const own = figures.filter(({ cell }) => cell.endsWith('/own'));
    const others = figures.filter(({ cell }) => !cell.endsWith('/own'));
    expect(own.every(({ records }) => records.length === 0)).toBe(true);
    expect(others.every(({ records }) => records.length > 0)).toBe(true);
    const used = new Set(others.flatMap(({ records }) => records));
    expect([...used].filter((record) => !comparison.recordsUsed.includes(record))).toEqual([]);
  });

  it('shows every record that the comparison uses, on the pages and in the sources', () => {
    const comparison = makeComparison(fiveOptions);
    for (const kind of ['comparison', 'sources', 'clinician-sheet'] as const) {
      const figures = expectedText(compose(comparison, { kind })).flatMap((piece) => piece.figures);
      const shown = new Set(figures.flatMap(({ records }) => records));
      const absent = comparison.recordsUsed.filter((record) => !shown.has(record));
      expect(absent).toEqual(kind === 'sources' ? ['sleeve.other.study-b'] : []);
    }
  });

  it('has an origin in a template for every block', () => {
    const tree = compose(makeComparison(fiveOptions));
    for (const { origin } of expectedText(tree))
      expect(origin).toMatch(/^(comparison\/main|partials\/[a-z-]+)\.hbs:\d+$/);
  });
});
