import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { FramePhone, WarningFrame } from '../../model/care-blocks.ts';
import type { Label } from '../../model/document.ts';
import { measureLines } from '../text.tsx';
import { firstBaseline, gapStart, palette, rowDirection } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { widestWord, widthInLines, widthOnLine } from './fit-words.ts';
import { Words, runsFor } from './primitives.tsx';

const LABEL_GAP = 12;
/** A label wider than this takes a second line. */
const WIDEST_LABEL = 96;
/** Hours stand on one line as long as they leave the heading its room. */
const WIDEST_HOURS = 210;

/** Whose a number is, and when somebody answers. */
function named({ label, hours }: FramePhone): readonly Label[] {
  return [label, hours].filter((words) => words !== undefined);
}

/** A number is read in one go: its parts are never parted by the end of a line. */
export function tied(number: string): string {
  return number.replace(/ /g, '\u00a0');
}

/** The number for an emergency is the largest type of the page, as long as it has room. */
function numberRole({ urgency, phones }: WarningFrame, theme: Theme): TypeRole {
  const { emergency, phone } = theme.type;
  const widest = Math.max(0, ...phones.map(({ number }) => widestWord(tied(number), emergency)));
  return urgency === 'now' && widest <= theme.width / 2 ? emergency : phone;
}

function labelWidth({ phones, urgency }: WarningFrame, { type, flow }: Theme): number {
  const isWide = flow === 'stacked' && urgency !== 'now';
  const widthOf = (words: Label | undefined, most: number): number => {
    if (words === undefined) return 0;
    const whole = widthOnLine(words, type.small);
    return isWide || whole <= most ? whole + 1 : widthInLines(words, 2, type.small);
  };
  const widths = phones.flatMap(({ label, hours }) => [
    widthOf(label, WIDEST_LABEL),
    widthOf(hours, WIDEST_HOURS),
  ]);
  return Math.ceil(Math.max(0, ...widths));
}

function numberWidth(frame: WarningFrame, theme: Theme): number {
  const role = numberRole(frame, theme);
  return Math.ceil(Math.max(0, ...frame.phones.map(({ number }) => widestWord(tied(number), role)))) + 1;
}

/** Room that the numbers of a frame take, in points, at most what there is; 0 where there are none. */
export function phonesWidth(frame: WarningFrame, most: number, theme: Theme): number {
  if (frame.phones.length === 0) return 0;
  const label = labelWidth(frame, theme);
  return Math.min(most, numberWidth(frame, theme) + (label === 0 ? 0 : label + LABEL_GAP));
}

/** Height that the numbers of a frame take in this width, in points. */
export function phonesHeight(frame: WarningFrame, width: number, theme: Theme): number {
  const role = numberRole(frame, theme);
  const { small } = theme.type;
  const room = labelRoom(frame, width, theme);
  const heights = frame.phones.map((phone) => {
    const lines = named(phone).reduce((sum, words) => sum + linesOf(words, room, small), 0);
    return Math.max(role.lineHeight, labelTop(phone, { room, role, small }) + lines * small.lineHeight);
  });
  return heights.reduce((sum, height) => sum + height, 0);
}

function linesOf(words: Label, room: number, role: TypeRole): number {
  const set = { runs: runsFor(words, role), size: role.size, width: room };
  return words === '' ? 0 : measureLines({ ...set, setting: 'balanced' }).lines;
}

interface LabelRoles {
  readonly room: number;
  readonly role: TypeRole;
  readonly small: TypeRole;
}

/**
 * White above a label: its first line stands on the line of the number, and hours under it; without hours its last line
 * does, as far as the number is high enough.
 */
function labelTop({ label = '', hours }: FramePhone, { room, role, small }: LabelRoles): number {
  const drop = firstBaseline(role) - firstBaseline(small);
  if (hours !== undefined) return drop;
  return Math.max(0, drop - Math.max(0, linesOf(label, room, small) - 1) * small.lineHeight);
}

/** A label has the room that the numbers leave: it takes more lines, they take none. */
function labelRoom(frame: WarningFrame, width: number, theme: Theme): number {
  return labelWidth(frame, theme) === 0 ? 0 : width - numberWidth(frame, theme) - LABEL_GAP;
}

interface FramePhonesProps {
  readonly theme: Theme;
  readonly frame: WarningFrame;
  readonly width: number;
  /** At the end of the head, or below the heading at the start. */
  readonly align: 'start' | 'end';
}

/** Numbers one under another at the end of the head, what each is for before it on the same baseline. */
export function FramePhones({ theme, frame, width, align }: FramePhonesProps): ReactElement {
  const { direction, type } = theme;
  const role = numberRole(frame, theme);
  const numbers = numberWidth(frame, theme);
  const label = labelRoom(frame, width, theme);
  const color = frame.urgency === 'now' ? palette.white : palette.ink;
  const roles = { room: label, role, small: type.small };
  const text = { theme, color, align } as const;
  return (
    <View sem={{ tag: 'L', numbering: 'None' }} style={{ width }}>
      {frame.phones.map((phone, index) => (
        <View key={index} sem={{ tag: 'LI' }} style={{ flexDirection: rowDirection(direction), width }}>
          {named(phone).length === 0 ? null : (
            <View sem={{ tag: 'Lbl' }} style={{ width: label, paddingTop: labelTop(phone, roles) }}>
              {named(phone).map((words, at) => (
                <Words key={at} {...text} text={words} role={type.small} width={label} setting="balanced" />
              ))}
            </View>
          )}
          <View
            sem={{ tag: 'LBody' }}
            style={{
              width: numbers,
              ...gapStart(direction, named(phone).length === 0 ? width - numbers : LABEL_GAP),
            }}
          >
            <Words {...text} text={tied(phone.number)} role={role} width={numbers} sem={{ tag: 'P' }} />
          </View>
        </View>
      ))}
    </View>
  );
}
