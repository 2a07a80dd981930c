import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Field } from '../../model/care-blocks.ts';
import { hatchPath } from '../../pictures/hatch.ts';
import { measureLines } from '../text.tsx';
import { gapStart, palette, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { ContinuedHead } from './continued-head.tsx';
import { Drawing, Hairline, Words, runsFor } from './primitives.tsx';
import type { OfType, Place } from './unit-parts.ts';

export type FieldShares = Readonly<Record<Field['kind'], number>>;

/** Signature, date and time of a row of 492 with 10 between them. */
const signatureShares: FieldShares = { name: 270, signature: 270, date: 112, time: 90 };

const GAP = 10;
const HEIGHT = 32;
const LABEL_GAP = 2;
const BETWEEN_ROWS = 12;
const BETWEEN_LINES = 5;
const BETWEEN_SHRINK = 4;
const LINE = 0.8;
const hatch = { pitch: 8, thickness: 0.5 } as const;
const plateRoom = { side: 8, above: 1 } as const;

interface FieldRowProps {
  readonly theme: Theme;
  readonly fields: readonly Field[];
  readonly shares: FieldShares;
  readonly width: number;
  readonly plate: string | undefined;
}

function widthsOf({ fields, shares, width }: FieldRowProps): readonly number[] {
  const room = width - GAP * (fields.length - 1);
  const whole = fields.reduce((sum, { kind }) => sum + shares[kind], 0);
  return fields.map(({ kind }) => (room * shares[kind]) / whole);
}

interface PlateSize {
  readonly width: number;
  readonly height: number;
}

function plateSize(plate: string, width: number, { type }: Theme): PlateSize {
  const role = type.labelStrong;
  const most = width - 2 * plateRoom.side;
  const set = measureLines({ runs: runsFor(plate, role), size: role.size, width: most, setting: 'balanced' });
  return {
    width: Math.min(most, Math.ceil(set.width) + 1) + 2 * plateRoom.side,
    height: set.lines * role.lineHeight + 2 * plateRoom.above,
  };
}

/** All fields of a row are as high as the one whose plate needs most. */
function heightOf(props: FieldRowProps): number {
  const { plate, theme, fields } = props;
  const least = HEIGHT * theme.scale;
  if (plate === undefined) return least;
  const widths = widthsOf(props);
  const plates = fields.map(({ kind }, index) =>
    kind === 'signature' ? plateSize(plate, widths[index] ?? 0, theme).height : 0,
  );
  return Math.max(least, ...plates);
}

interface AreaProps {
  readonly theme: Theme;
  readonly kind: Field['kind'];
  readonly width: number;
  readonly height: number;
  readonly plate: string | undefined;
}

/** Words on a white plate in the middle of the hatching, which they never touch. */
function Plate({ theme, width, height, plate }: AreaProps & { readonly plate: string }): ReactElement {
  const size = plateSize(plate, width, theme);
  const place = {
    position: 'absolute',
    top: (height - size.height) / 2,
    left: (width - size.width) / 2,
    width: size.width,
    height: size.height,
    paddingTop: plateRoom.above,
    paddingHorizontal: plateRoom.side,
    backgroundColor: palette.white,
  } as const;
  return (
    <View style={place}>
      <Words
        theme={theme}
        text={plate}
        role={theme.type.labelStrong}
        width={size.width - 2 * plateRoom.side}
        setting="balanced"
        sem={{ tag: 'P' }}
      />
    </View>
  );
}

/** The room to sign in: empty, or hatched where what is signed would not count. */
function Area(props: AreaProps): ReactElement {
  const { theme, kind, width, height, plate } = props;
  const { direction } = theme;
  const hatched = plate !== undefined && kind !== 'name';
  const path = hatchPath({ width, direction }, { start: 0, top: 0, width, height }, hatch.pitch);
  const mark = { width, height, strokes: [{ path, stroke: palette.ink, strokeWidth: hatch.thickness }] };
  return (
    <View style={{ width, height }}>
      {hatched ? (
        <View style={{ position: 'absolute', top: 0, left: 0 }}>
          <Drawing mark={mark} />
        </View>
      ) : null}
      {plate !== undefined && kind === 'signature' ? <Plate {...props} plate={plate} /> : null}
      <Hairline
        direction={direction}
        start={0}
        width={width}
        top={height}
        thickness={LINE}
        color={palette.ink}
      />
    </View>
  );
}

/** What stands on a line of its own: all fields of a row, or, stacked, each but those of day and time. */
function linesOf({ theme, fields }: FieldRowProps): readonly (readonly Field[])[] {
  if (theme.flow === 'beside') return [fields];
  const lines: Field[][] = [];
  fields.forEach((field, index) => {
    const short = isShort(field) && isShort(fields[index - 1]);
    if (short) lines.at(-1)?.push(field);
    else lines.push([field]);
  });
  return lines;
}

function isShort(field: Field | undefined): boolean {
  return field?.kind === 'date' || field?.kind === 'time';
}

/** Fields side by side, the label of each under its line. */
export function FieldLine(props: FieldRowProps): ReactElement {
  const { width, theme } = props;
  return (
    <View sem={{ tag: 'L', numbering: 'None' }} style={{ width }}>
      {linesOf(props).map((fields, index) => (
        <View key={index} style={{ marginTop: index === 0 ? 0 : BETWEEN_LINES * theme.scale }}>
          <OneLine {...props} fields={fields} />
        </View>
      ))}
    </View>
  );
}

function OneLine(props: FieldRowProps): ReactElement {
  const { theme, fields, width, plate } = props;
  const { direction, type } = theme;
  const widths = widthsOf(props);
  const height = heightOf(props);
  return (
    <View style={{ width, flexDirection: rowDirection(direction), alignItems: 'flex-start' }}>
      {fields.map(({ kind, label }, index) => {
        const own = widths[index] ?? 0;
        return (
          <View
            key={index}
            sem={{ tag: 'LI' }}
            style={{ width: own, ...gapStart(direction, index === 0 ? 0 : GAP) }}
          >
            <View sem={{ tag: 'LBody' }} style={{ width: own }}>
              <Area theme={theme} kind={kind} width={own} height={height} plate={plate} />
              <View style={{ marginTop: LABEL_GAP }}>
                <Words
                  theme={theme}
                  text={label}
                  role={type.small}
                  width={own}
                  setting="balanced"
                  sem={{ tag: 'P' }}
                />
              </View>
            </View>
          </View>
        );
      })}
    </View>
  );
}

/** Rows to sign in, kept together; see sequence.ts for what they are kept with. */
export function signatureUnits(block: OfType<'signatures'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  // In large print not all rows fit one page; nobody should meet lines to sign without a word on what they are for.
  const repeated = place.title === undefined ? {} : { continuation: <ContinuedHead place={place} /> };
  return block.rows.map((row, index) => ({
    key: `${key}.row.${index}`,
    origin: row.origin,
    element: (
      <FieldLine
        theme={theme}
        fields={row.fields}
        shares={signatureShares}
        width={theme.width}
        plate={block.plate}
      />
    ),
    gapBefore: index === 0 ? 0 : BETWEEN_ROWS * theme.scale,
    ...(index === 0 ? {} : { gapShrink: BETWEEN_SHRINK }),
    keepWithNext: index < block.rows.length - 1,
    group: key,
    ...repeated,
  }));
}
