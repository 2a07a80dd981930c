import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Sentence } from '../../model/care-blocks.ts';
import { linePath } from '../../pictures/draw-path.ts';
import { Lines } from '../text.tsx';
import { alignStart, firstBaseline, gapStart, palette, rowDirection } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { Drawing, Words } from './primitives.tsx';
import { setSentence } from './set-sentence.ts';
import type { SentenceLine, SetPart } from './set-sentence.ts';

/** The writing line below the baseline of the words beside it. */
const BELOW_BASELINE = 4;
const LINE = 0.8;

interface SentenceProps {
  readonly theme: Theme;
  readonly sentence: Sentence;
  readonly width: number;
  /** Greatest width of a sentence without blanks. */
  readonly measure: number;
  /** Height of a line with a blank: room to write by hand. */
  readonly pitch: number;
}

interface PartProps {
  readonly theme: Theme;
  readonly part: SetPart;
  readonly role: TypeRole;
  readonly height: number;
}

/** Words stand on the foot of their line, a blank is the line under the room to write in. */
function Part({ theme, part, role, height }: PartProps): ReactElement {
  const { direction } = theme;
  const drop = height - role.lineHeight;
  if (part.blank === undefined)
    return (
      <View style={{ width: part.width + 1, paddingTop: drop, ...gapStart(direction, part.gap) }}>
        <Lines
          runs={part.runs}
          size={role.size}
          lineHeight={role.lineHeight}
          width={part.width + 1}
          setting="filled"
          align={alignStart(direction)}
          direction={direction}
        />
      </View>
    );
  const { width, blank } = part;
  const foot = drop + firstBaseline(role) + BELOW_BASELINE;
  const path = linePath({ width, direction }, [
    [0, foot],
    [width, foot],
  ]);
  const mark = { width, height, strokes: [{ path, stroke: palette.ink, strokeWidth: LINE }] };
  return (
    <View style={{ width, ...gapStart(direction, part.gap) }}>
      <Drawing mark={mark} alt={blank.alt} />
    </View>
  );
}

function SetLine({ line, ...of }: Omit<PartProps, 'part'> & { readonly line: SentenceLine }): ReactElement {
  return (
    <View style={{ flexDirection: rowDirection(of.theme.direction) }}>
      {line.map((part, index) => (
        <Part key={index} {...of} part={part} />
      ))}
    </View>
  );
}

/** One sentence, as one paragraph: its blanks are pictures of a line, each with words that say what belongs there. */
export function SentenceLines(props: SentenceProps): ReactElement {
  const { theme, sentence, width, measure, pitch } = props;
  const role = theme.type.body;
  const sem = { tag: 'P' } as const;
  const inlines = sentence.parts.flatMap((part) => (part.type === 'words' ? part.inlines : []));
  if (sentence.parts.every(({ type }) => type === 'words'))
    return <Words theme={theme} text={inlines} role={role} width={width} measure={measure} sem={sem} />;
  return (
    <View sem={sem} style={{ width }}>
      {setSentence(sentence, role, width).map((line, index) => {
        const height = line.some(({ blank }) => blank !== undefined) ? pitch : role.lineHeight;
        return <SetLine key={index} theme={theme} line={line} role={role} height={height} />;
      })}
    </View>
  );
}
