import { describe, expect, it } from 'vitest';

import { escapeText } from '../../../../src/compose/markup/escape-text.ts';
import { createNotes } from '../../../../src/compose/view/notes.ts';
import { lazyView } from '../../../../src/compose/view/lazy-view.ts';
import { viewAsks } from '../../../../src/compose/view/view-asks.ts';
import { viewHealth } from '../../../../src/compose/view/view-health.ts';
import { viewOpen } from '../../../../src/compose/view/view-open.ts';
import { viewUndo } from '../../../../src/compose/view/view-undo.ts';
import { freeText } from '../../../../src/compose/view/words.ts';
import type { IndicationNote } from '../../../../src/model/comparison.ts';
import { makeCase, makeClinic } from '../../../helpers/compare-inputs.ts';
import {
  evidenceFor,
  fiveOptions,
  makeComparison,
  practiceHit,
  shareCell,
} from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const notes: { readonly [K in IndicationNote]: K } = {
  'under-35': 'under-35',
  'under-30': 'under-30',
  'asian-27-5': 'asian-27-5',
  'asian-25': 'asian-25',
  'under-18-5': 'under-18-5',
  adolescent: 'adolescent',
  pregnant: 'pregnant',
  'low-after-operation': 'low-after-operation',
};

const plain = (markup: string): string => markup.replace(/<[^>]*>/g, '').replaceAll('\u00a0', ' ');

describe.each(['en', 'es'])('notes on thresholds in %s', (tag) => {
  it('have words for every one', async () => {
    const comparison = makeComparison(fiveOptions, { notes: Object.values(notes) });
    const lines = viewHealth(await sceneFor(tag, { comparison })).flatMap((callout) => callout.lines);
    expect(lines).toHaveLength(Object.keys(notes).length);
    expect(new Set(lines.map(({ words }) => words.markup)).size).toBe(lines.length);
  });
});

describe('causes of cautions', () => {
  it('are sentences for conditions, medicines, the past, and the rest', async () => {
    const hit = (trigger: string): typeof practiceHit => ({ ...practiceHit, triggers: [trigger] });
    const triggers = [
      'medicine:insulin',
      'history:pancreatitis',
      'smoking:current',
      'pregnancy:planned',
      'age',
      'mystery',
    ];
    const comparison = makeComparison(fiveOptions, { cautions: triggers.map(hit) });
    const lines = viewHealth(await sceneFor('en', { comparison })).flatMap((callout) => callout.lines);
    expect(lines.map(({ words }) => plain(words.markup).split(' For ')[0])).toEqual([
      'You take insulin.',
      'You have had an inflamed pancreas (pancreatitis).',
      'You smoke.',
      'You plan to get pregnant.',
      'Your age matters here.',
      // A cause without words is left out; the caution itself is not.
      '',
    ]);
  });
});

describe('what an option asks', () => {
  it('marks a stay that comes from studies', async () => {
    const comparison = makeComparison(fiveOptions);
    const [sleeve, ...others] = comparison.options;
    if (sleeve === undefined) throw new Error('no option');
    const known = shareCell({ option: 'sleeve', outcome: 'hospital-stay', asked: {} }, [1, 2]);
    const stay = { ...known, id: 'sleeve/stay', value: { kind: 'amount' as const, value: 2, unit: 'days' } };
    const scene = await sceneFor('en', {
      comparison: { ...comparison, options: [{ ...sleeve, stay }, ...others] },
    });
    const { table, fromClinic } = viewAsks(scene);
    expect(table.rows[0]?.cells[1]?.lines.map(({ words }) => plain(words.markup))).toEqual([
      '2 days',
      'in studies',
    ]);
    expect(fromClinic).toBe(false);
  });
});

describe('undoing', () => {
  it('says what an operation can be changed into, but not itself', async () => {
    const rows = viewUndo(await sceneFor('en'));
    const said = rows.map(({ lines }) => lines.map(({ words }) => plain(words.markup)).join(' '));
    expect(said[0]).toMatch(/^Partly\. .* It can be changed into a gastric bypass or a duodenal switch\.$/);
    expect(said[1]).toMatch(/changed into a duodenal switch\.$/);
    expect(said[3]).not.toContain('It can be changed into');
    expect(rows[0]?.wayBack).toEqual({ possible: 'partly', alt: 'Sleeve: can it be undone? Partly.' });
  });
});

describe('open points', () => {
  it('count texts that are absent in this language, incomplete references and a review that is due', async () => {
    const comparison = makeComparison(fiveOptions, { cautions: [practiceHit] });
    const clinic = {
      ...makeClinic(),
      approved: { by: 'M. Example', on: '2026-10-01' },
      cautions: { [practiceHit.id]: 'confirmed' as const },
    };
    const evidence = evidenceFor(comparison, { nextReview: '2026-11-24' });
    const studies = new Map(
      [...evidence.studies].map(([id, study]) => [id, { ...study, citation_unseen: ['year' as const] }]),
    );
    const decision = { options: fiveOptions, matters_most: [{ text: { en: 'x' } }, { text: { es: 'x' } }] };
    const scene = await sceneFor('es', {
      comparison,
      clinic,
      evidence: { ...evidence, studies },
      case: makeCase({ decision }),
    });
    expect(viewOpen(scene).map(({ markup }) => plain(markup))).toEqual([
      'Una persona calificada todavía no ha revisado las palabras en este idioma: Español.',
      expect.stringContaining('está en estudio y falta el formulario de aprobación.'),
      '1 texto de la clínica o de la persona no está en este idioma.',
      'En 1 estudio, una parte de la referencia no se ha confirmado.',
      'Ya pasó la fecha para volver a revisar los estudios.',
    ]);
  });
});

describe('small tools', () => {
  it('number a note once, whichever records it names', () => {
    const found = createNotes();
    const note = (record: string): { markup: string } => ({
      markup: `Only <fig cell="${record}" records="${record}">5</fig> people.`,
    });
    expect([found.cite(note('a')), found.cite({ markup: 'Other.' }), found.cite(note('b'))]).toEqual([
      1, 2, 1,
    ]);
    expect(found.all()).toHaveLength(2);
  });

  it('work a part out once, and only when it is asked for', () => {
    let made = 0;
    const view = lazyView<{ one: number; two: number }>({
      one: () => (made += 1),
      two: () => {
        throw new Error('nobody asked');
      },
    });
    expect([view.one, view.one, made]).toEqual([1, 1, 1]);
    expect(Object.keys(view)).toEqual(['one', 'two']);
  });

  it('take free text in the language of the document, else the first by code', () => {
    expect(freeText({ es: 'b', en: 'a' }, 'es')).toEqual(['es', 'b']);
    expect(freeText({ fr: 'c', en: 'a' }, 'es')).toEqual(['en', 'a']);
    expect(freeText({}, 'es')).toEqual(['es', '']);
    expect(escapeText('<a href="x">&')).toBe('&lt;a href=&quot;x&quot;&gt;&amp;');
  });
});
