import { View } from '@react-pdf/renderer';
import type { ReactElement, ReactNode } from 'react';
import type { Paragraph } from '../../model/document.ts';
import { drawBullet } from '../../pictures/marks.ts';
import { firstBaseline, rowDirection } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { Drawing, Paragraphs, proseRole } from './primitives.tsx';

const INDENT = 14;

/** What a bullet takes from the width of its words. */
export function bulletIndent({ scale }: Theme): number {
  return INDENT * scale;
}

interface BulletedProps {
  readonly theme: Theme;
  /** Of bullet and words together, in points. */
  readonly width: number;
  /** From the edge to the words. */
  readonly indent: number;
  /** Size of the bullet. */
  readonly bullet: number;
  /** Type of the first line, to whose small letters the bullet is level. */
  readonly role: TypeRole;
  readonly children: ReactNode;
}

/** A leaf bullet and what stands beside it, as an item of a list. */
export function Bulleted({ theme, width, indent, bullet, role, children }: BulletedProps): ReactElement {
  const { direction } = theme;
  const paddingTop = firstBaseline(role) - 0.265 * role.size - bullet / 2;
  const alignItems = direction === 'rtl' ? 'flex-end' : 'flex-start';
  return (
    <View sem={{ tag: 'LI' }} style={{ flexDirection: rowDirection(direction), width }}>
      <View style={{ width: indent, paddingTop, alignItems }}>
        <Drawing mark={drawBullet(bullet, direction)} />
      </View>
      <View sem={{ tag: 'LBody' }} style={{ width: width - indent }}>
        {children}
      </View>
    </View>
  );
}

export interface BulletProps {
  readonly theme: Theme;
  readonly paragraphs: readonly Paragraph[];
  readonly width: number;
  readonly measure?: number;
}

/** An item of a list of running text. */
export function BulletItem({ theme, paragraphs, width, measure }: BulletProps): ReactElement {
  const role = proseRole(theme, paragraphs[0]?.role ?? 'body');
  const bullet = theme.density === 'clinician' ? 4.5 : 6 * theme.scale;
  const indent = bulletIndent(theme);
  return (
    <Bulleted theme={theme} width={width} indent={indent} bullet={bullet} role={role}>
      <Paragraphs
        theme={theme}
        paragraphs={paragraphs}
        roleOf={proseRole}
        width={width - indent}
        gap={2}
        {...(measure === undefined ? {} : { measure })}
      />
    </Bulleted>
  );
}
