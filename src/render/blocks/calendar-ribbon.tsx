import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { daysInWeek, ribbonLabel, ribbonPieces, saidOfStage } from '../../model/calendar.ts';
import type { Calendar, CalendarStage, RibbonPiece, SaidOfStage } from '../../model/calendar.ts';
import { labelText } from '../../model/text-piece.ts';
import { textWidth } from '../measure-text.ts';
import { drawBeginning, drawRibbon, ribbonSizes } from '../../pictures/ribbon.ts';
import { fromStart, gapStart, palette, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Semantics } from '../unit.ts';
import { Drawing, Words } from './primitives.tsx';

interface PieceProps {
  readonly theme: Theme;
  readonly piece: RibbonPiece;
}

/** Pattern and, where there is room, the label on a white plate. */
function Piece({ theme, piece }: PieceProps): ReactElement {
  const { direction, type } = theme;
  const { pattern, label } = piece.stage;
  const width = (piece.days * theme.width) / daysInWeek;
  const words = Math.ceil(textWidth(labelText(label), type.label)) + 1;
  const { height, outline } = ribbonSizes;
  const place = {
    position: 'absolute',
    top: outline,
    bottom: 0,
    width: words + 2 * ribbonLabel.side,
    backgroundColor: palette.white,
    ...fromStart(direction, ribbonLabel.before),
  } as const;
  // Lines of some scripts are higher than the ribbon; their letters are not.
  const line = {
    position: 'absolute',
    top: (height - type.label.lineHeight) / 2 - outline,
    width: words,
    ...fromStart(direction, ribbonLabel.side),
  } as const;
  return (
    <View style={{ width, height }}>
      <Drawing mark={drawRibbon({ pattern, width, begins: piece.begins }, direction)} />
      {piece.labelled ? (
        <View style={place}>
          <View style={line}>
            <Words theme={theme} text={label} role={type.label} width={words} />
          </View>
        </View>
      ) : null}
    </View>
  );
}

function figureOf({ text, language }: SaidOfStage): Semantics {
  return { tag: 'Figure', alt: text, ...(language === undefined ? {} : { language }) };
}

/**
 * A stage where it begins: the ribbon says its name with its dates. A text that stands for a picture is in one language:
 * where the name is in another than the dates, these are said by the line at which the stage begins.
 */
function Beginning({ theme, piece }: PieceProps): ReactElement {
  const [first, ...others] = saidOfStage(piece.stage);
  const line = { position: 'absolute', top: 0, ...fromStart(theme.direction, 0) } as const;
  const begins = others.length === 0;
  return (
    <>
      {first === undefined ? null : (
        <View sem={figureOf(first)}>
          <Piece theme={theme} piece={{ ...piece, begins }} />
        </View>
      )}
      {others.map((said, index) => (
        <View key={index} sem={figureOf(said)} style={line}>
          <Drawing mark={drawBeginning(ribbonSizes.begin, theme.direction)} />
        </View>
      ))}
    </>
  );
}

interface WeekRibbonProps {
  readonly theme: Theme;
  readonly calendar: Calendar;
  readonly week: number;
  /** Id of the list of stages. */
  readonly id: string;
}

/**
 * The ribbon at the foot of a week. To those who hear it, a list of the stages with their dates: each stands once, where
 * it begins; in later weeks the ribbon repeats what the list has said.
 */
export function WeekRibbon({ theme, calendar, week, id }: WeekRibbonProps): ReactElement {
  const { direction, width } = theme;
  const day = width / daysInWeek;
  const pieces = ribbonPieces(calendar, week);
  const gaps = pieces.map(({ column }, index) => {
    const before = pieces[index - 1];
    return (column - (before === undefined ? 0 : before.column + before.days)) * day;
  });
  return (
    <View
      sem={{ tag: 'L', id, numbering: 'None' }}
      style={{ width, height: ribbonSizes.height, flexDirection: rowDirection(direction) }}
    >
      {pieces.map((piece, index) => {
        const style = { width: piece.days * day, ...gapStart(direction, gaps[index] ?? 0) };
        if (!piece.begins)
          return (
            <View key={index} artifact style={style}>
              <Piece theme={theme} piece={piece} />
            </View>
          );
        return (
          <View key={index} sem={{ tag: 'LI' }} style={style}>
            <View sem={{ tag: 'LBody' }}>
              <Beginning theme={theme} piece={piece} />
            </View>
          </View>
        );
      })}
    </View>
  );
}

const SAMPLE = { width: 40, height: 14 } as const;
const SAMPLE_GAP = 8;

/** Stages too short for their label, each with a sample of its ribbon and its dates. */
export function StageKey({
  theme,
  stages,
}: {
  readonly theme: Theme;
  readonly stages: readonly CalendarStage[];
}): ReactElement {
  const { direction, width, type } = theme;
  const words = width - SAMPLE.width - SAMPLE_GAP;
  return (
    <View sem={{ tag: 'L', numbering: 'None' }} style={{ width }}>
      {stages.map((stage, index) => (
        <View
          key={index}
          sem={{ tag: 'LI' }}
          style={{ flexDirection: rowDirection(direction), width, marginTop: index === 0 ? 0 : 4 }}
        >
          <View style={{ paddingTop: 1 }}>
            <Drawing mark={drawRibbon({ pattern: stage.pattern, begins: false, ...SAMPLE }, direction)} />
          </View>
          <View sem={{ tag: 'LBody' }} style={{ width: words, ...gapStart(direction, SAMPLE_GAP) }}>
            <Words theme={theme} text={stage.dated} role={type.small} width={words} sem={{ tag: 'P' }} />
          </View>
        </View>
      ))}
    </View>
  );
}
