import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';

import { openDesk } from '../helpers/run-command.ts';
import type { Desk, Ended } from '../helpers/run-command.ts';

// What goes wrong with the words of a language, planted one at a time, and the command with which a coordinator meets it:
// a review that no longer holds, a text that the clinic has not written, a placeholder or a plural form that was lost, a
// letter that no typeface has. Each is said with its place and what to do, and nothing of the person is.

const date = ['--date', '2026-11-25'] as const;
const reader = ['--name', 'M. Example', '--role', 'translator', '--qualification', 'certified'];
const example = readFileSync('examples/cases/QB-0755.yaml', 'utf8');
const spanish = readFileSync('locales/es/common.yaml', 'utf8');
/** As if the clinic had approved all that this case needs. */
const clinic = readFileSync('examples/clinic.yaml', 'utf8').concat(
  '\ncautions: {stomach-operation-others: confirmed}\n',
);
const identifying = [
  ...(/name: (.*)/.exec(example)?.[1] ?? '').split(/[ -]/),
  /born: (.*)/.exec(example)?.[1] ?? '',
];

interface PacketRecord {
  readonly provenance: Readonly<
    Record<'entity' | 'agent', Readonly<Record<string, Readonly<Record<string, unknown>> | undefined>>>
  >;
}

const weekCase = (reference: string): string =>
  example
    .replace('example: true\n', '')
    .replace(/^documents:.*$/m, 'documents: [questions]')
    .replace(/^case:.*$/m, `case: "${reference}"`);

const lineOf = (text: string, part: string): number =>
  text.split('\n').findIndex((line) => line.includes(part)) + 1;

/** Signs the words of some languages, and puts the entries that are printed into the profile. */
async function sign(desk: Desk, profile: string, tags: readonly string[]): Promise<void> {
  const entries: string[] = [];
  for (const tag of tags) {
    const { out } = await desk.run(
      ...['languages', 'sign', tag, '--clinic', 'plant/clinic.yaml', ...reader, ...date],
    );
    entries.push(out.slice(out.indexOf('reviewed:') + 'reviewed:\n'.length).trimEnd());
  }
  await desk.put('plant/clinic.yaml', `${profile}\nreviewed:\n${entries.join('\n')}\n`);
}

function identifyingIn({ out, err }: Ended): readonly string[] {
  return identifying.filter((part) => (out + err).includes(part));
}

describe('a batch with a stale review, a text that the clinic has not written, and a case with a mistake', () => {
  const lacking = clinic.replace(
    'band-removal: {en: 1 night or home the same day, es: ',
    'band-removal: {en: ',
  );
  let said: Ended;
  let json: Ended;
  const records = new Map<string, PacketRecord>();

  beforeAll(async () => {
    const desk = openDesk({
      'plant/clinic.yaml': lacking,
      'plant/week/a.yaml': weekCase('WK-1'),
      'plant/week/b.yaml': weekCase('WK-2').replace('73.5 kg', '73,5 kg'),
    });
    await sign(desk, lacking, ['en', 'es']);
    await desk.put('locales/es/common.yaml', spanish.replace(/^quote: .*$/m, "quote: '«{{words}}»'"));
    said = await desk.run('batch', 'plant/week', '--out', 'plant/out', ...date);
    json = await desk.run('batch', 'plant/week', '--out', 'plant/out', ...date, '--json');
    for (const tag of ['en', 'es'])
      records.set(tag, JSON.parse(desk.written(`plant/out/WK-1/${tag}/packet.json`)) as PacketRecord);
  });

  it('ends with what is final, what is a draft, and what was not made', () => {
    expect([said.code, json.code]).toEqual([8, 8]);
    expect(said.out).toMatch(/^2 packets made, 1 not made\.$/m);
    expect(said.out).toMatch(/^en +English +1 +0 +reviewed$/m);
    expect(said.out).toMatch(/^es +Spanish +0 +1 +changed since review$/m);
    expect(said.out).toMatch(/^ +all languages +plant\/week\/b\.yaml:11 +CASE_DECIMAL_COMMA$/m);
  });

  it('says once whose review no longer holds, and with which command to go on', () => {
    expect(said.out).toContain(
      [
        '  es: the words changed after M. Example (translator) read them on 2026-11-25',
        '    see which with plainleaf languages list --clinic plant/clinic.yaml --language es, and have them read',
        '    then plainleaf languages sign es --clinic plant/clinic.yaml',
      ].join('\n'),
    );
  });

  it('names the text that the clinic has not written, with its line and its language', () => {
    const line = String(lineOf(lacking, 'band-removal: {en: '));
    expect(said.out).toContain(`  plant/clinic.yaml:${line}  protocol.stay.band-removal  not in es`);
  });

  it('says the same as data', () => {
    const { summary, packets } = JSON.parse(json.out) as { summary: unknown; packets: unknown };
    expect(packets).toMatchObject([
      { case: 'WK-1', language: 'en', state: 'final', open: [] },
      { case: 'WK-1', language: 'es', state: 'draft', open: ['words_changed', 'free_text'] },
      { file: 'plant/week/b.yaml', made: false },
    ]);
    expect(summary).toMatchObject({
      languages: [
        { language: 'en', final: 1, draft: 0, example: 0, notMade: 0 },
        { language: 'es', final: 0, draft: 1, example: 0, notMade: 0 },
      ],
      open: [
        { code: 'words_changed', cases: ['WK-1'], languages: ['es'], reviews: [{ on: '2026-11-25' }] },
        { code: 'free_text', texts: [{ field: 'protocol.stay.band-removal', languages: ['es'] }] },
      ],
      notMade: [{ file: 'plant/week/b.yaml', line: 11, codes: ['CASE_DECIMAL_COMMA'] }],
    });
  });

  it.each([
    ['en', 'reviewed', 'holds'],
    ['es', 'changed', 'changed'],
  ])(
    'writes into the record of the %s packet who read its words, and that they are %s',
    (tag, words, entry) => {
      const { entity, agent } = records.get(tag)?.provenance ?? { entity: {}, agent: {} };
      expect(agent['plainleaf:reviewer-1']).toMatchObject({
        'plainleaf:name': 'M. Example',
        'plainleaf:role': 'translator',
        'plainleaf:qualification': 'certified',
      });
      expect(entity['plainleaf:words']).toMatchObject({ 'plainleaf:reviewState': words });
      expect(entity['plainleaf:words-review-1']).toMatchObject({
        'plainleaf:language': tag,
        'plainleaf:scope': 'all',
        'plainleaf:state': entry,
      });
      const digests = ['plainleaf:words', 'plainleaf:words-review-1'].map(
        (id) => entity[id]?.['plainleaf:reviewedSha256'],
      );
      expect(digests[0] === digests[1]).toBe(entry === 'holds');
    },
  );

  it('says nothing of the person', () => {
    expect(lacking).not.toBe(clinic);
    expect(identifying.length).toBeGreaterThan(2);
    expect([said, json].flatMap(identifyingIn)).toEqual([]);
  });
});

