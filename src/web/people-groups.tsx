import type { ReactElement } from 'react';
import type { Block, DocumentTree } from '../model/document.ts';
import type { Direction } from '../pictures/palette.ts';
import { drawPeopleGroups } from '../pictures/people.ts';
import { GroupMarks, groupId } from './blocks/strip-picture.tsx';

const denominators = [100, 1000] as const;
const states = ['had', 'not'] as const;

/** Denominators of the pictures of people in these documents. */
function denominatorsOf(documents: readonly DocumentTree[]): readonly (100 | 1000)[] {
  const found = new Set(documents.flatMap(({ blocks }) => blocks.flatMap(inBlock)));
  return denominators.filter((of) => found.has(of));
}

function inBlock(block: Block): readonly (100 | 1000)[] {
  if (block.type === 'topic') return block.blocks.flatMap(inBlock);
  if (block.type !== 'strip') return [];
  return block.rows.flatMap(({ picture }) => (picture?.type === 'people' ? [picture.of] : []));
}

/**
 * A hundred marks that are alike, drawn once for the whole page: a picture of a thousand people paints them up to ten
 * times, and a page of many pictures stays small.
 */
export function PeopleGroups({
  documents,
  direction,
}: {
  readonly documents: readonly DocumentTree[];
  readonly direction: Direction;
}): ReactElement | null {
  const used = denominatorsOf(documents);
  if (used.length === 0) return null;
  return (
    <svg className="drawn-once" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        {used.flatMap((of) =>
          states.map((state) => {
            const counts = { of, filled: state === 'had' ? of : 0, may: 0, half: false };
            const [group] = drawPeopleGroups(counts, direction);
            if (group === undefined) return null;
            return (
              <g key={groupId(of, state)} id={groupId(of, state)}>
                <GroupMarks marks={group.marks} />
              </g>
            );
          }),
        )}
      </defs>
    </svg>
  );
}
