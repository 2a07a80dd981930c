import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Inline, Paragraph } from '../../model/document.ts';
import { ownDirection } from '../../model/left-to-right.ts';
import type { Setting } from '../break-lines.ts';
import type { Mark, Stroke } from '../../pictures/marks.ts';
import type { Run } from '../run.ts';
import { runsOf } from '../set-runs.ts';
import { Lines, measureLines } from '../text.tsx';
import { alignEnd, alignStart, fromStart, palette } from '../theme.ts';
import type { Direction, Theme, TypeRole } from '../theme.ts';
import type { Semantics } from '../unit.ts';

/** Text on its own lines: what, in which type, how wide, and what it is to a screen reader. */
export interface TextProps {
  readonly theme: Theme;
  readonly text: string | readonly Inline[];
  readonly role: TypeRole;
  readonly width: number;
  readonly measure?: number;
  /** Prose is filled; headings, names and cells are balanced. */
  readonly setting?: Setting;
  readonly align?: 'start' | 'center' | 'end';
  readonly color?: string;
  readonly sem?: Semantics;
}

function alignment(direction: Direction, align: TextProps['align']): 'left' | 'center' | 'right' {
  if (align === 'center') return 'center';
  return align === 'end' ? alignEnd(direction) : alignStart(direction);
}

export function runsFor(text: string | readonly Inline[], role: TypeRole): readonly Run[] {
  return typeof text === 'string' ? [{ text, weight: role.weight }] : runsOf(text, role.weight);
}

export function Words(props: TextProps): ReactElement {
  const { theme, role, measure, color, sem } = props;
  return (
    <Lines
      runs={runsFor(props.text, role)}
      size={role.size}
      lineHeight={role.lineHeight}
      width={props.width}
      setting={props.setting ?? 'filled'}
      align={alignment(theme.direction, props.align)}
      direction={theme.direction}
      {...(measure === undefined ? {} : { measure: Math.min(measure, props.width) })}
      {...(color === undefined ? {} : { color })}
      {...(sem === undefined ? {} : { sem })}
    />
  );
}

/** Type of a paragraph as it stands in the running text. */
export function proseRole(theme: Theme, role: Paragraph['role']): TypeRole {
  return theme.type[role];
}

/** Type of a paragraph in the words column of a strip. */
export function stripRole(theme: Theme, role: Paragraph['role']): TypeRole {
  if (role === 'body' || role === 'lead') return theme.type.cell;
  return role === 'strong' ? theme.type.name : theme.type[role];
}

/** Type of a paragraph in a table cell. */
export function cellRole(theme: Theme, role: Paragraph['role']): TypeRole {
  return role === 'number' ? theme.type.tableNumber : stripRole(theme, role);
}

/**
 * Measure of a paragraph in a box: one that fits a single line of the box keeps it; a longer one has the measure of
 * prose, about 62 characters.
 */
export function proseMeasure(theme: Theme, paragraph: Paragraph, width: number): number {
  const role = proseRole(theme, paragraph.role);
  const runs = runsFor(paragraph.inlines, role);
  const set = measureLines({ runs, size: role.size, width, setting: 'filled' });
  return set.lines <= 1 ? width : Math.min(width, theme.measure);
}

export interface ProseProps {
  readonly theme: Theme;
  readonly paragraph: Paragraph;
  readonly width: number;
}

/** The theme of words that begin at another side of the page than those around them; see model/left-to-right.ts. */
export function turnTheme(theme: Theme, direction: Direction | undefined): Theme {
  return direction === undefined ? theme : { ...theme, direction };
}

/** A paragraph of running text. */
export function Prose({ theme, paragraph, width }: ProseProps): ReactElement {
  return (
    <Words
      theme={turnTheme(theme, ownDirection(paragraph.inlines, theme.direction))}
      text={paragraph.inlines}
      role={proseRole(theme, paragraph.role)}
      width={width}
      measure={proseMeasure(theme, paragraph, width)}
      sem={{ tag: 'P' }}
    />
  );
}

