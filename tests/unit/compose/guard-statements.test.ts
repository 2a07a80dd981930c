import { describe, expect, it } from 'vitest';

import { guardStatements } from '../../../src/compose/guard-statements.ts';
import type { Block, DocumentTree, Inline, Strip } from '../../../src/model/document.ts';
import { theCase } from '../../../src/model/statement.ts';
import { makeCaution, makeEvidence, readDefinitions } from '../../helpers/compare-inputs.ts';
import { undoingOf } from '../../helpers/compose-inputs.ts';
import { figure, paragraph, smallTree, words } from '../../helpers/small-tree.ts';

const unread = [{ study: 'study-a', seen: 'memory' as const }];
const { undo } = undoingOf('sleeve');
const evidence = {
  ...makeEvidence([], {
    reversibility: new Map(
      [
        undoingOf('sleeve'),
        undoingOf('band', {
          sources: unread,
          undo: { ...undo, weight_after: { statement: 'Not known.', basis: 'not-known' } },
        }),
      ].map((row) => [row.option, row]),
    ),
    cautions: [makeCaution(), makeCaution({ id: 'practice', basis: 'practice', ask: 'Ask.' })],
  }),
  definitions: readDefinitions(),
};

const standing = (value: string, ...statements: readonly string[]): Inline => ({
  type: 'text',
  value,
  statements,
});
const caution = (...inlines: readonly Inline[]): Block => paragraph('a.hbs:7', inlines, 'caution');
const strip = (layout: Strip['layout'], ...inlines: readonly Inline[]): Block => ({
  type: 'strip',
  layout,
  origin: 'a.hbs:3',
  rows: [{ name: 'Band 2', origin: 'a.hbs:4', words: [paragraph('a.hbs:5', inlines)] }],
});

function refused(block: Block, changes: Partial<DocumentTree> = {}): readonly (readonly unknown[])[] {
  const topic: Block = { type: 'topic', question: 'Q', intro: [], blocks: [block], origin: 'a.hbs:1' };
  return guardStatements(smallTree([topic], changes), evidence).map(({ code, path, span }) => [
    code,
    path,
    span?.line,
  ]);
}
const unverified = 'EVIDENCE_UNVERIFIED';

describe('a digit in a caution or in words on undoing', () => {
  it('is refused where it names no row of the evidence, at its line', () => {
    expect(refused(caution(words('8 of 10 had it.')))).toEqual([[unverified, '', 7]]);
    expect(refused(caution(standing('8 of 10 had it.')))).toEqual([[unverified, '', 7]]);
    expect(refused(strip('way-back', words('It takes 2 hours.')))).toEqual([[unverified, '', 5]]);
  });

  it('is let through where its row was read on a page', () => {
    const said = ['undo:sleeve', 'undo:sleeve#weight_after', 'caution:reflux-sleeve'];
    for (const id of said) {
      expect(refused(caution(words('So: '), standing('8 of 10 had it.', id)))).toEqual([]);
      expect(refused(strip('way-back', standing('8 of 10 had it.', id)))).toEqual([]);
    }
  });

  it.each(['undo:band', 'undo:band#weight_after', 'caution:practice', 'definition:bmi-class-1-who'])(
    'is refused where %s was not read on a page, wherever it stands',
    (id) => {
      expect(refused(caution(standing('8 of 10 had it.', id)))).toEqual([[unverified, id, 7]]);
      expect(refused(paragraph('a.hbs:9', [standing('8 of 10 had it.', id)]))).toEqual([[unverified, id, 9]]);
      expect(refused(caution(standing('Most had it.', id)))).toEqual([]);
    },
  );

  it('is refused where one of several rows was not read', () => {
    const both = standing('8 of 10 had it.', 'undo:sleeve', 'undo:band');
    expect(refused(caution(both))).toEqual([[unverified, 'undo:band', 7]]);
  });

  it('may repeat what the case says of the person', () => {
    expect(refused(caution(standing('You have type 2 diabetes.', theCase)))).toEqual([]);
  });

  it('may be that of a cell, which has records of its own', () => {
    expect(refused(caution(figure('8 of 10', 'sleeve/leak/30d', ['r'])))).toEqual([]);
  });

  it('is none in a name such as B12', () => {
    expect(refused(caution(words('Your vitamin B12 is low.')))).toEqual([]);
  });
});

describe('elsewhere', () => {
  it('digits are left to the other guards', () => {
    expect(refused(strip('text', words('See page 2.')))).toEqual([]);
    expect(refused(paragraph('a.hbs:9', [words('Call 911.')]))).toEqual([]);
  });

  it('a row that is not in the evidence is refused in any document, with or without a digit', () => {
    for (const audience of ['patient', 'clinician'] as const)
      expect(refused(paragraph('a.hbs:9', [standing('Most.', 'undo:pill')]), { audience })).toEqual([
        [unverified, 'undo:pill', 9],
      ]);
  });

  it('clinicians may read what usual practice says, with its numbers', () => {
    const practice = caution(standing('8 of 10 had it.', 'caution:practice'));
    expect(refused(practice, { audience: 'clinician' })).toEqual([]);
  });

  it('never repeats the words, which may hold what the case says', () => {
    const [fault] = guardStatements(smallTree([caution(words('You are 47.'))]), evidence);
    expect(JSON.stringify(fault)).not.toContain('47');
    expect(fault?.message).toMatch(/\bcaution\b/);
  });
});
