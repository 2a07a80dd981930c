import { describe, expect, it } from 'vitest';

import { viewOpinion } from '../../../../src/compose/view/view-opinion.ts';
import { viewWhy } from '../../../../src/compose/view/view-why.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import type { PairFinding, ReasonCheck, ReasonFinding } from '../../../../src/model/reason-check.ts';
import { makeCase } from '../../../helpers/compare-inputs.ts';
import { fiveOptions, makeComparison, realLocale } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

type Judged = Pick<ReasonCheck, 'code' | 'verdict'> & { readonly finding: ReasonFinding };

async function sceneOf({ code, verdict, finding }: Judged, tag = 'en'): Promise<Scene> {
  const check: ReasonCheck = {
    id: `for/bypass/${code}`,
    stance: 'for',
    option: 'bypass',
    code,
    verdict,
    findings: [finding],
    records: [],
  };
  const leaning = { option: 'bypass', reasons: [{ code }, { text: { en: 'You asked for it.' } }] };
  return sceneFor(tag, {
    comparison: makeComparison(fiveOptions, { reasons: [check] }),
    case: makeCase({ decision: { options: fiveOptions, leaning } }),
  });
}

/** The reasons as the patient reads them, the coded one without its own words. */
async function beside(judged: Judged, tag = 'en'): Promise<readonly string[]> {
  const scene = await sceneOf(judged, tag);
  const said = viewOpinion(scene).leaning?.reasons ?? [];
  const own = scene.words.plain(`codes.reasons.${judged.code}`);
  return said.map(({ markup }) => read(markup).replace(read(own), '').trim());
}

function read(markup: string): string {
  return markup.replace(/<[^>]+>/g, '').replace(/\u00a0/g, ' ');
}

const pair = (other: string, result: 'yes' | 'no' | 'unclear' | 'unknown'): PairFinding =>
  result === 'unknown'
    ? { other, result }
    : { other, result, outcome: 'leak', asked: { days: 30 }, records: [], basis: 'impossible' };
const compare = (means: ReasonFinding['means'], ...pairs: PairFinding[]): ReasonFinding => ({
  find: 'compare',
  means,
  has: 'fewer',
  pairs,
});
const compared = 'Compared with: a sleeve and a duodenal switch.';
const open = { code: 'fewer-early-problems', verdict: 'cannot-tell' } as const;
const wrong = { code: 'fewer-early-problems', verdict: 'contradicted' } as const;

