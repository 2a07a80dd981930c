import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { Words } from './blocks/primitives.tsx';
import { textWidth } from './measure-text.ts';
import { short } from '../pictures/draw-path.ts';
import { palette } from './theme.ts';
import type { Theme } from './theme.ts';

/** The edges of a draft: slanting lines in runs, a word in the gaps, beside the text and never across it. */
const edge = { width: 14, top: 25, run: 150, gap: 100, pitch: 9, stroke: 1.1 } as const;

/** Runs of slanting lines down one edge of a page, and the middles of the gaps between them. */
export function edgeRuns(pageHeight: number): { readonly lines: string; readonly gaps: readonly number[] } {
  const lines: string[] = [];
  const gaps: number[] = [];
  for (let top = edge.top; top < pageHeight - edge.top; top += edge.run + edge.gap) {
    const end = Math.min(top + edge.run, pageHeight - edge.top);
    for (let y = top; y + edge.width <= end; y += edge.pitch)
      lines.push(`M0 ${short(y + edge.width)}L${edge.width} ${short(y)}`);
    const middle = top + edge.run + edge.gap / 2;
    if (middle + edge.gap / 2 <= pageHeight) gaps.push(middle);
  }
  return { lines: lines.join(''), gaps };
}

interface EdgesProps {
  readonly theme: Theme;
  /** Of the left edge and of the right. */
  readonly words: readonly [string, string];
  readonly page: { readonly width: number; readonly height: number };
}

/** Both edges of a page of a draft. */
export function DraftEdges({ theme, words, page }: EdgesProps): ReactElement {
  const { edgeInset } = theme.page;
  const places = [edgeInset, page.width - edgeInset - edge.width] as const;
  return (
    <>
      {places.map((left, side) => (
        <Edge key={left} theme={theme} word={words[side] ?? words[0]} height={page.height} left={left} />
      ))}
    </>
  );
}

interface EdgeProps {
  readonly theme: Theme;
  readonly word: string;
  readonly height: number;
  readonly left: number;
}

function Edge({ theme, word, height, left }: EdgeProps): ReactElement {
  const role = theme.type.edge;
  const { lines, gaps } = edgeRuns(height);
  const width = Math.ceil(textWidth(word, role)) + 1;
  return (
    <View style={{ position: 'absolute', top: 0, left, width: edge.width, height }}>
      <Svg style={{ position: 'absolute', top: 0, left: 0 }} width={edge.width} height={height}>
        <Path d={lines} stroke={palette.ink} strokeWidth={edge.stroke} />
      </Svg>
      {gaps.map((middle) => (
        <View
          key={middle}
          style={{
            position: 'absolute',
            top: middle - role.lineHeight / 2,
            left: (edge.width - width) / 2,
            width,
            height: role.lineHeight,
            transform: 'rotate(-90deg)',
          }}
        >
          <Words theme={theme} text={word} role={role} width={width} />
        </View>
      ))}
    </View>
  );
}
