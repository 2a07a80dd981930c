import { Svg, Path, View } from '@react-pdf/renderer';
import type { DocumentTree } from '../../src/model/document.ts';
import type { PacketTree } from '../../src/model/packet.ts';
import type { Appearance } from '../../src/render/render-packet.ts';
import { Lines } from '../../src/render/text.tsx';
import type { Semantics, Unit } from '../../src/render/unit.ts';

// A small document made by hand, so that the engine is tested without the blocks of the product. All of it is invented.

export const heights = { row: 90, head: 24 } as const;

function words(text: string, sem: Semantics | undefined, weight: 400 | 700 = 400) {
  const runs = [{ text, weight }];
  return (
    <Lines
      runs={runs}
      size={13}
      lineHeight={18}
      width={492}
      measure={440}
      setting="filled"
      {...(sem === undefined ? { artifact: true } : { sem })}
    />
  );
}

function figure(alt: string) {
  return (
    <Svg width={192} height={48} viewBox="0 0 192 48" sem={{ tag: 'Figure', alt }}>
      <Path d="M4 4h20v40h-20z" fill="#000000" />
    </Svg>
  );
}

function heading(topic: number): Unit {
  const section = { tag: 'Sect', id: `${topic}` } as const;
  const element = (
    <View sem={section}>
      <View style={{ height: 2.5, backgroundColor: '#3B4A22' }} />
      {words(`Question ${topic} & what it asks?`, { tag: 'H2' }, 700)}
    </View>
  );
  return {
    key: `${topic}.head`,
    element,
    gapBefore: 30,
    gapShrink: 8,
    keepWithNext: true,
    group: `${topic}`,
  };
}

function row(topic: number, index: number): Unit {
  const cell = { tag: 'TD' } as const;
  const element = (
    <View sem={{ tag: 'Table', id: `${topic}.table`, parent: `${topic}` }}>
      <View style={{ flexDirection: 'row', height: heights.row, paddingVertical: 10 }} sem={{ tag: 'TR' }}>
        <View style={{ width: 116 }}>
          <Lines
            runs={[{ text: `Choice ${index}, under study`, weight: 700 }]}
            size={13}
            lineHeight={17}
            width={106}
            setting="balanced"
            sem={{ tag: 'TH', scope: 'Row' }}
          />
        </View>
        <View style={{ width: 206, backgroundColor: '#F4F5EE' }} sem={cell}>
          {figure(`${index} out of 100 people; ${100 - index} do not.`)}
        </View>
        <View sem={cell} style={{ width: 170 }}>
          <Lines
            runs={[
              { text: `${index} out of 100 people in topic ${topic}, `, weight: 400 },
              { text: 'más o menos', weight: 400, language: 'es' },
            ]}
            size={13}
            lineHeight={17}
            width={170}
            setting="filled"
            sem={{ tag: 'P' }}
          />
        </View>
      </View>
    </View>
  );
  const continuation = words(`Question ${topic}, continued`, undefined, 700);
  return {
    key: `${topic}.row.${index}`,
    element,
    gapBefore: 0,
    keepWithNext: index === 1,
    continuation,
    group: `${topic}`,
  };
}

/** A title, then topics of the given numbers of rows. */
export function sampleUnits(topics: readonly number[]): readonly Unit[] {
  const title: Unit = {
    key: 'title',
    element: words('My choices', { tag: 'H1' }, 700),
    gapBefore: 0,
    keepWithNext: true,
  };
  return [
    title,
    ...topics.flatMap((rows, topic) => [
      heading(topic + 1),
      ...Array.from({ length: rows }, (_, index) => row(topic + 1, index + 1)),
    ]),
  ];
}

export function sampleTree(changes: Partial<DocumentTree> = {}): DocumentTree {
  return {
    kind: 'comparison',
    audience: 'patient',
    language: 'en',
    direction: 'ltr',
    paper: 'letter',
    title: 'My choices',
    colon: ': ',
    furniture: {
      header: { start: 'Invented Person', end: 'My choices' },
      headerOnFirstPage: false,
      footer: {
        call: 'Call 555-0100',
        deferral: 'This does not replace your surgeon.',
        id: 'X-1',
        page: 'Page {page} of {pages}',
      },
      phones: ['555-0100'],
      continued: 'continued',
    },
    blocks: [],
    ...changes,
  };
}

export function samplePacket(documents: readonly DocumentTree[] = [sampleTree()]): PacketTree {
  return {
    caseReference: 'X-1',
    language: 'en',
    title: 'Choices <for> "you" & yours',
    author: 'Río & Sons Clinic',
    documents,
  };
}

export function sampleAppearance(topics: readonly number[]): Appearance {
  return {
    blockUnits: () => sampleUnits(topics),
    pageFurniture: (tree, page, pages) => (
      <View style={{ position: 'absolute', top: 0, left: 0, width: 612, height: '100%' }}>
        <View style={{ position: 'absolute', left: 60, bottom: 28 }}>
          <Lines
            runs={[{ text: `Page ${page} of ${pages}, ${tree.furniture.footer.call}`, weight: 600 }]}
            size={12}
            lineHeight={15}
            width={492}
            setting="filled"
          />
        </View>
      </View>
    ),
  };
}
