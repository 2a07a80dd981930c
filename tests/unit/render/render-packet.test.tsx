import { View } from '@react-pdf/renderer';
import { describe, expect, it } from 'vitest';
import type { PacketTree, PdfAttachment } from '../../../src/model/packet.ts';
import { renderPacket } from '../../../src/render/render-packet.ts';
import type { Appearance } from '../../../src/render/render-packet.ts';
import { Lines } from '../../../src/render/text.tsx';
import { sampleAppearance, samplePacket, sampleTree } from '../../helpers/sample-units.tsx';

const attachment: PdfAttachment = {
  name: 'provenance.json',
  mediaType: 'application/json',
  description: 'How this packet was made',
  content: new TextEncoder().encode('{"entity":{}}'),
};
const options = { createdOn: '2026-11-25', producer: 'plainleaf test', attachments: [attachment] };

async function render(packet: PacketTree, appearance: Appearance, changes: Partial<typeof options> = {}) {
  const result = await renderPacket(packet, { ...options, ...changes }, appearance);
  if (!result.ok) throw new Error(JSON.stringify(result.diagnostics));
  return result.value;
}

describe('renderPacket', () => {
  it('says which document each page belongs to', async () => {
    const documents = [sampleTree(), sampleTree({ title: 'Questions' })];
    const { pages } = await render(samplePacket(documents), sampleAppearance([5, 5]));
    expect(pages).toEqual([
      { document: 0, page: 1, pages: 2 },
      { document: 0, page: 2, pages: 2 },
      { document: 1, page: 1, pages: 2 },
      { document: 1, page: 2, pages: 2 },
    ]);
  });

  it('gives the same bytes for the same input, also when two are made at once', async () => {
    const make = () => render(samplePacket(), sampleAppearance([5, 5, 9]));
    const [first, second, third] = [await make(), ...(await Promise.all([make(), make()]))];
    expect(Buffer.compare(first.pdf, second.pdf)).toBe(0);
    expect(Buffer.compare(first.pdf, third.pdf)).toBe(0);
  });

  it('gives another identifier as soon as anything in it differs', async () => {
    const identifier = (pdf: Uint8Array) =>
      /\/ID \[<([0-9a-f]{32})> <\1>\]/.exec(Buffer.from(pdf).toString('latin1'))?.[1];
    const appearance = sampleAppearance([2]);
    const made = [
      await render(samplePacket(), appearance),
      await render({ ...samplePacket(), caseReference: 'X-2' }, appearance),
      await render(samplePacket(), appearance, { createdOn: '2026-11-26' }),
      await render(samplePacket(), appearance, {
        attachments: [{ ...attachment, content: new Uint8Array([1]) }],
      }),
    ];
    expect(new Set(made.map(({ pdf }) => identifier(pdf))).size).toBe(4);
  });

  it('refuses a character without glyph before anything is set', async () => {
    const block = {
      type: 'paragraph',
      role: 'body',
      origin: 'main.hbs:7',
      inlines: [{ type: 'text', value: '☑' }],
    } as const;
    const appearance = sampleAppearance([1]);
    const result = await renderPacket(samplePacket([sampleTree({ blocks: [block] })]), options, appearance);
    expect(result).toMatchObject({
      ok: false,
      diagnostics: [{ code: 'RENDER_GLYPH_MISSING', span: { file: 'main.hbs', line: 7 } }],
    });
  });

  it('names every block that does not fit, with its place in the template', async () => {
    const high = {
      key: 'high',
      origin: 'main.hbs:3',
      element: <View style={{ height: 651 }} />,
      gapBefore: 0,
      keepWithNext: false,
    };
    const lines = (
      <Lines
        runs={[{ text: 'unforgettable', weight: 400 }]}
        size={13}
        lineHeight={18}
        width={30}
        setting="filled"
        sem={{ tag: 'P' }}
      />
    );
    const wide = { key: 'wide', element: lines, gapBefore: 0, keepWithNext: false };
    const appearance = { ...sampleAppearance([1]), blockUnits: () => [high, wide] };
    const result = await renderPacket(samplePacket(), options, appearance);
    expect(result).toMatchObject({
      ok: false,
      diagnostics: [
        { code: 'RENDER_OVERFLOW', path: 'comparison.high', span: { file: 'main.hbs', line: 3 } },
        { code: 'RENDER_OVERFLOW', path: 'comparison.wide' },
      ],
    });
    expect(JSON.stringify(result)).not.toContain('unforgettable');
  });

  it('names the line of the clinic where what does not fit was written', async () => {
    const text = (words: string, width: number) => (
      <Lines
        runs={[{ text: words, weight: 400 }]}
        size={13}
        lineHeight={18}
        width={width}
        setting="filled"
        sem={{ tag: 'P' }}
      />
    );
    const long = 'Everything that this clinic has ever wanted to say of broth and of tea without sugar';
    const high = { key: 'high', gapBefore: 0, keepWithNext: false };
    const wide = { key: 'wide', element: text('Call 20261124004172', 60), gapBefore: 0, keepWithNext: false };
    const element = <View style={{ minHeight: 651 }}>{text(long, 300)}</View>;
    const appearance = { ...sampleAppearance([1]), blockUnits: () => [{ ...high, element }, wide] };
    const written = [
      { file: 'case.yaml', text: 'plainleaf: 1\ncase: "20261124004172"\n' },
      { file: 'clinic.yaml', text: `plainleaf: 1\n    what: ${long.replace(' and', '\n      and')}\n` },
    ];
    const result = await renderPacket(samplePacket(), { ...options, written }, appearance);
    expect(result).toMatchObject({
      ok: false,
      diagnostics: [
        { path: 'comparison.high', span: { file: 'clinic.yaml', line: 2, column: 11 } },
        { path: 'comparison.wide', span: { file: 'case.yaml', line: 2, column: 8 } },
      ],
    });
    expect(JSON.stringify(result)).not.toMatch(/broth|20261124/);
  });

  it('says when the font folder is incomplete', async () => {
    const result = await renderPacket(
      samplePacket(),
      { ...options, fontFolder: '/nowhere' },
      sampleAppearance([1]),
    );
    expect(result).toMatchObject({ ok: false, diagnostics: [{ code: 'FILE_NOT_FOUND' }] });
  });
});