export interface ParagraphsProps {
  readonly theme: Theme;
  readonly paragraphs: readonly Paragraph[];
  readonly roleOf: (theme: Theme, role: Paragraph['role']) => TypeRole;
  readonly width: number;
  readonly measure?: number;
  readonly setting?: Setting;
  readonly align?: TextProps['align'];
  /** White between paragraphs. */
  readonly gap: number;
}

export function Paragraphs(props: ParagraphsProps): ReactElement {
  const { theme, paragraphs, roleOf, width, gap, measure, setting, align } = props;
  return (
    <View style={{ width }}>
      {paragraphs.map((paragraph, index) => (
        <View key={index} style={{ marginTop: index === 0 ? 0 : gap }}>
          <Words
            theme={theme}
            text={paragraph.inlines}
            role={roleOf(theme, paragraph.role)}
            width={width}
            sem={{ tag: 'P' }}
            {...(measure === undefined ? {} : { measure })}
            {...(setting === undefined ? {} : { setting })}
            {...(align === undefined ? {} : { align })}
          />
        </View>
      ))}
    </View>
  );
}

export function StrokePath({ stroke }: { readonly stroke: Stroke }): ReactElement | null {
  if (stroke.path === '') return null;
  return (
    <Path
      d={stroke.path}
      {...(stroke.fill === undefined ? {} : { fill: stroke.fill })}
      {...(stroke.stroke === undefined ? {} : { stroke: stroke.stroke })}
      {...(stroke.strokeWidth === undefined ? {} : { strokeWidth: stroke.strokeWidth })}
      {...(stroke.dash === undefined ? {} : { strokeDasharray: stroke.dash })}
    />
  );
}

interface DrawingProps {
  readonly mark: Mark;
  readonly alt?: string;
  /** Painted as a multiple of its size. */
  readonly scale?: number;
}

/** A small drawing of fixed size; a figure when it has a text alternative, else decoration. */
export function Drawing({ mark: { width, height, strokes }, alt, scale = 1 }: DrawingProps): ReactElement {
  const sem = alt === undefined ? {} : { sem: { tag: 'Figure', alt } as const };
  const view = scale === 1 ? {} : { viewBox: `0 0 ${width} ${height}` };
  return (
    <Svg width={width * scale} height={height * scale} {...view} {...sem}>
      {strokes.map((stroke, index) => (
        <StrokePath key={index} stroke={stroke} />
      ))}
    </Svg>
  );
}

export interface HairlineProps {
  readonly direction: Direction;
  /** Distance from the start edge of the box it lies in. */
  readonly start: number;
  readonly width: number;
  /** Distance from the top of the box. */
  readonly top?: number;
  readonly thickness: number;
  readonly color?: string;
}

/** Thinner lines are painted as filled boxes: viewers draw any stroke at least one pixel wide, far too black. */
const THINNEST_STROKE = 0.5;

/** A thin line over the top of a box. A stroke, not a border: borders are filled shapes and come out uneven. */
export function Hairline(props: HairlineProps): ReactElement {
  const { direction, start, width, top = 0, thickness, color = palette.line } = props;
  const place = { position: 'absolute', ...fromStart(direction, start) } as const;
  if (thickness < THINNEST_STROKE) {
    const box = { ...place, top: top - thickness / 2, width, height: thickness };
    return <View style={{ ...box, backgroundColor: color }} />;
  }
  return (
    <Svg style={{ ...place, top: top - 1.5 }} width={width} height={3}>
      <Path d={`M0 1.5L${width} 1.5`} stroke={color} strokeWidth={thickness} />
    </Svg>
  );
}

/** A thick rule, as a filled box. */
export function Rule({
  width,
  height,
  color,
}: {
  width: number;
  height: number;
  color: string;
}): ReactElement {
  return <View style={{ width, height, backgroundColor: color }} />;
}