describe('plainleaf check with a fault planted in the words', () => {
  const russian = readFileSync('locales/ru/common.yaml', 'utf8');

  it.each([
    {
      what: 'a placeholder that was lost',
      file: 'locales/es/common.yaml',
      text: spanish.replace(/^quote: .*$/m, "quote: '«»'"),
      at: lineOf(spanish, 'quote: '),
      code: 'LOCALE_VARIABLE_MISSING',
      message: 'quote lacks {{words}}',
    },
    {
      what: 'a plural form that is absent',
      file: 'locales/ru/common.yaml',
      text: russian.replace(/^ {2}practice_few: .*\n/m, ''),
      at: lineOf(russian, '  practice_one: '),
      code: 'LOCALE_PLURAL_MISSING',
      message: 'open.practice lacks _few',
    },
  ])('finds $what, with its line and what to do', async ({ file, text, at, code, message }) => {
    const desk = openDesk({ 'plant/clinic.yaml': clinic, [file]: text });
    const ended = await desk.run('check', 'plant/clinic.yaml', ...date);
    expect(ended.code).toBe(5);
    expect(ended.err).toMatch(new RegExp(`${file}:${String(at)}:\\d+ +error ${code}`));
    expect(ended.err).toContain(message);
    expect(ended.err).toMatch(/hint: [A-Z]/);
  });
});

describe('plainleaf make with a letter that no typeface has', () => {
  it.each([
    { what: 'the name of the person', part: /^ {2}name: .*$/m },
    { what: 'the words of the person', part: /I am afraid.*gone/ },
  ])('says in which line of the case it stands: $what', async ({ part }) => {
    const text = weekCase('WK-3').replace(part, '$& 🦊');
    const asked = text.replace(/^documents:.*$/m, 'documents: [comparison]');
    const desk = openDesk({ 'plant/clinic.yaml': clinic, 'plant/week/c.yaml': asked });
    const ended = await desk.run(
      'make',
      'plant/week/c.yaml',
      '--language',
      'en',
      '--out',
      'plant/out',
      ...date,
    );
    expect(ended.code).toBe(6);
    const line = String(lineOf(asked, '🦊'));
    expect(ended.err).toContain(`plant/week/c.yaml:${line}:`);
    expect(ended.err).toContain('RENDER_GLYPH_MISSING');
    expect(ended.err).toContain('no character U+1F98A');
    expect(ended.err).toContain('hint: Spell it another way');
    expect(desk.written('plant/out/WK-3/en/packet.pdf')).toBe('');
    expect(identifyingIn(ended)).toEqual([]);
    expect(ended.err).not.toContain('afraid');
  });
});

describe('a review that was signed', () => {
  it('is written into the profile as it was printed', async () => {
    const desk = openDesk({ 'plant/clinic.yaml': clinic });
    await sign(desk, clinic, ['es']);
    expect(parse(desk.written('plant/clinic.yaml'))).toMatchObject({ reviewed: [{ language: 'es' }] });
  });
});
