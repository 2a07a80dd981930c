import { beforeAll, describe, expect, it } from 'vitest';
import { checkGlyphs } from '../../../src/render/check-glyphs.ts';
import { loadFonts } from '../../../src/render/fonts.ts';
import { sampleTree } from '../../helpers/sample-units.tsx';

function paragraph(value: string, origin = 'templates/comparison/main.hbs:12') {
  return { type: 'paragraph', role: 'body', origin, inlines: [{ type: 'text', value }] } as const;
}

describe('checkGlyphs', () => {
  beforeAll(() => loadFonts());

  it('finds nothing in what the typeface has, or what is resolved before printing', () => {
    const text = 'Más de 100 ≥ 30 – “no” 12\u202f345\u00a0kg, one\u2011two, ½ µg ¿qué?\n';
    expect(checkGlyphs([sampleTree({ blocks: [paragraph(text)] })])).toEqual([]);
  });

  it('names the code point and the template line, once, and never the text around it', () => {
    const found = checkGlyphs([sampleTree({ blocks: [paragraph('Invented Person ☑ has 体 and ☑')] })]);
    expect(found.map(({ code, span }) => ({ code, span }))).toEqual([
      { code: 'RENDER_GLYPH_MISSING', span: { file: 'templates/comparison/main.hbs', line: 12, column: 1 } },
      { code: 'RENDER_GLYPH_MISSING', span: { file: 'templates/comparison/main.hbs', line: 12, column: 1 } },
    ]);
    expect(found.map(({ message }) => /U\+[0-9A-F]+/.exec(message)?.[0])).toEqual(['U+2611', 'U+4F53']);
    expect(JSON.stringify(found)).not.toMatch(/Invented|Person|☑|体/);
  });

  it('names every line of the clinic’s own files on which the sign stands, in place of the template', () => {
    const files = [
      { file: 'case.yaml', text: 'name: Ann\n# note\ntext: {en: a ☑ b}\nother: ☑' },
      { file: 'clinic.yaml', text: 'clinic: none' },
    ];
    const found = checkGlyphs([sampleTree({ blocks: [paragraph('a ☑ b'), paragraph('a 体 b')] })], files);
    expect(found.map(({ span }) => span)).toEqual([
      { file: 'case.yaml', line: 3, column: 14 },
      { file: 'case.yaml', line: 4, column: 8 },
      { file: 'templates/comparison/main.hbs', line: 12, column: 1 },
    ]);
  });

  it('looks into furniture and into every depth of the blocks, but not at what is only spoken', () => {
    const { furniture } = sampleTree();
    const header = { start: 'Ωmega 体', end: '' };
    const [found] = checkGlyphs([sampleTree({ furniture: { ...furniture, header } })]);
    expect(found?.message).toContain('comparison document');
    const row = {
      origin: 'a.hbs:3',
      name: '☐',
      words: [],
      picture: { type: 'unknown', of: 100, alt: '体' },
    } as const;
    const deep = checkGlyphs([
      sampleTree({ blocks: [{ type: 'strip', layout: 'people', origin: 'a.hbs:2', rows: [row] }] }),
    ]);
    expect(deep.map(({ span }) => span?.line)).toEqual([3]);
  });
});
