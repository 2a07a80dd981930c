import { describe, expect, it } from 'vitest';

import { viewDocumentScore } from '../../../../src/compose/view/view-document-score.ts';
import { criterionSets } from '../../../../src/model/criterion.ts';
import type { CriterionSet } from '../../../../src/model/criterion.ts';
import type {
  CriterionOutcome,
  DocumentScore,
  ScorePlace,
  SetScore,
} from '../../../../src/model/document-score.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const all: SetScore = { met: 5, applicable: 5, person: 0, percent: 100 };

function scoreOf(
  sets: Partial<Record<CriterionSet, SetScore>>,
  items: DocumentScore['items'] = [],
): DocumentScore {
  const each = Object.fromEntries(criterionSets.map((set) => [set, all])) as Record<CriterionSet, SetScore>;
  return { items, sets: { ...each, ...sets } };
}

function item(id: string, outcome: CriterionOutcome, place?: ScorePlace): DocumentScore['items'][number] {
  const set = id.startsWith('k') ? 'quality' : 'understandability';
  const criterion = { id, set, says: 'x', by: 'generator', check: 'lists', seen: 'memory' } as const;
  return { criterion, outcome, places: place === undefined ? [] : [place] };
}

async function linesOf(score: DocumentScore, tag = 'en'): Promise<readonly string[]> {
  const { lines } = viewDocumentScore(await sceneFor(tag, { score }));
  return lines.map(({ markup }) => markup.replace(/<[^>]+>/g, ''));
}

describe('the score on the clinician sheet', () => {
  it('takes three lines', async () => {
    const score = scoreOf({
      qualifying: { met: 6, applicable: 6, person: 0, percent: 100 },
      quality: { met: 13, applicable: 23, person: 0, percent: 56.5 },
      understandability: { met: 14, applicable: 16, person: 2, percent: 87.5 },
      'clear-communication': { met: 18, applicable: 20, person: 0, percent: 90 },
    });
    expect(await linesOf(score)).toEqual([
      'Decision aid (Joseph-Williams 2014): qualifying 6 of 6, certification 5 of 5, quality 13 of 23.',
      'Printed material (AHRQ): understandable 14 of 16 (87.5%, 2 not judged), actionable 5 of 5 (100.0%).',
      'Clear communication (CDC): 18 of 20 (90.0%); passes, 90% is needed.',
    ]);
  });

  it('says that 88.2 does not pass', async () => {
    const score = scoreOf({
      'clear-communication': { met: 15, applicable: 17, person: 0, percent: (100 * 15) / 17 },
    });
    expect((await linesOf(score))[2]).toBe(
      'Clear communication (CDC): 15 of 17 (88.2%); does not pass, 90% is needed.',
    );
    expect((await linesOf(score, 'es'))[2]).toContain('no cumple');
  });

  it('says that the first does not apply to a packet without a comparison', async () => {
    const none: SetScore = { met: 0, applicable: 0, person: 0, percent: null };
    expect((await linesOf(scoreOf({ qualifying: none })))[0]).toContain('does not apply');
  });

  it('lists what is not met with its place, then what a study or a reader must bring, and nothing that is met', async () => {
    const place = {
      document: 'comparison',
      title: 'My choices',
      origin: 'x:1',
      heading: 'In short',
    } as const;
    const items = [
      item('u-4', 'person'),
      item('k-12', 'study'),
      item('k-6', 'not-met', place),
      item('u-1', 'met', place),
      item('u-6', 'not-met', { document: 'comparison', title: 'My choices', origin: 'x:1' }),
      item('k-20', 'organisation'),
    ];
    const view = viewDocumentScore(await sceneFor('en', { score: scoreOf({}, items) }));
    const rows = view.owed
      .flatMap((table) => table.rows)
      .map(({ group, cells }) =>
        group === ''
          ? cells.map(({ lines }) => lines.map(({ words }) => words.markup).join('')).join(' | ')
          : group,
      );
    expect(rows).toEqual([
      'Not met',
      'Looks at all options after the same time | Decision aid | My choices: In short',
      'Numbers are clear: whole numbers | Understandable | My choices',
      'Needs those who publish it',
      'Says what the makers are qualified for | Decision aid',
      'Needs a study',
      'Patients were asked what they need for the decision | Decision aid',
      'Needs a reader to judge',
      'Medical words come only to teach them, and are explained | Understandable',
    ]);
  });

  it('has a column for places only over what has one, so that none stands empty on a later page', async () => {
    const headsOf = async (items: DocumentScore['items']): Promise<readonly (readonly string[])[]> =>
      viewDocumentScore(await sceneFor('en', { score: scoreOf({}, items) })).owed.map(({ columns }) =>
        columns.map(({ label }) => label),
      );
    const unplaced = [item('k-12', 'study'), item('u-4', 'person')];
    expect(await headsOf(unplaced)).toEqual([['Criterion', 'Of']]);
    const place = { document: 'comparison', title: 'My choices', origin: 'x:1' } as const;
    expect(await headsOf([...unplaced, item('u-6', 'not-met', place)])).toEqual([
      ['Criterion', 'Of', 'Where'],
      ['Criterion', 'Of'],
    ]);
    // A place of what is met is not printed.
    expect(await headsOf([...unplaced, item('u-1', 'met', place)])).toEqual([['Criterion', 'Of']]);
  });

  it('says once, with both standards, what two of them ask in the same words', async () => {
    const asked = [item('u-7', 'person'), { ...item('m-17', 'person') }];
    const [first, second] = asked;
    const items = [first, { ...second, criterion: { ...second?.criterion, set: 'clear-communication' } }];
    const score = scoreOf({}, items as DocumentScore['items']);
    const { owed } = viewDocumentScore(await sceneFor('en', { score }));
    expect(owed.map(({ rows }) => rows.length)).toEqual([2]);
    expect(owed[0]?.rows[1]?.cells[1]?.lines[0]?.words.markup).toBe('Understandable; Clear communication');
  });

  it('is not there where nothing was held against criteria', async () => {
    const view = viewDocumentScore(await sceneFor('en'));
    expect(view).toMatchObject({ any: false, lines: [], owed: [] });
  });
});
