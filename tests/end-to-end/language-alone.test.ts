import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';

import { main } from '../../src/cli/main.ts';
import { createTerminal } from '../../src/cli/terminal.ts';
import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import { openCase, prepare } from '../../src/index.ts';
import type { DocumentTree } from '../../src/model/document.ts';
import { expectedText, furnitureTexts, repeatedTexts } from '../../src/model/tree-text.ts';
import { demand } from '../helpers/example-packets.ts';
import { createOverlay } from '../helpers/overlay-workspace.ts';
import { pseudoLocale, pseudoTags } from '../helpers/pseudo-locale.ts';
import type { PseudoKind } from '../helpers/pseudo-locale.ts';
import { validateBytes, validatorAvailable } from '../helpers/validate-pdf.ts';

// Two languages that exist nowhere are added as folders alone; the program is as it is.

const casePath = 'examples/cases/QB-1141.yaml';
const source = readFileSync(casePath, 'utf8');
const clinicText = readFileSync('examples/clinic.yaml', 'utf8');

async function makeIn(kind: PseudoKind): Promise<{ code: number; pdf: Uint8Array; said: string }> {
  const tag = pseudoTags[kind];
  const { workspace, memory } = createOverlay({
    ...pseudoLocale(kind),
    [casePath]: source.replace(/^languages: .*$/m, `languages: [${tag}]`),
  });
  let said = '';
  const stream = { write: (text: string | Uint8Array) => (said += String(text)) !== '' };
  const terminal = createTerminal({ out: stream, err: stream });
  const args = ['make', casePath, '--out', 'out', '--date', '2026-11-25'];
  const code = await main(args, { workspace, terminal, root: '.' });
  const pdf = memory.files.get(`out/QB-1141/${tag}/packet.pdf`);
  return { code, pdf: pdf instanceof Uint8Array ? pdf : new Uint8Array(), said };
}

/** The documents of the packet before they are set. */
async function composeIn(kind: PseudoKind): Promise<readonly DocumentTree[]> {
  const { workspace } = createOverlay(pseudoLocale(kind));
  const prepared = demand(await prepare(workspace, '.'));
  const text = source.replace(/^languages: .*$/m, `languages: [${pseudoTags[kind]}]`);
  const clinic = { file: 'examples/clinic.yaml', text: clinicText };
  const open = demand(
    openCase(prepared, { files: { case: { file: casePath, text }, clinic }, date: '2026-11-25' }),
  );
  return demand(composePacket(prepared, open, identifyPacket(prepared, open, pseudoTags[kind]))).documents;
}

/** Words of plain Latin letters; those of the invented languages have marks, or other letters. */
const wordsIn = (text: string): readonly string[] =>
  (text.match(/\p{L}+/gu) ?? []).filter((word) => /^[A-Za-z]{3,}$/.test(word));

/** Dates are written as the locale's format says, which is that of English here. */
const dateWords = Array.from({ length: 366 }, (_, day) => {
  const date = new Date(Date.UTC(2027, 0, day + 1));
  const styles = ['long', 'short'] as const;
  return styles.map((style) =>
    date.toLocaleDateString('en-US', { month: style, weekday: style, timeZone: 'UTC' }),
  );
}).flat();
/** What a packet may say in English although its language is another: what the clinic and the case wrote, dates, titles. */
const titles = readFileSync('src/evidence/data/aftercare-sources.yaml', 'utf8');
const written = new Set([source, clinicText, titles, ...dateWords].flatMap(wordsIn));

describe.each(['accented', 'mirrored'] as const)('an invented language, %s, added as a folder', (kind) => {
  let made: Awaited<ReturnType<typeof makeIn>>;

  beforeAll(async () => {
    made = await makeIn(kind);
  }, 200_000);

  it('gets its packet, which comes back whole', () => {
    expect(made.said).toContain('1 packet made.');
    expect(made.code).toBe(0);
  });

  it('has no word of English that stands in the program', async () => {
    // The notice speaks to people in their own languages, whatever that of the packet.
    const trees = (await composeIn(kind)).filter((tree) => tree.kind !== 'language-notice');
    const texts = trees.flatMap((tree) => [
      ...[...expectedText(tree), ...repeatedTexts(tree)].map(({ text }) => text),
      ...furnitureTexts(tree, 1, 2),
    ]);
    const english = texts
      .map((text) => text.replace(/QB-1141\S*/g, ''))
      .flatMap(wordsIn)
      .filter((word) => !written.has(word));
    expect(texts.join('').length).toBeGreaterThan(3_000);
    expect([...new Set(english)]).toEqual([]);
  }, 100_000);

  it.skipIf(!validatorAvailable()).each(['ua1', '3a'] as const)(
    'passes the validator by %s',
    async (flavour) => {
      const [verdict] = await validateBytes([{ name: kind, bytes: made.pdf }], flavour);
      expect(verdict).toMatchObject({ passed: true });
    },
    200_000,
  );
});
