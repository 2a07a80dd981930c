import type { ReactElement, ReactNode } from 'react';
import { Words } from '../whole-words.tsx';

/**
 * Parts of tables that keep their roles where a narrow page stacks their rows: a browser that lays them out as boxes
 * would else no longer say that they are a table.
 */
export function TableOf({
  caption,
  className,
  children,
}: {
  readonly caption: string | undefined;
  readonly className: string;
  readonly children: ReactNode;
}): ReactElement {
  return (
    <table role="table" className={className}>
      {caption === undefined ? null : (
        <caption className="unseen" data-repeated="">
          {caption}
        </caption>
      )}
      {children}
    </table>
  );
}

/** A head without words is no head. */
export function ColumnHeads({
  labels,
  aligned = [],
}: {
  readonly labels: readonly string[];
  readonly aligned?: readonly ('start' | 'end')[];
}): ReactElement {
  return (
    <thead role="rowgroup">
      <tr role="row">
        {labels.map((label, index) =>
          label.trim() === '' ? (
            <td key={index} role="cell" />
          ) : (
            <th key={index} role="columnheader" scope="col" {...classOf(aligned[index])}>
              <Words text={label} />
            </th>
          ),
        )}
      </tr>
    </thead>
  );
}

export function RowHead({ children }: { readonly children: ReactNode }): ReactElement {
  return (
    <th role="rowheader" scope="row">
      {children}
    </th>
  );
}

interface CellProps {
  /** Head of its column, shown before it where rows are stacked. */
  readonly label?: string | undefined;
  readonly align?: 'start' | 'end' | undefined;
  readonly children?: ReactNode;
}

export function Cell({ label = '', align, children }: CellProps): ReactElement {
  return (
    <td role="cell" {...(label.trim() === '' ? {} : { 'data-label': label })} {...classOf(align)}>
      {children}
    </td>
  );
}

function classOf(align: 'start' | 'end' | undefined): { className?: string } {
  return align === 'end' ? { className: 'at-end' } : {};
}
