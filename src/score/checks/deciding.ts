import { foundAt } from '../check.ts';
import type { Check } from '../check.ts';
import { ofType } from '../pages.ts';
import { stepLists } from './action.ts';

/** Statements to mark by how much they count. */
export const mattersAsked: Check = ({ documents }) =>
  foundAt(
    ofType(documents, 'matters').filter(
      ({ block }) => block.statements.length > 0 && block.columns.length > 1,
    ),
  );

/** Three numbered steps or more towards a decision. */
export const stepsToDecide: Check = (pages) =>
  foundAt(stepLists(pages).filter(({ block }) => block.ordered && block.items.length >= 3));

/** Questions with lines under them, to bring to the visit. */
export const worksheet: Check = ({ documents }) =>
  foundAt(ofType(documents, 'write-in').filter(({ block }) => block.prompt !== undefined && block.lines > 0));