describe('a reason that no number bears out', () => {
  it('says so to the patient beside it, and where numbers show a part of it which', async () => {
    const unknown = compare('nothing', pair('sleeve', 'unknown'), pair('duodenal-switch', 'unknown'));
    expect(await beside({ ...open, finding: unknown })).toEqual([
      `${compared} We found no number for this in people like you.`,
      'You asked for it.',
    ]);
    const part = compare('nothing', pair('sleeve', 'yes'), pair('duodenal-switch', 'unknown'));
    expect((await beside({ ...open, finding: part }))[0]).toBe(
      `${compared} The numbers we found show this only when compared with: a sleeve.`,
    );
    const chance = compare('nothing', pair('sleeve', 'unclear'), pair('duodenal-switch', 'unknown'));
    expect((await beside({ ...open, finding: chance }))[0]).toBe(
      `${compared} The numbers we found do not clearly show this.`,
    );
  });

  it('says so of vitamins too: how often people lack them is a number', async () => {
    const vitamins = compare('nothing', pair('sleeve', 'unknown'), pair('duodenal-switch', 'unknown'));
    const asked = await beside({ code: 'more-vitamins', verdict: 'cannot-tell', finding: vitamins });
    expect(asked[0]).toBe(`${compared} We found no number for this in people like you.`);
  });

  it('speaks of numbers only where the pages print them, so that a reader can look them up', async () => {
    const figures = (outcome: string, result: 'yes' | 'no', study = 'study-a'): PairFinding => {
      const value = { kind: 'proportion', value: 0.1 } as const;
      const records = ['bypass', 'sleeve'].map((option) => `${option}.${outcome}.${study}`);
      const asked = { days: 30 };
      return {
        ...{ other: 'sleeve', result, outcome, asked, records },
        ...{ basis: 'two-studies', mine: value, theirs: value },
      };
    };
    const said = async (one: PairFinding, verdict: 'cannot-tell' | 'contradicted'): Promise<string> => {
      const means = verdict === 'contradicted' ? 'contradicts' : 'nothing';
      const finding = compare(means, one, pair('duodenal-switch', 'unknown'));
      const [first = ''] = await beside({ code: 'fewer-early-problems', verdict, finding });
      return first.replace(`${compared} `, '');
    };
    const only = 'The numbers we found show this only when compared with: a sleeve.';
    expect(await said(figures('major-complication', 'yes'), 'cannot-tell')).toBe(only);
    // No page of this case prints any complication, nor a figure of another study.
    const unclear = 'The numbers we found do not clearly show this.';
    expect(await said(figures('any-complication', 'yes'), 'cannot-tell')).toBe(unclear);
    expect(await said(figures('major-complication', 'yes', 'study-b'), 'cannot-tell')).toBe(unclear);
    const opposite = 'The numbers we found say something else when compared with: a sleeve.';
    expect(await said(figures('major-complication', 'no'), 'contradicted')).toBe(opposite);
    const otherwise = 'What we found says something else.';
    expect(await said(figures('any-complication', 'no'), 'contradicted')).toBe(otherwise);
  });

  it('says that numbers, warnings or the case say something else, and of which choices', async () => {
    const all = compare('contradicts', pair('sleeve', 'no'), pair('duodenal-switch', 'no'));
    expect((await beside({ ...wrong, finding: all }))[0]).toBe(
      `${compared} The numbers we found say something else.`,
    );
    const one = compare('contradicts', pair('sleeve', 'yes'), pair('duodenal-switch', 'no'));
    expect((await beside({ ...wrong, finding: one }))[0]).toBe(
      `${compared} The numbers we found say something else when compared with: a duodenal switch.`,
    );
    const undo = { find: 'undo', means: 'contradicts', possible: 'no' } as const;
    expect(await beside({ code: 'can-be-undone', verdict: 'contradicted', finding: undo })).toContain(
      'What we found says something else.',
    );
    const absent = { find: 'not-in-case', means: 'contradicts', needs: 'condition' } as const;
    expect(await beside({ code: 'diabetes-better', verdict: 'contradicted', finding: absent })).toContain(
      'We did not find this in what you told us.',
    );
    const unmet = ['most-weight-loss'] as const;
    const wishes = { find: 'wishes', means: 'contradicts', met: [], unmet, open: [], ownWords: 0 } as const;
    expect(await beside({ code: 'fits-what-matters', verdict: 'contradicted', finding: wishes })).toContain(
      'What we found says something else about this: “I want to lose as much weight as I can.”',
    );
  });

  it('says what it can be where something can only be undone in part', async () => {
    const finding = { find: 'undo', means: 'nothing', possible: 'partly' } as const;
    expect(await beside({ code: 'can-be-undone', verdict: 'cannot-tell', finding })).toContain(
      'What we found says: in part.',
    );
  });

  it('is left alone where it is borne out, and where no number could bear it out', async () => {
    const finding = compare('supports', pair('sleeve', 'yes'), pair('duodenal-switch', 'yes'));
    expect((await beside({ ...open, verdict: 'supported', finding }))[0]).toBe(compared);
    const wishes = {
      find: 'wishes',
      means: 'nothing',
      met: [],
      unmet: [],
      open: ['soon-back-to-work'],
      ownWords: 1,
    } as const;
    expect((await beside({ code: 'fits-what-matters', verdict: 'cannot-tell', finding: wishes }))[0]).toBe(
      '',
    );
  });

  it.each(['es', 'ar', 'zh-Hans', 'hi', 'ko', 'vi', 'ru', 'fr', 'ht', 'pt-BR', 'tl'])(
    'says so in every language, and on the pages about the chosen operation: %s',
    async (tag) => {
      const scene = await sceneOf({ ...open, finding: compare('nothing', pair('sleeve', 'unknown')) }, tag);
      const words = (await realLocale(tag)).translator.text('codes.reason_support.no_number');
      const chosen = scene.options.filter(({ code }) => code === 'bypass');
      const why = chosen.map((option) => viewWhy(scene, option).surgeon?.reasons[0]?.markup);
      const thinks = viewOpinion(scene).leaning?.reasons[0]?.markup;
      expect([thinks, ...why]).toEqual([expect.stringContaining(words), expect.stringContaining(words)]);
    },
  );
});
