import { describe, expect, it } from 'vitest';

import { loadFonts } from '../../../src/render/fonts.ts';
import { renderPdf } from '../../../src/render/index.ts';
import { shapeLine } from '../../../src/render/shaping/shape-line.ts';
import { readBack } from '../../../src/verify/read-back.ts';
import { paragraph, smallTree, words } from '../../helpers/small-tree.ts';

async function printAndRead(text: string): Promise<string> {
  const tree = smallTree([paragraph('a:1', [words(text)])]);
  const packet = {
    caseReference: 'PE-1',
    language: 'en',
    title: 'My choices',
    author: 'Clinic',
    documents: [tree],
  };
  const rendered = await renderPdf(packet, {
    createdOn: '2026-11-25',
    producer: 'plainleaf',
    attachments: [],
  });
  if (!rendered.ok) throw new Error(rendered.diagnostics.map(({ message }) => message).join('\n'));
  const file = await readBack(rendered.value.pdf);
  return file?.pages.join('\n') ?? '';
}

describe('letters of a packet', () => {
  // First in this file: the first text of a process that uses a ligature decides.
  it('come back from a ligature although a line of Chinese, which is shaped otherwise, used it before', async () => {
    await loadFonts();
    const parts = shapeLine([{ text: 'flozin', weight: 400 }], 13, 'ltr');
    expect(parts.map(({ glyphs }) => glyphs.length)).toEqual([5]);
    expect(await printAndRead('reflux')).toContain('reflux');
  });

  // A composite letter holds the glyphs of others: ± those of + and −, í that of ı.
  it('come back right although a packet before used them as parts of other letters only', async () => {
    expect(await printAndRead('BMI ±2, í and Ç')).toContain('BMI ±2, í and Ç');
    expect(await printAndRead('database+name, 5 − 3, ı ¸ ´')).toContain('database+name, 5 − 3, ı ¸ ´');
  });

  it('come back as letters when they are drawn as one ligature', async () => {
    expect(await printAndRead('efficient first fluids')).toContain('efficient first fluids');
  });
});
