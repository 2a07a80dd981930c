import { Text, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Setting } from './break-lines.ts';
import { softHyphen } from './divide-word.ts';
import { fontFamily } from './fonts.ts';
import { runsWidth, setRuns } from './set-runs.ts';
import type { Run } from './run.ts';
import type { SetLine } from './set-runs.ts';
import { levelsOfLines } from './shaping/order-line.ts';
import { ShapedLine } from './shaping/shaped-line.tsx';
import { isPlain } from './shaping/split-text.ts';
import { palette } from './theme.ts';
import type { Direction } from './theme.ts';
import type { Semantics } from './unit.ts';

export interface LinesProps {
  readonly runs: readonly Run[];
  /** Type size in points. */
  readonly size: number;
  /** Distance of baselines in points. */
  readonly lineHeight: number;
  /** Width of the box in points. */
  readonly width: number;
  /** Greatest width of a line when narrower than the box. */
  readonly measure?: number;
  readonly setting: Setting;
  readonly align?: 'left' | 'center' | 'right';
  /** In which direction the text around it is read; left to right where not said. */
  readonly direction?: Direction;
  readonly color?: string;
  readonly sem?: Semantics;
  readonly artifact?: boolean;
}

/** Room beyond the measured width, so that a rounding error never breaks a line a second time. Points. */
const slack = 1;

/**
 * Text broken into lines by plainleaf itself: one text node a line, so that the typesetter has nothing left to decide
 * (it shrinks the spaces of ragged text by up to a third to win a word).
 * A word wider than the measure is reported when the galley is set (see set-galley.ts).
 */
export function Lines(props: LinesProps): ReactElement {
  const { size, width, measure = width, setting, sem, artifact } = props;
  const lines = setRuns(props.runs, { size, measure, setting });
  const overrun = lines.some((line) => line.width > measure + slack);
  const marks = {
    ...(sem === undefined ? {} : { sem }),
    ...(artifact === undefined ? {} : { artifact }),
    ...(overrun ? { overrun } : {}),
  };
  const shaped = props.direction === 'rtl' || !lines.every(isPlainLine);
  const levels = shaped ? levelsOfLines(lines, props.direction ?? 'ltr') : [];
  return (
    <View style={{ width }} {...marks}>
      {lines.map((line, index) =>
        props.direction === 'rtl' || !isPlainLine(line) ? (
          <ShapedLine key={index} {...props} line={line} levels={levels[index] ?? []} />
        ) : (
          <PlainLine key={index} line={line} of={props} />
        ),
      )}
    </View>
  );
}

function isPlainLine({ runs }: SetLine): boolean {
  return runs.every(({ text }) => isPlain(text));
}

/** How many lines the runs take, and the width of the widest. */
export function measureLines(props: Pick<LinesProps, 'runs' | 'size' | 'width' | 'measure' | 'setting'>): {
  lines: number;
  width: number;
} {
  const lines = setRuns(props.runs, {
    size: props.size,
    measure: props.measure ?? props.width,
    setting: props.setting,
  });
  return { lines: lines.length, width: Math.max(0, ...lines.map((line) => line.width)) };
}

function PlainLine({ line, of }: { readonly line: SetLine; readonly of: LinesProps }): ReactElement {
  const align = of.align ?? 'left';
  // The space at the end is for those who hear or copy the text; it must not push aligned lines off their edge.
  const runs = line.spaceAfter && align === 'left' ? withSpace(line.runs) : line.runs;
  if (runs.some((run) => run.language !== undefined)) return <MixedLine runs={runs} of={of} />;
  const room = Math.max(of.width, runsWidth(runs, of.size) + slack);
  return (
    <Piece runs={runs} width={align === 'left' ? room : Math.max(of.width, line.width + slack)} of={of} />
  );
}

function withSpace(runs: readonly Run[]): readonly Run[] {
  const last = runs.at(-1);
  return last === undefined ? runs : [...runs.slice(0, -1), { ...last, text: `${last.text} ` }];
}

/** A line in more than one language: each language its own text node, so that it can be told to screen readers. */
function MixedLine({ runs, of }: { readonly runs: readonly Run[]; readonly of: LinesProps }): ReactElement {
  const justify = { left: 'flex-start', center: 'center', right: 'flex-end' } as const;
  return (
    <View
      style={{
        flexDirection: 'row',
        width: of.width,
        height: of.lineHeight,
        // The pieces are higher by the slack: in a box of the line's very height, a rounding error leaves no line at all.
        alignItems: 'flex-start',
        justifyContent: justify[of.align ?? 'left'],
      }}
    >
      {spacesLast(runs).map((run, index) => {
        const width = runsWidth([run], of.size);
        const sem =
          run.language === undefined ? {} : { sem: { tag: 'Span', language: run.language } as const };
        return (
          <View key={index} style={{ width, height: of.lineHeight + slack, flexShrink: 0 }} {...sem}>
            <Piece runs={[run]} width={width + slack} of={{ ...of, align: 'left' }} />
          </View>
        );
      })}
    </View>
  );
}

/** The typesetter drops a space at the head of a text node, so it goes to the end of the node before. */
function spacesLast(runs: readonly Run[]): readonly Run[] {
  return runs
    .map((run, index) => {
      const head = index === 0 ? run.text : run.text.replace(/^ /, '');
      return { ...run, text: runs[index + 1]?.text.startsWith(' ') === true ? `${head} ` : head };
    })
    .filter(({ text }) => text !== '');
}

function Piece({
  runs,
  width,
  of,
}: {
  readonly runs: readonly Run[];
  readonly width: number;
  readonly of: LinesProps;
}): ReactElement {
  const weight = runs[0]?.weight ?? 400;
  const style = {
    width,
    fontFamily,
    fontWeight: weight,
    fontSize: of.size,
    lineHeight: of.lineHeight / of.size,
    color: of.color ?? palette.ink,
    textAlign: of.align ?? 'left',
  };
  // The typesetter leaves soft hyphens out: it is given a hyphen, whose glyph is exchanged (see set-galley.ts).
  const divided = runs.at(-1)?.text.endsWith(softHyphen) === true;
  // Everything that bears on the setting is in the style, so the lines may be taken from an earlier setting.
  return (
    <Text style={style} lineKey={JSON.stringify([style, runs])} {...(divided ? { divided } : {})}>
      {runs.map(({ text, weight: own }, index) => {
        const shown = text.replace(softHyphen, '-');
        return own === weight ? (
          shown
        ) : (
          <Text key={index} style={{ fontWeight: own }}>
            {shown}
          </Text>
        );
      })}
    </Text>
  );
}
