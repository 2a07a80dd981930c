import type { Unit } from '../unit.ts';
import { BoxedItem, BoxedList, boxRoom } from './boxed-list.tsx';
import { SentenceLines } from './sentence.tsx';
import { singleUnit } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

/** With the white above it, 25 from one to the next: room for a pen. */
const PITCH = 20;

/** Sentences to agree to or not: what is agreed to is read whole, so they stay together. */
export function answersUnits(block: OfType<'answers'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const pitch = PITCH * theme.scale;
  const inner = theme.measure - boxRoom(theme);
  const rows = block.sentences.map((sentence, index) => {
    const blank = sentence.parts.some((part) => part.type === 'blank');
    const drop = blank ? pitch - theme.type.body.lineHeight : 0;
    return (
      <BoxedItem key={index} theme={theme} width={theme.width} drop={drop}>
        <SentenceLines theme={theme} sentence={sentence} width={inner} measure={inner} pitch={pitch} />
      </BoxedItem>
    );
  });
  const list = <BoxedList theme={theme} heading={block.heading} tag={place.headingTag(3)} rows={rows} />;
  return singleUnit(block, place, list);
}
