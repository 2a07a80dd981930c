import { describe, expect, it } from 'vitest';

import {
  aftercareStatement,
  cautionStatement,
  definitionStatement,
  holdsFigure,
  listStatements,
  statementKind,
  theCase,
  undoStatement,
  weightAfterStatement,
} from '../../../src/model/statement.ts';
import { makeAftercareSource, makeFact } from '../../helpers/aftercare-inputs.ts';
import { makeCaution, readDefinitions } from '../../helpers/compare-inputs.ts';
import { undoingOf } from '../../helpers/compose-inputs.ts';

describe('the id of a statement', () => {
  it('is its kind and the key of its row', () => {
    const ids = [
      undoStatement('bypass'),
      weightAfterStatement('bypass'),
      cautionStatement('reflux-sleeve'),
      definitionStatement('asian-obesity-2022'),
      aftercareStatement('fluid.band.textbook'),
    ];
    expect(ids).toEqual([
      'undo:bypass',
      'undo:bypass#weight_after',
      'caution:reflux-sleeve',
      'definition:asian-obesity-2022',
      'aftercare:fluid.band.textbook',
    ]);
    expect(ids.map(statementKind)).toEqual(['undo', 'undo', 'caution', 'definition', 'aftercare']);
  });

  it('is never that of a record or of the case', () => {
    expect([theCase, 'record:undo.leak', 'undo', ''].map(statementKind)).toEqual([
      undefined,
      undefined,
      'undo',
      undefined,
    ]);
  });
});

const nothing = {
  reversibility: new Map(),
  cautions: [],
  definitions: [],
  aftercare: [],
  aftercareSources: new Map(),
};

describe('the statements of the evidence', () => {
  const unread = [{ study: 'study-a', seen: 'page-2nd' as const }];

  it('say of undoing and of weight afterwards, each for itself, whether it was read on a page', () => {
    const read = undoingOf('sleeve');
    const notKnown = { statement: 'Not known.', basis: 'not-known' as const };
    const counted = { what: 'undone', events: 1, n: 4, study: 'study-a', seen: 'page' as const };
    const rows = [
      read,
      undoingOf('bypass', { sources: unread }),
      undoingOf('band', { sources: unread, undo: { ...read.undo, data: [counted] } }),
      undoingOf('balloon', { undo: { ...read.undo, weight_after: notKnown } }),
    ];
    const reversibility = new Map(rows.map((row) => [row.option, row]));
    expect([...listStatements({ ...nothing, reversibility })]).toEqual([
      ['undo:sleeve', true],
      ['undo:sleeve#weight_after', true],
      ['undo:bypass', false],
      ['undo:bypass#weight_after', true],
      ['undo:band', true],
      ['undo:band#weight_after', true],
      ['undo:balloon', true],
      ['undo:balloon#weight_after', false],
    ]);
  });

  it('take a caution for read only where its basis is a page and one of its sources was read', () => {
    const cautions = [
      makeCaution({ id: 'read' }),
      makeCaution({ id: 'second-hand', seen: 'page-2nd' }),
      makeCaution({ id: 'no-source', sources: unread }),
      makeCaution({ id: 'practice', basis: 'practice', ask: 'Ask.' }),
    ];
    expect([...listStatements({ ...nothing, cautions })]).toEqual([
      ['caution:read', true],
      ['caution:second-hand', false],
      ['caution:no-source', false],
      ['caution:practice', false],
    ]);
  });

  it('hold the definitions, also those that were copied from a second account', () => {
    const definitions = readDefinitions();
    const statements = listStatements({ ...nothing, definitions });
    expect(statements.size).toBe(definitions.length);
    expect(statements.get('definition:indication-recommended-2022')).toBe(true);
    expect(statements.get('definition:bmi-class-1-who')).toBe(false);
  });

  it('hold the facts on aftercare, printable only where they were read and nobody else has to decide', () => {
    const aftercare = [
      makeFact({ id: 'read' }),
      makeFact({ id: 'recalled', seen: 'memory' }),
      makeFact({ id: 'disputed', conflict_with: ['read'] }),
      makeFact({ id: 'prescribed', use: 'prescriber' }),
      makeFact({ id: 'old', source: 'old' }),
    ];
    const aftercareSources = new Map([['old', makeAftercareSource('old', { replaced: true })]]);
    expect([...listStatements({ ...nothing, aftercare, aftercareSources })]).toEqual([
      ['aftercare:read', true],
      ['aftercare:recalled', false],
      ['aftercare:disputed', false],
      ['aftercare:prescribed', false],
      ['aftercare:old', false],
    ]);
  });
});

describe('a figure in words', () => {
  it.each(['24 of 48', 'a BMI of 27.5', 'most (8%)', 'type 2 diabetes'])('is in "%s"', (words) => {
    expect(holdsFigure(words)).toBe(true);
  });

  it.each(['', 'low vitamin B12', 'HbA1c', 'half of them', 'none of ten'])('is not in "%s"', (words) => {
    expect(holdsFigure(words)).toBe(false);
  });
});
