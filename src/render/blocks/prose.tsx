import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { turnedDirection } from '../../model/left-to-right.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { palette } from '../theme.ts';
import type { Semantics, Unit } from '../unit.ts';
import { widthOnLine } from './fit-words.ts';
import { Prose, Words, turnTheme } from './primitives.tsx';
import { Question } from './topic.tsx';
import { singleUnit } from './unit-parts.ts';
import type { HeadingTag, OfType, Place } from './unit-parts.ts';

export function paragraphUnits(block: OfType<'paragraph'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const element = <Prose theme={theme} paragraph={block} width={theme.width} />;
  return singleUnit(block, place, element);
}

interface TitleProps {
  readonly theme: Theme;
  readonly text: string;
  readonly role: TypeRole;
  readonly sem: Semantics;
}

function Title({ theme, text, role, sem }: TitleProps): ReactElement {
  return <Words theme={theme} text={text} role={role} width={theme.width} setting="balanced" sem={sem} />;
}

/** A small heading in another script, as the name of a language, begins at the side of the paragraph under it. */
function smallTheme(theme: Theme, text: string): Theme {
  return turnTheme(theme, turnedDirection(text, theme.direction));
}

/** A heading never stands last on a page. */
export function headingUnits(block: OfType<'heading'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { language } = block;
  const sem = { tag: place.headingTag(block.level), ...(language === undefined ? {} : { language }) };
  const { pageTitle, smallHeading } = theme.type;
  const role = block.level === 1 ? pageTitle : smallHeading;
  const element =
    block.level === 2 ? (
      <Question theme={theme} text={block.text} sem={sem} />
    ) : (
      <Title
        theme={block.level === 3 ? smallTheme(theme, block.text) : theme}
        text={block.text}
        role={role}
        sem={sem}
      />
    );
  return singleUnit(block, place, element).map((unit) => ({ ...unit, keepWithNext: true }));
}

/** The panel hangs this far outside the grid, so that its text aligns with it. */
const COVER_HANG = 20;
/** It begins this far above the body: 36 below the top edge of the paper. */
const COVER_RISE = 24;
const COVER_CORNER = 48;

/** Room for the date at the end of the first line: in large print as much as it needs there, up to half. */
function dateWidth(date: string, { width, type, flow }: Theme): number {
  const usual = width * 0.375;
  if (flow === 'beside') return usual;
  return Math.max(usual, Math.min(Math.ceil(widthOnLine(date, type.small)) + 1, width / 2));
}

function CoverPanel({
  block,
  theme,
  tag,
}: {
  block: OfType<'cover'>;
  theme: Theme;
  tag: HeadingTag;
}): ReactElement {
  const { type, width, direction } = theme;
  const corners =
    direction === 'rtl'
      ? { borderTopRightRadius: COVER_CORNER, borderBottomLeftRadius: COVER_CORNER }
      : { borderTopLeftRadius: COVER_CORNER, borderBottomRightRadius: COVER_CORNER };
  const text = { theme, width } as const;
  const dated = dateWidth(block.date, theme);
  return (
    <View
      style={{
        marginTop: -COVER_RISE,
        marginHorizontal: -COVER_HANG,
        width: width + 2 * COVER_HANG,
        paddingHorizontal: COVER_HANG,
        paddingTop: 18,
        paddingBottom: 20,
        backgroundColor: palette.pale,
        ...corners,
      }}
    >
      <View style={{ flexDirection: direction === 'rtl' ? 'row-reverse' : 'row', marginBottom: 18 }}>
        <Words
          theme={theme}
          text={block.clinic}
          role={type.label}
          width={width - dated}
          measure={width - dated - 12}
          sem={{ tag: 'P' }}
        />
        <Words
          theme={theme}
          text={block.date}
          role={type.small}
          width={dated}
          align="end"
          sem={{ tag: 'P' }}
        />
      </View>
      <Words {...text} text={block.question} role={type.decision} setting="balanced" sem={{ tag }} />
      <View style={{ marginTop: 10, marginBottom: 10 }}>
        <Words {...text} text={block.lead} role={type.lead} measure={theme.measure} sem={{ tag: 'P' }} />
      </View>
      <Words {...text} text={block.addressee} role={type.tableHead} sem={{ tag: 'P' }} />
    </View>
  );
}

export function coverUnits(block: OfType<'cover'>, place: Place): readonly Unit[] {
  const tag = place.headingTag(1);
  const element = (
    <View style={{ width: place.theme.width }}>
      <CoverPanel block={block} theme={place.theme} tag={tag} />
    </View>
  );
  // It rather stands with what it opens than alone.
  const keepsRow = place.theme.flow === 'beside';
  return singleUnit(block, place, element).map((unit) => ({ ...unit, keepsRow }));
}
