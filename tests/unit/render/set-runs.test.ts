import { beforeAll, describe, expect, it } from 'vitest';
import { loadFonts, loadTypefaces } from '../../../src/render/fonts.ts';
import { runsOf, setRuns } from '../../../src/render/set-runs.ts';
import { typefacesFor } from '../../../src/render/shaping/typefaces.ts';
import type { Setting } from '../../../src/render/break-lines.ts';
import type { Run } from '../../../src/render/run.ts';

function linesOf(text: string, measure: number, setting: Setting = 'filled') {
  return setRuns([{ text, weight: 400 }], { size: 13, measure, setting }).map((line) =>
    line.runs.map((run) => run.text).join(''),
  );
}

describe('setRuns', () => {
  beforeAll(() => loadFonts());

  it('never breaks at a no-break space, whatever its width', () => {
    expect(linesOf('weigh 232\u00a0lb after', 80)).toEqual(['weigh 232\u00a0lb', 'after']);
    expect(linesOf('weigh 12\u202f345\u00a0kg now', 80)).toEqual(['weigh', '12\u00a0345\u00a0kg now']);
  });

  it('keeps a number with what it counts where there is room, also where one of them is bold', () => {
    expect(linesOf('it may take 24 months', 115)).toEqual(['it may take', '24 months']);
    expect(linesOf('within 24 unforgettable months', 115)).toEqual(['within', '24 unforgettable', 'months']);
    const runs: readonly Run[] = [
      { text: 'it may take ', weight: 400 },
      { text: '24', weight: 700 },
      { text: ' months', weight: 400 },
    ];
    const set = setRuns(runs, { size: 13, measure: 115, setting: 'filled' });
    expect(set.map((line) => line.runs.map((run) => run.text).join(''))).toEqual([
      'it may take',
      '24 months',
    ]);
  });

  it('parts words at their ties before it divides one, and never within a number', () => {
    expect(linesOf('244.8\u00a0lb or more', 40)).toEqual(['244.8', 'lb or', 'more']);
    expect(linesOf('from 1,244.8\u00a0lb', 70)).toEqual(['from', '1,244.8\u00a0lb']);
    expect(linesOf('244.8', 20)).toEqual(['244.8']);
    const runs: readonly Run[] = [
      { text: 'Ms\u00a0', weight: 400 },
      { text: '244.8\u00a0lb', weight: 700 },
    ];
    const set = setRuns(runs, { size: 13, measure: 45, setting: 'filled' });
    expect(set.map(({ runs: parts }) => parts)).toEqual([
      [{ text: 'Ms', weight: 400 }],
      [{ text: '244.8', weight: 700 }],
      [{ text: 'lb', weight: 700 }],
    ]);
    expect(set.map(({ spaceAfter }) => spaceAfter)).toEqual([true, true, false]);
  });

  it('parts a Korean word from its bracket, which stands right after it, where no line holds both', async () => {
    await loadTypefaces(typefacesFor('파운드'));
    expect(linesOf('206\u00a0파운드(93킬로그램)', 90)).toEqual(['206\u00a0파운드', '(93킬로그램)']);
    expect(linesOf('내 선택(계속)', 300)).toEqual(['내 선택(계속)']);
    expect(
      setRuns([{ text: '파운드(93킬로그램)', weight: 700 }], { size: 13, measure: 80, setting: 'filled' }),
    ).toEqual([
      expect.objectContaining({ spaceAfter: false }),
      expect.objectContaining({ spaceAfter: false }),
    ]);
    // No word of a Latin script: "leak(s)".
    expect(linesOf('a leak(s)', 30)).not.toContain('(s)');
  });

  it('rather ends a line before what makes sense only with the number after it', () => {
    expect(linesOf('there were fewer than 1 now', 150)).toEqual(['there were fewer', 'than 1 now']);
    expect(linesOf('видели это в больнице', 95)).toEqual(['видели это', 'в больнице']);
  });

  it('rather ends a balanced line where a sentence ends', () => {
    const lines = linesOf('N’attendez pas. Ne conduisez pas vous-même.', 220, 'balanced');
    expect(lines).toEqual(['N’attendez pas.', 'Ne conduisez pas vous-même.']);
  });

  it('rather ends a balanced line of Chinese after a comma than within what the comma ends', async () => {
    await loadTypefaces(typefacesFor('切除胆囊'));
    expect(linesOf('切除胆囊，5年', 75, 'balanced')).toEqual(['切除胆囊，', '5年']);
    expect(linesOf('饮酒问题，5年', 75, 'balanced')).toEqual(['饮酒问题，', '5年']);
  });

  it('parts Chinese before an id or within a long name, never within the name of an outcome before its id', async () => {
    await loadTypefaces(typefacesFor('胃旁路手术体重'));
    expect(linesOf('胃旁路手术：体重 144m.asgard-2024', 150)).toEqual([
      '胃旁路手术：体重',
      '144m.asgard-2024',
    ]);
    expect(linesOf('胃旁路手术：体重 12m.trial', 100)).toEqual(['胃旁路手术：', '体重 12m.trial']);
    expect(linesOf('胃旁路手术，', 50).length).toBeGreaterThan(1);
  });

  it('parts a Chinese date after its year where no line holds it', async () => {
    await loadTypefaces(typefacesFor('年月日'));
    expect(linesOf('2027年4月15日', 60)).toEqual(['2027年', '4月15日']);
    expect(linesOf('2027年4月15日', 120)).toEqual(['2027年4月15日']);
  });

  it('rather begins a balanced line with words in brackets, but not with the number of a note', () => {
    expect(linesOf('52 de 1,000 (no muy seguro)', 120, 'balanced')).toEqual([
      '52 de 1,000',
      '(no muy seguro)',
    ]);
    expect(linesOf('nobody knows (4)', 80, 'balanced')).toEqual(['nobody', 'knows (4)']);
  });

  it('never breaks at a hyphen of a word that fits', () => {
    expect(linesOf('a long one\u2011anastomosis bypass', 110)).toEqual([
      'a long',
      'one-anastomosis',
      'bypass',
    ]);
  });

  it('breaks a web address that no line holds after its own marks', () => {
    const lines = linesOf('see https://example.org/sources/obesity-surgery/2026', 120);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join('')).toBe('see https://example.org/sources/obesity-surgery/2026');
    expect(lines.slice(0, -1).every((line) => /[-/.]$/.test(line))).toBe(true);
  });

  it('divides a word that no line holds, and no other', () => {
    expect(linesOf('an ultrasonography today', 80)).toEqual(['an ultraso\u00ad', 'nography', 'today']);
    expect(linesOf('an ultrasonography today', 110)).toEqual(['an', 'ultrasonography', 'today']);
    expect(linesOf('number 20261124004172 now', 60)).toEqual(['number', '20261124004172', 'now']);
  });

  it('takes line feeds and tabs as spaces, and runs of spaces as one', () => {
    expect(linesOf(' one\n\ttwo   three ', 400)).toEqual(['one two three']);
  });

  it('keeps weight and language of every run, and joins neighbours that share both', () => {
    const runs: readonly Run[] = [
      { text: 'about ', weight: 400 },
      { text: '23', weight: 700 },
      { text: ' of', weight: 400 },
      { text: ' 100', weight: 400 },
      { text: ' hola', weight: 400, language: 'es' },
    ];
    const [line] = setRuns(runs, { size: 13, measure: 400, setting: 'filled' });
    expect(line?.runs).toEqual([
      { text: 'about ', weight: 400 },
      { text: '23', weight: 700 },
      { text: ' of 100', weight: 400 },
      { text: ' hola', weight: 400, language: 'es' },
    ]);
  });

  it('says which lines are followed by a space', () => {
    const lines = setRuns([{ text: 'one two three four', weight: 400 }], {
      size: 13,
      measure: 60,
      setting: 'filled',
    });
    expect(lines.map((line) => line.spaceAfter)).toEqual([true, false]);
  });
});

describe('runsOf', () => {
  it('sets bold inlines in 700 and the others in the weight of the paragraph', () => {
    const figure = { type: 'figure', value: '23', cell: 'x', records: [], bold: true } as const;
    expect(
      runsOf([{ type: 'text', value: 'a' }, figure, { type: 'text', value: 'b', language: 'es' }], 600),
    ).toEqual([
      { text: 'a', weight: 600 },
      { text: '23', weight: 700 },
      { text: 'b', weight: 600, language: 'es' },
    ]);
  });
});
