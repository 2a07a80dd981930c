import type { ReactElement } from 'react';
import type { ChecklistRow } from '../../model/care-blocks.ts';
import type { OfType, Place } from '../place.ts';
import { Paragraphs, Prose } from '../words.tsx';
import { BoxedWords, TickBox, WritingLines } from './box.tsx';
import { Cell, ColumnHeads, RowHead, TableOf } from './table-parts.tsx';
import { Words } from '../whole-words.tsx';

/** Statements by boxes, and rows left free for one's own. */
export function mattersBlock(block: OfType<'matters'>, place: Place): ReactElement | null {
  const { columns, statements, blanks } = block;
  if (statements.length + blanks === 0) return null;
  const boxes = columns.map((label, index) => (
    <Cell key={index} label={label}>
      <TickBox place={place} of="grid" />
    </Cell>
  ));
  return (
    <TableOf caption={place.title} className="stacked boxes">
      <ColumnHeads labels={['', ...columns]} />
      <tbody role="rowgroup">
        {statements.map((statement, index) => (
          <tr key={index} role="row">
            <RowHead>
              <Prose paragraph={statement} place={place} />
            </RowHead>
            {boxes}
          </tr>
        ))}
        {Array.from({ length: blanks }, (_, index) => (
          <tr key={`blank ${String(index)}`} role="row" className="blank">
            <Cell>
              <WritingLines count={1} />
            </Cell>
            {boxes}
          </tr>
        ))}
      </tbody>
    </TableOf>
  );
}

interface RowProps {
  readonly row: ChecklistRow;
  readonly block: OfType<'checklist'>;
  readonly place: Place;
}

function Item({ row, block, place }: RowProps): ReactElement {
  return (
    <div className={block.box ? 'item with-box' : 'item'}>
      {block.box ? <TickBox place={place} /> : null}
      <div>
        <p className="strong">
          <Words text={row.name} />
        </p>
        <Paragraphs paragraphs={row.detail} place={place} />
      </div>
    </div>
  );
}

/** Things to tick: a list, or a table where there are dates to tick by. */
export function checklistBlock(block: OfType<'checklist'>, place: Place): ReactElement | null {
  const { head, columns, rows } = block;
  if (rows.length === 0) return null;
  if (columns.length === 0)
    return (
      <div className="checklist">
        {head.trim() === '' ? null : (
          <p className="label">
            <Words text={head} />
          </p>
        )}
        <ul role="list">
          {rows.map((row, index) => (
            <li key={index}>
              <Item row={row} block={block} place={place} />
            </li>
          ))}
        </ul>
      </div>
    );
  return (
    <TableOf caption={place.title} className="stacked boxes">
      <ColumnHeads labels={[head, ...columns]} />
      <tbody role="rowgroup">
        {rows.map((row, index) => (
          <tr key={index} role="row">
            <RowHead>
              <Item row={row} block={block} place={place} />
            </RowHead>
            {columns.map((label, at) =>
              row.due[at] === true ? (
                <Cell key={at} label={label}>
                  <TickBox place={place} of="grid" />
                </Cell>
              ) : (
                <Cell key={at} />
              ),
            )}
          </tr>
        ))}
      </tbody>
    </TableOf>
  );
}

/** What was talked about: a box and a line for initials beside each statement. */
export function talkBlock({ columns, statements }: OfType<'talk'>, place: Place): ReactElement | null {
  if (statements.length === 0) return null;
  return (
    <TableOf caption={place.title} className="stacked talk">
      <ColumnHeads labels={[columns.box, '', columns.line]} />
      <tbody role="rowgroup">
        {statements.map((statement, index) => (
          <tr key={index} role="row">
            <Cell label={columns.box}>
              <TickBox place={place} of="grid" />
            </Cell>
            <RowHead>
              <Paragraphs paragraphs={statement} place={place} />
            </RowHead>
            <Cell label={columns.line}>
              <WritingLines count={1} />
            </Cell>
          </tr>
        ))}
      </tbody>
    </TableOf>
  );
}

/** Questions whose answers are written down as they were given. */
export function teachBackBlock(
  { questions, boxes, lines }: OfType<'teach-back'>,
  place: Place,
): ReactElement {
  return (
    <ul role="list" className="teach-back">
      {questions.map((question, index) => (
        <li key={index}>
          <Prose paragraph={question} place={place} />
          <BoxedWords words={boxes} place={place} />
          <WritingLines count={lines} />
        </li>
      ))}
    </ul>
  );
}

/** Things to tick as large print has them: what is to be ticked or written stands under its words. */
export function tickItemsBlock({ items }: OfType<'tick-items'>, place: Place): ReactElement {
  return (
    <div className="tick-items">
      {items.map(({ box, words, boxes, line }, index) => (
        <div key={index} className={box ? 'item with-box' : 'item'}>
          {box ? <TickBox place={place} /> : null}
          <div>
            {words.length === 0 ? (
              <WritingLines count={1} />
            ) : (
              <Paragraphs paragraphs={words} place={place} />
            )}
            <BoxedWords words={boxes} place={place} />
            {line === undefined ? null : (
              <p>
                <Words text={line} />
              </p>
            )}
          </div>
        </div>
      ))}
    </div>
  );
}
