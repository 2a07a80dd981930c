import type { ReactElement } from 'react';
import type { Field } from '../../model/care-blocks.ts';
import type { OfType, Place } from '../place.ts';
import { HeadingOf, Paragraphs } from '../words.tsx';
import { BoxedWords } from './box.tsx';
import { Words } from '../whole-words.tsx';

interface FieldsProps {
  readonly fields: readonly Field[];
  readonly plate: string | undefined;
}

/** Room to sign or write, with its label under it; hatched where what is signed would not count. */
function Fields({ fields, plate }: FieldsProps): ReactElement {
  return (
    <ul role="list" className="fields">
      {fields.map(({ kind, label }, index) => (
        <li key={index} className={kind}>
          <div className={plate !== undefined && kind !== 'name' ? 'room hatched' : 'room'}>
            {plate !== undefined && kind === 'signature' ? <p className="strong">{plate}</p> : null}
          </div>
          <p className="small">
            <Words text={label} />
          </p>
        </li>
      ))}
    </ul>
  );
}

export function signaturesBlock({ rows, plate }: OfType<'signatures'>): ReactElement {
  return (
    <div className="signatures">
      {rows.map(({ fields }, index) => (
        <Fields key={index} fields={fields} plate={plate} />
      ))}
    </div>
  );
}

/** What an interpreter fills in, in a leaf of its own. */
export function interpreterBlock(block: OfType<'interpreter'>, place: Place): ReactElement {
  return (
    <div className="callout interpreter">
      <HeadingOf heading={place.heading(3, block.heading)} className="small-heading" />
      <BoxedWords words={block.ways} place={place} />
      <Paragraphs paragraphs={block.body} place={place} />
      <Fields fields={block.fields} plate={block.plate} />
    </div>
  );
}
