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
const WIDEST_LABEL = 106;
/** More lines of a label, and it stands over its number. */
const MOST_LABEL_LINES = 2;
const BETWEEN_PHONES = 6;
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

/** Beside the heading a label is narrow; below it, it takes the room that there is. */
export type PhonesSide = 'beside' | 'below';

function labelWidth({ phones }: WarningFrame, { type }: Theme, side: PhonesSide): number {
  const widthOf = (words: Label | undefined, most: number): number => {
    if (words === undefined) return 0;
    const whole = widthOnLine(words, type.small);
    return side === 'below' || whole <= most ? whole + 1 : widthInLines(words, 2, type.small);
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

export interface PhonesRoom {
  /** Points. */
  readonly most: number;
  readonly theme: Theme;
  readonly side: PhonesSide;
}

/** Room that the numbers of a frame take, in points, at most what there is; 0 where there are none. */
export function phonesWidth(frame: WarningFrame, { most, theme, side }: PhonesRoom): number {
  if (frame.phones.length === 0) return 0;
  const label = labelWidth(frame, theme, side);
  return Math.min(most, numberWidth(frame, theme) + (label === 0 ? 0 : label + LABEL_GAP));
}

/** Height that the numbers of a frame take in this width, in points. */
export function phonesHeight(frame: WarningFrame, width: number, theme: Theme): number {
  const role = numberRole(frame, theme);
  const { small } = theme.type;
  const { room, above } = labelPlace(frame, width, theme);
  const heights = frame.phones.map((phone, index) => {
    const label = labelLines(phone, room, small) * small.lineHeight;
    if (above) return (index === 0 ? 0 : BETWEEN_PHONES) + label + role.lineHeight;
    return Math.max(role.lineHeight, labelTop(phone, { room, role, theme }) + label);
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
  readonly theme: Theme;
}

/**
 * White above a label: its first line stands on the line of the number, and hours under it; without hours, and beside the
 * largest numbers, its last line does, as far as the number is high enough: so hours take no room of the signs below.
 */
function labelTop(phone: FramePhone, { room, role, theme }: LabelRoles): number {
  const { small, phone: usual } = theme.type;
  const drop = firstBaseline(role) - firstBaseline(small);
  if (phone.hours !== undefined && role.size <= usual.size) return drop;
  return Math.max(0, drop - Math.max(0, labelLines(phone, room, small) - 1) * small.lineHeight);
}

function labelLines(phone: FramePhone, room: number, small: TypeRole): number {
  return named(phone).reduce((sum, words) => sum + linesOf(words, room, small), 0);
}

interface LabelPlace {
  readonly room: number;
  /** A label stands over its number, not before it. */
  readonly above: boolean;
}

/**
 * A label has the room that the numbers leave: it takes more lines, they take none. Where it would take more than two
 * for whose a number is or for its hours, it stands over the number.
 */
function labelPlace(frame: WarningFrame, width: number, theme: Theme): LabelPlace {
  const labels = frame.phones.flatMap(named);
  if (labels.length === 0) return { room: 0, above: false };
  const room = width - numberWidth(frame, theme) - LABEL_GAP;
  const above = labels.some((words) => linesOf(words, room, theme.type.small) > MOST_LABEL_LINES);
  return above ? { room: width, above } : { room, above };
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
  const { room, above } = labelPlace(frame, width, theme);
  const numbers = above ? width : numberWidth(frame, theme);
  const color = frame.urgency === 'now' ? palette.white : palette.ink;
  const roles = { room, role, theme };
  const text = { theme, color, align } as const;
  const row = above ? {} : { flexDirection: rowDirection(direction) };
  return (
    <View sem={{ tag: 'L', numbering: 'None' }} style={{ width }}>
      {frame.phones.map((phone, index) => (
        <View
          key={index}
          sem={{ tag: 'LI' }}
          style={{ ...row, width, marginTop: above && index > 0 ? BETWEEN_PHONES : 0 }}
        >
          {named(phone).length === 0 ? null : (
            <View
              sem={{ tag: 'Lbl' }}
              style={{ width: room, paddingTop: above ? 0 : labelTop(phone, roles) }}
            >
              {named(phone).map((words, at) => (
                <Words key={at} {...text} text={words} role={type.small} width={room} setting="balanced" />
              ))}
            </View>
          )}
          <View
            sem={{ tag: 'LBody' }}
            style={{
              width: numbers,
              ...(above ? {} : gapStart(direction, named(phone).length === 0 ? width - numbers : LABEL_GAP)),
            }}
          >
            <Words {...text} text={tied(phone.number)} role={role} width={numbers} sem={{ tag: 'P' }} />
          </View>
        </View>
      ))}
    </View>
  );
}
