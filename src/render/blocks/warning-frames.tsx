import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { WarningFrame } from '../../model/care-blocks.ts';
import { measureLines } from '../text.tsx';
import { gapStart, palette, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { widestWord } from './fit-words.ts';
import { FrameItems } from './frame-items.tsx';
import { FramePhones, phonesHeight, phonesWidth } from './frame-phones.tsx';
import { SIDE, frameRows } from './frame-rows.ts';
import { LeafFrame } from './leaf-frame.tsx';
import { longFrameUnits } from './long-frame.tsx';
import { Hairline, Words, runsFor } from './primitives.tsx';
import type { HeadingTag, OfType, Place } from './unit-parts.ts';

export const CORNER = 20;
const HEAD = 9;
const BODY_TOP = 10;
const BODY_BOTTOM = 12;
const MOST_HEAD_LINES = 2;
/** White between the words and the numbers of a head. */
const HEAD_GAP = 16;
/** White over the words on which number comes first. */
const FIRST_GAP = 5;

/** The sooner to call, the thicker the line: urgency is told by weight and order, not by colour. */
export const lines = { now: 3, today: 2, visit: 1 } as const;

interface FrameProps {
  readonly theme: Theme;
  readonly frame: WarningFrame;
  readonly tag: HeadingTag;
}

function headColor({ urgency }: WarningFrame): string {
  return urgency === 'now' ? palette.white : palette.ink;
}

function HeadWords({ theme, frame, tag, width }: FrameProps & { readonly width: number }): ReactElement {
  const text = { theme, width, color: headColor(frame), setting: 'balanced' } as const;
  return (
    <View style={{ width }}>
      <Words {...text} text={frame.heading} role={theme.type.frameHead} sem={{ tag }} />
      {frame.note === undefined ? null : (
        <Words {...text} text={frame.note} role={theme.type.small} sem={{ tag: 'P' }} />
      )}
    </View>
  );
}

/** Whether heading and note have room in this width, in two lines each at most. */
function headFits({ heading, note = '' }: WarningFrame, width: number, { type }: Theme): boolean {
  const texts = [[heading, type.frameHead] as const, [note, type.small] as const];
  return texts.every(([text, role]) => {
    const runs = runsFor(text, role);
    const set = measureLines({ runs, size: role.size, width, setting: 'balanced' });
    return widestWord(text, role) <= width && set.lines <= MOST_HEAD_LINES;
  });
}

interface HeadRoom {
  /** Whether the numbers stand beside the heading, not below it. */
  readonly beside: boolean;
  readonly words: number;
  readonly phones: number;
}

/**
 * Numbers stand below where they would leave the heading too little room, and in large print; but not those of what
 * cannot wait: so a page holds all its signs.
 */
function headRoom(frame: WarningFrame, inner: number, theme: Theme): HeadRoom {
  const most = { most: inner, theme };
  const phones = phonesWidth(frame, { ...most, side: 'beside' });
  const rest = inner - phones - (phones === 0 ? 0 : HEAD_GAP);
  const isClose = theme.flow === 'beside' || frame.urgency === 'now';
  const beside = phones === 0 || (isClose && headFits(frame, rest, theme));
  if (beside) return { beside, words: rest, phones };
  return { beside, words: inner, phones: phonesWidth(frame, { ...most, side: 'below' }) };
}

/** Black with white words in the first frame; else ruled off by a line as thick as the frame. */
export function headGround(
  { urgency }: WarningFrame,
  direction: Theme['direction'],
): Record<string, unknown> {
  if (urgency !== 'now') return {};
  const outer = CORNER + lines.now / 2;
  const corner = direction === 'rtl' ? { borderTopRightRadius: outer } : { borderTopLeftRadius: outer };
  return { backgroundColor: palette.ink, ...corner };
}

/** Heading at the start, numbers at the end. */
export function FrameHead(props: FrameProps): ReactElement {
  const { theme, frame } = props;
  const { direction, width } = theme;
  const inner = width - 2 * SIDE;
  const { beside, words, phones } = headRoom(frame, inner, theme);
  const ground = headGround(frame, direction);
  const row = { flexDirection: rowDirection(direction), width: inner } as const;
  return (
    <View style={{ width, paddingHorizontal: SIDE, paddingVertical: HEAD, ...ground }}>
      <View style={beside ? { ...row, alignItems: 'center' } : { width: inner }}>
        <HeadWords {...props} width={words} />
        {phones === 0 ? null : (
          <View style={beside ? gapStart(direction, HEAD_GAP) : { ...row, marginTop: 4 }}>
            <FramePhones theme={theme} frame={frame} width={phones} align={beside ? 'end' : 'start'} />
          </View>
        )}
      </View>
      {frame.first === undefined ? null : (
        <View style={{ width: inner, marginTop: FIRST_GAP }}>
          <Words
            theme={theme}
            text={frame.first}
            role={theme.type.strong}
            width={inner}
            color={headColor(frame)}
            setting="balanced"
            sem={{ tag: 'P' }}
          />
        </View>
      )}
      <View style={{ position: 'absolute', bottom: 0, left: 0, width, height: 0 }}>
        {frame.urgency === 'now' ? null : (
          <Hairline
            direction={direction}
            start={0}
            width={width}
            thickness={lines[frame.urgency]}
            color={palette.ink}
          />
        )}
      </View>
    </View>
  );
}

function Frame(props: FrameProps): ReactElement {
  const { theme, frame } = props;
  const { width, direction } = theme;
  return (
    <View style={{ width }}>
      <FrameHead {...props} />
      {frame.items.length === 0 ? null : (
        <View style={{ width, paddingHorizontal: SIDE, paddingTop: BODY_TOP, paddingBottom: BODY_BOTTOM }}>
          <FrameItems theme={theme} frame={frame} />
        </View>
      )}
      <LeafFrame direction={direction} width={width} corner={CORNER} line={lines[frame.urgency]} first last />
    </View>
  );
}

/** A higher frame has no sure room on a page of either paper under a title, or would leave most of one empty. Points. */
const MOST_WHOLE = 400;

/** Height of the words on which number comes first, with the white over them. */
function firstHeight({ first }: WarningFrame, width: number, { type }: Theme): number {
  if (first === undefined) return 0;
  const set = measureLines({
    runs: runsFor(first, type.strong),
    size: type.strong.size,
    width,
    setting: 'balanced',
  });
  return FIRST_GAP + set.lines * type.strong.lineHeight;
}

/** About as high as the frame is set. */
function frameHeight(frame: WarningFrame, theme: Theme): number {
  const inner = theme.width - 2 * SIDE;
  const { beside, words, phones } = headRoom(frame, inner, theme);
  const { frameHead, small } = theme.type;
  const texts = [[frame.heading, frameHead] as const, [frame.note ?? '', small] as const];
  const said = texts.map(([text, role]) => {
    const set = measureLines({
      runs: runsFor(text, role),
      size: role.size,
      width: words,
      setting: 'balanced',
    });
    return text === '' ? 0 : set.lines * role.lineHeight;
  });
  const heading = said.reduce((sum, height) => sum + height, 0);
  const numbers = phonesHeight(frame, phones, theme);
  const head = (beside ? Math.max(heading, numbers) : heading + numbers) + firstHeight(frame, inner, theme);
  return 2 * HEAD + head + BODY_TOP + frameRows(frame.items, theme).height + BODY_BOTTOM;
}

/** One frame a degree of urgency, each whole where it has room on a page. */
export function warningUnits(block: OfType<'warning-frames'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const { betweenFrames, frameShrink } = theme.space;
  const tag = place.headingTag(place.title === undefined ? 2 : 3);
  return block.frames.flatMap((frame, index) => {
    const own = `${key}.frame.${index}`;
    const units = frameHeight(frame, theme) > MOST_WHOLE ? partedUnits : wholeUnits;
    return units({ theme, frame, tag }, { ...place, key: own }).map((unit, at) =>
      index === 0 || at > 0 ? unit : { ...unit, gapBefore: betweenFrames, gapShrink: frameShrink },
    );
  });
}

function wholeUnits(props: FrameProps, { key }: Place): readonly Unit[] {
  const { origin } = props.frame;
  return [{ key, origin, element: <Frame {...props} />, gapBefore: 0, keepWithNext: false }];
}

function partedUnits(props: FrameProps, place: Place): readonly Unit[] {
  const { frame } = props;
  return longFrameUnits({
    place,
    frame,
    id: place.key,
    head: <FrameHead {...props} />,
    corner: CORNER,
    line: lines[frame.urgency],
    room: { top: BODY_TOP, bottom: BODY_BOTTOM },
  });
}
