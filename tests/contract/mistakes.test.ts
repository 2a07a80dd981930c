import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import type { Ended } from './packets.ts';
import { changedExample, plainleaf, removeFolder, temporaryFolder, today } from './packets.ts';

const right = changedExample('QB-1041', {
  'case: "QB-1041"': 'case: "CT-4001"',
  'name: Marisela Quenby-Fontaine': 'name: Thomasina Wrigglesworth',
});
const identifying = ['Thomasina', 'Wrigglesworth', '1983-04-17', '1983-02-30', 'children grow up'];

interface Mistake {
  readonly from: string;
  readonly to: string;
  /** The part of the changed line that the message must point at. */
  readonly at: string;
  /** What the hint must hold. */
  readonly hint: RegExp;
}

/** One way each to get a case file wrong, and where a person looks for it. */
const mistakes: Readonly<Record<string, Mistake>> = {
  'an unknown key': { from: 'smoking: never', to: 'smokes: never', at: 'smokes', hint: /smoking/ },
  'an unknown key at the top': { from: 'plan: {', to: 'plans: {', at: 'plans', hint: /plan/ },
  'a weight in a wrong unit': { from: '118.4 kg', to: '118.4 g', at: '118.4 g', hint: /kg/ },
  'a weight without a unit': { from: '118.4 kg', to: '118.4', at: '118.4', hint: /kg/ },
  'a height in a wrong unit': { from: '164 cm', to: '164 kg', at: '164 kg', hint: /cm/ },
  'a weight with a decimal comma': { from: '118.4 kg', to: '118,4 kg', at: '118,4', hint: /118\.4 kg/ },
  'a date that does not exist': { from: '1983-04-17', to: '1983-02-30', at: '1983', hint: /day|month/ },
  'a date written day first': { from: '2026-12-10', to: '10.12.2026', at: '10.12', hint: /year-month-day/ },
  'a reference without quotes': { from: '"CT-4001"', to: '04001', at: '04001', hint: /quotes|"/ },
  'an alias': {
    from: '[metformin, sulfonylurea, blood-pressure-medicine]',
    to: '*list',
    at: '*',
    hint: /out/,
  },
  'an anchor': { from: '[metformin,', to: '&list [metformin,', at: '&', hint: /[Rr]emove/ },
  'a tag': { from: 'height: 164', to: 'height: !cm 164', at: '!', hint: /[Rr]emove/ },
  'a key that stands twice': {
    from: 'sex: female',
    to: 'sex: female\n  sex: male',
    at: 'sex: male',
    hint: /one/,
  },
  'an unknown option': { from: '[sleeve, bypass', to: '[sleeve, bipass', at: 'bipass', hint: /bypass/ },
  'an unknown condition': {
    from: 'high-blood-pressure]',
    to: 'high-bloodpressure]',
    at: 'high-b',
    hint: /high-/,
  },
  'an unknown language': { from: '[en, es]', to: '[en, xx]', at: 'xx', hint: /en/ },
  'an unknown surgeon': { from: 'surgeon: tamsin', to: 'surgeon: tamsen', at: 'tamsen', hint: /tamsin/ },
  'a key that is missing': { from: '  height: 164 cm\n', to: '', at: 'patient', hint: /height/ },
  'a list that is one word': {
    from: '[metformin, sulfonylurea, blood-pressure-medicine]',
    to: 'metformin',
    at: 'metformin',
    hint: /\[/,
  },
  'an option that is advised but not listed': {
    from: 'option: bypass',
    to: 'option: band',
    at: 'band',
    hint: /option/,
  },
  'a quote that is never closed': {
    from: 'Thomasina Wriggles',
    to: '"Thomasina Wriggles',
    at: '"',
    hint: /[Cc]lose/,
  },
  'a format of another version': { from: 'plainleaf: 1', to: 'plainleaf: 9', at: '9', hint: /plainleaf: 1/ },
};

let folder: string;
let made: Ended;
let together: Ended;

beforeAll(async () => {
  folder = temporaryFolder();
  mkdirSync(join(folder, 'bad'));
  writeFileSync(join(folder, 'clinic.yaml'), readFileSync('examples/clinic.yaml'));
  const files = Object.entries(mistakes).map(([name, { from, to }]) => {
    const file = `bad/${name.replaceAll(' ', '-')}.yaml`;
    if (right.split(from).length !== 2) throw new Error(`not there once: ${from}`);
    writeFileSync(join(folder, file), right.replace(from, to));
    return file;
  });
  writeFileSync(join(folder, 'together.yaml'), allAtOnce());
  made = await plainleaf(['make', ...files, '--date', today, '--out', 'out'], { folder });
  together = await plainleaf(['make', 'together.yaml', '--date', today, '--out', 'out'], { folder });
});
afterAll(() => {
  removeFolder(folder);
});

const severalMistakes = [
  'an unknown key',
  'a weight with a decimal comma',
  'a height in a wrong unit',
  'a date that does not exist',
  'a date written day first',
  'a reference without quotes',
  'an unknown option',
  'an unknown condition',
  'an unknown language',
  'a list that is one word',
] as const;

function allAtOnce(): string {
  return severalMistakes.reduce((text, name) => {
    const { from = '', to = '' } = mistakes[name] ?? {};
    return text.replace(from, to);
  }, right);
}

/** Line and column, from 1, of the place that a person has to look at. */
function placeOf(text: string, { to, at }: Mistake): string {
  const start = to === '' ? text.indexOf(at) : text.indexOf(at, text.indexOf(to));
  const before = text.slice(0, start).split('\n');
  return `${before.length}:${(before.at(-1)?.length ?? 0) + 1}`;
}

/** The messages on one file, one a diagnostic. */
function messagesOn(said: string, place: string): readonly string[] {
  return said.split('\n\n').filter((message) => message.includes(`${place} `));
}

describe('a case with a mistake', () => {
  it('is refused with exit code 3, and nothing at all is written', () => {
    expect([made.code, together.code]).toEqual([3, 3]);
    expect(made.out).toContain(`0 packets made, ${Object.keys(mistakes).length} not made.`);
    expect(existsSync(join(folder, 'out'))).toBe(false);
  });

  it.each(Object.entries(mistakes))(
    'with %s is told file, line, column and what to write',
    (name, mistake) => {
      const file = `bad/${name.replaceAll(' ', '-')}.yaml`;
      const text = readFileSync(join(folder, file), 'utf8');
      const messages = messagesOn(made.err, `${file}:${placeOf(text, mistake)}`);
      expect(messages.length).toBeGreaterThan(0);
      const hints = messages.map((message) => /^ +hint: (.*)$/m.exec(message)?.[1] ?? '');
      expect(hints.join('\n')).toMatch(mistake.hint);
    },
  );

  it('is told of all its mistakes at once', () => {
    const text = allAtOnce();
    const missed = severalMistakes.filter((name) => {
      const mistake = mistakes[name];
      return (
        mistake === undefined ||
        messagesOn(together.err, `together.yaml:${placeOf(text, mistake)}`).length === 0
      );
    });
    expect(missed).toEqual([]);
  });

  it('is told so without the name, the birth date or the words of the person', () => {
    const said = [made.out, made.err, together.out, together.err].join('\n');
    expect(identifying.filter((part) => said.includes(part))).toEqual([]);
  });
});
