import { Text, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { SetNode } from '../layout-node.ts';
import type { SetLine } from '../set-runs.ts';
import { alignStart, firstBaseline, palette } from '../theme.ts';
import type { Direction } from '../theme.ts';
import { endInSpace, shapeLine } from './shape-line.ts';
import type { PlacedPart } from './shape-line.ts';

interface ShapedLineProps {
  readonly line: SetLine;
  /** Points. */
  readonly size: number;
  readonly lineHeight: number;
  readonly width: number;
  readonly align?: 'left' | 'center' | 'right';
  readonly direction?: Direction;
  /** Level of each character of the line (see order-line.ts). */
  readonly levels: readonly number[];
  readonly color?: string;
}

/**
 * A line in scripts that plainleaf shapes itself, or from right to left. Its parts hang in the order in which they are
 * read, each where it stands, with glyphs for the painter and nothing left for the typesetter to decide.
 */
export function ShapedLine(props: ShapedLineProps): ReactElement {
  const { line, width, lineHeight, size, direction = 'ltr' } = props;
  const start = alignStart(direction);
  const align = props.align ?? 'left';
  const set = shapeLine(line.runs, size, props.levels);
  const parts = line.spaceAfter && align === start ? withSpace(set) : set;
  const rest = width - parts.reduce((sum, part) => sum + part.width, 0);
  const left = { left: 0, center: rest / 2, right: rest }[align];
  return (
    <View style={{ width, height: lineHeight }}>
      {parts.map((part, index) => (
        <Part key={index} part={{ ...part, left: left + part.left }} of={props} />
      ))}
    </View>
  );
}

/** The space at the end is for those who hear or copy the text: it takes no room, on whichever side it would stand. */
function withSpace(parts: readonly PlacedPart[]): readonly PlacedPart[] {
  const last = parts.at(-1);
  return last === undefined ? parts : [...parts.slice(0, -1), endInSpace(last)];
}

function Part({ part, of }: { readonly part: PlacedPart; readonly of: ShapedLineProps }): ReactElement {
  const { left, width, text, language } = part;
  const place = { position: 'absolute', left, top: 0, width, height: of.lineHeight } as const;
  const sem = language === undefined ? {} : { sem: { tag: 'Span', language } as const };
  return (
    <View style={place} {...sem}>
      <Text style={{ width, height: of.lineHeight, fontSize: of.size }} setLines={[lineOf(part, of)]}>
        {text}
      </Text>
    </View>
  );
}

type Line = NonNullable<SetNode['lines']>[number];

/** A line as the typesetter would have left it for the painter. */
function lineOf({ face, glyphs, positions, width }: PlacedPart, of: ShapedLineProps): Line {
  const { size, lineHeight, color = palette.ink } = of;
  const attributes = { font: [face], fontSize: size, color };
  const run = { attributes, glyphs, positions, xAdvance: width, height: lineHeight, descent: 0 };
  return {
    box: { x: 0, y: 0, width, height: lineHeight },
    ascent: firstBaseline({ size, lineHeight, weight: 400 }),
    runs: [run],
  } as unknown as Line;
}
