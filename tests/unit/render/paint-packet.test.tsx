import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadFonts } from '../../../src/render/fonts.ts';
import { paintPacket } from '../../../src/render/paint-packet.ts';
import { setGalleys } from '../../../src/render/set-galley.ts';
import { Lines } from '../../../src/render/text.tsx';
import type { Semantics } from '../../../src/render/unit.ts';
import { popplerAvailable, structureByPoppler } from '../../helpers/second-readers.ts';

const info = {
  title: 'Title',
  author: 'Author',
  producer: 'plainleaf test',
  language: 'en',
  createdOn: '2026-11-25',
  identifier: new Uint8Array(16),
};
const geometry = { width: 612, height: 792, margin: 60, contentWidth: 492, bodyTop: 60, bodyHeight: 650 };

function text(value: string, sem?: Semantics) {
  return (
    <Lines
      runs={[{ text: value, weight: 400 }]}
      size={13}
      lineHeight={18}
      width={492}
      setting="filled"
      {...(sem === undefined ? {} : { sem })}
    />
  );
}

async function paint(...elements: readonly ReactElement[]): Promise<Uint8Array> {
  const [blocks = []] = await setGalleys([{ width: 492, elements }]);
  const body = blocks.map(({ node }, index) => ({ node, left: 60, top: 60 + 60 * index }));
  const document = { title: 'Title', language: 'en', geometry, pages: [{ body, repeated: [] }] };
  return paintPacket([document], { info, attachments: [] });
}

describe('paintPacket', () => {
  beforeAll(() => loadFonts());

  it.skipIf(!popplerAvailable())(
    'hangs what several units share under one element, in reading order',
    async () => {
      const row = (value: string) => (
        <View sem={{ tag: 'L', id: 'list', parent: 'topic', numbering: 'Decimal' }}>
          <View sem={{ tag: 'LI' }}>{text(value, { tag: 'LBody' })}</View>
        </View>
      );
      const head = <View sem={{ tag: 'Sect', id: 'topic' }}>{text('Question', { tag: 'H1' })}</View>;
      const structure = structureByPoppler(
        await paint(head, row('first'), row('second'), text('after', { tag: 'P', parent: 'topic' })),
      );
      const outline = structure.split('\n').map((line) => line.trim().replace(/ \(.*| ".*|:$/, ''));
      const expected = [
        'Document',
        'Part',
        'Sect',
        'H1',
        '"Question"',
        'L',
        '/ListNumbering /Decimal',
        'LI',
        'LBody',
        '"first"',
        'LI',
        'LBody',
        '"second"',
        'P',
        '"after"',
      ];
      expect(outline.filter((line) => line !== '')).toEqual(expected);
    },
  );

  it('refuses text that no structure holds', async () => {
    await expect(paint(text('loose'))).rejects.toThrow(/outside any structure/);
    await expect(paint(<View sem={{ tag: 'Table' }}>{text('loose')}</View>)).rejects.toThrow(
      /directly in Table/,
    );
  });

  it('refuses a figure without words, a parent that is not there, and turned content', async () => {
    await expect(paint(<View sem={{ tag: 'Figure' }} style={{ height: 9 }} />)).rejects.toThrow(
      /text alternative/,
    );
    await expect(paint(text('x', { tag: 'P', parent: 'nowhere' }))).rejects.toThrow(/nowhere/);
    const turned = <View style={{ transform: 'rotate(90deg)' }}>{text('x', { tag: 'P' })}</View>;
    await expect(paint(turned)).rejects.toThrow(/turned or clipped/);
  });

  it('lets text pass that is marked as decoration', async () => {
    expect((await paint(<View artifact>{text('Draft')}</View>)).length).toBeGreaterThan(0);
  });
});
