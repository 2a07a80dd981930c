import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Theme } from '../theme.ts';
import { Paragraphs, Words, proseRole } from './primitives.tsx';
import type { HeadingTag, OfType } from './unit-parts.ts';

/** White within the frame of a panel, and its round corner. */
export const PADDING = 18;
export const CORNER = 24;

interface LeadProps {
  readonly theme: Theme;
  readonly block: OfType<'panel'>;
  readonly width: number;
  readonly tag: HeadingTag;
}

/** What the surgeon leans to. */
export function PanelLead({ theme, block, width, tag }: LeadProps): ReactElement {
  const text = { theme, width, measure: theme.measure } as const;
  return (
    <View style={{ width }}>
      <Words {...text} text={block.lead} role={theme.type.lean} setting="balanced" sem={{ tag }} />
      <Paragraphs {...text} paragraphs={block.body} roleOf={proseRole} gap={theme.space.betweenParagraphs} />
    </View>
  );
}
