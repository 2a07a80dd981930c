import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Paragraph } from '../../model/document.ts';
import { measureLines } from '../text.tsx';
import { gapStart, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { BoxedWords, boxedWordsWidth } from './boxed-words.tsx';
import { Words, proseRole, runsFor } from './primitives.tsx';
import { groupRows } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';
import { WritingLines } from './writing-lines.tsx';

const GAP = 16;
/** Questions narrower than this have their boxes below them. */
const LEAST_QUESTION = 200;
const BETWEEN = 10;
const BETWEEN_SHRINK = 4;
/** Lines that the words of a box beside a question may take. */
const BOX_LINES = 2;

interface QuestionProps {
  readonly theme: Theme;
  readonly question: Paragraph;
  readonly boxes: readonly string[];
  readonly lines: number;
}

interface QuestionRoom {
  readonly width: number;
  /** Height of its words, in points. */
  readonly height: number;
}

function roomOf(question: Paragraph, width: number, theme: Theme): QuestionRoom {
  const role = proseRole(theme, question.role);
  const set = measureLines({
    runs: runsFor(question.inlines, role),
    size: role.size,
    width,
    setting: 'filled',
  });
  return { width, height: set.lines * role.lineHeight };
}

/** In large print the boxes always stand under their question. */
function standsBeside(boxes: readonly string[], room: number, { flow }: Theme): boolean {
  return flow === 'beside' && boxes.length > 0 && room >= LEAST_QUESTION;
}

/** The question, and at the end of its line the boxes that say how the answer went. */
function Question({ theme, question, boxes, lines }: QuestionProps): ReactElement {
  const { direction, width, type } = theme;
  const taken = boxedWordsWidth({ theme, words: boxes, lines: BOX_LINES });
  const beside = standsBeside(boxes, width - taken - GAP, theme);
  const room = roomOf(question, beside ? width - taken - GAP : width, theme);
  // The lines to write on begin under the question; the words of the boxes may reach down beside the first.
  const overlap = beside ? Math.max(0, BOX_LINES * type.cell.lineHeight - room.height) : 0;
  return (
    <View style={{ width }}>
      <View
        style={{
          flexDirection: beside ? rowDirection(direction) : 'column',
          width,
          ...(beside ? { minHeight: BOX_LINES * type.cell.lineHeight } : {}),
        }}
      >
        <Words
          theme={theme}
          text={question.inlines}
          role={proseRole(theme, question.role)}
          width={room.width}
          sem={{ tag: 'P' }}
        />
        {boxes.length === 0 ? null : (
          <View style={beside ? gapStart(direction, GAP) : { marginTop: 6 * theme.scale }}>
            <BoxedWords
              theme={theme}
              words={boxes}
              lines={beside ? BOX_LINES : 1}
              width={beside ? taken : width}
            />
          </View>
        )}
      </View>
      <View style={{ marginTop: -overlap }}>
        <WritingLines theme={theme} indent={0} count={lines} beside={false} close />
      </View>
    </View>
  );
}

/** More questions may be divided; fewer stay together, so that a page begins with the first. */
const MOST_WHOLE = 3;

/** Questions whose answers are written down as they were given. Each stays whole. */
export function teachBackUnits(block: OfType<'teach-back'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const { boxes, lines } = block;
  const units = block.questions.map((question, index): Unit => ({
    key: `${key}.question.${index}`,
    origin: question.origin,
    element: <Question theme={theme} question={question} boxes={boxes} lines={lines} />,
    gapBefore: index === 0 ? 0 : BETWEEN * theme.scale,
    ...(index === 0 ? {} : { gapShrink: BETWEEN_SHRINK }),
    keepWithNext: false,
    ...(block.questions.length > MOST_WHOLE ? { divisible: true } : {}),
  }));
  return theme.flow === 'beside' ? groupRows(units, key) : units;
}
