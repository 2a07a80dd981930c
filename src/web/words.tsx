import type { ReactElement, ReactNode } from 'react';
import type { Inline, Paragraph } from '../model/document.ts';
import type { Place, PlacedHeading } from './place.ts';

/** Runs of a sentence: bold ones marked as such, and those in another language with its tag. */
export function Runs({ inlines }: { readonly inlines: readonly Inline[] }): ReactElement {
  return (
    <>
      {inlines.map((inline, index) => {
        const language = inline.type === 'text' ? inline.language : undefined;
        const said = language === undefined ? inline.value : <span lang={language}>{inline.value}</span>;
        return inline.bold === true ? <strong key={index}>{said}</strong> : <Bare key={index}>{said}</Bare>;
      })}
    </>
  );
}

function Bare({ children }: { readonly children: ReactNode }): ReactElement {
  return <>{children}</>;
}

/** Digits and a plus at the start: what a phone dials. */
function dialled(number: string): string {
  return `tel:${number.trim().startsWith('+') ? '+' : ''}${number.replace(/\D/g, '')}`;
}

export function PhoneLink({ number }: { readonly number: string }): ReactElement {
  return (
    <a className="phone" href={dialled(number)}>
      {number}
    </a>
  );
}

/** A text in which the phone numbers of the document can be called by a touch. */
export function WithPhones({
  text,
  phones,
}: {
  readonly text: string;
  readonly phones: readonly string[];
}): ReactElement {
  const known = phones.filter((phone) => phone !== '').sort((a, b) => b.length - a.length);
  const found = known
    .map((phone) => ({ phone, at: text.indexOf(phone) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at)[0];
  if (found === undefined) return <>{text}</>;
  const { phone, at } = found;
  return (
    <>
      {text.slice(0, at)}
      <PhoneLink number={phone} />
      <WithPhones text={text.slice(at + phone.length)} phones={phones} />
    </>
  );
}

/** The numbers of the foot, and a number that a paragraph is made of. */
function phonesIn(text: string, { tree }: Place): readonly string[] {
  return /^\+?[\d\s().-]+$/.test(text) ? [text] : tree.furniture.phones;
}

/** A paragraph of the role it has; the number of a strip is as large as on paper. */
export function Prose({
  paragraph,
  place,
}: {
  readonly paragraph: Paragraph;
  readonly place: Place;
}): ReactElement {
  const { role, duty, inlines } = paragraph;
  const single = inlines.length === 1 ? inlines[0] : undefined;
  const plain = single?.type === 'text' && single.bold !== true && single.language === undefined;
  return (
    <p className={role}>
      {duty === 'phone' && plain ? (
        <WithPhones text={single.value} phones={phonesIn(single.value, place)} />
      ) : (
        <Runs inlines={inlines} />
      )}
    </p>
  );
}

export function Paragraphs({
  paragraphs,
  place,
}: {
  readonly paragraphs: readonly Paragraph[];
  readonly place: Place;
}): ReactElement {
  return (
    <>
      {paragraphs.filter(hasWords).map((paragraph, index) => (
        <Prose key={index} paragraph={paragraph} place={place} />
      ))}
    </>
  );
}

export function hasWords({ inlines }: Paragraph): boolean {
  return inlines.some(({ value }) => value.trim() !== '');
}

/** Heading of a level that was counted before (see place.ts); `children` where its words are marked. */
export function HeadingOf({
  heading,
  className,
  children,
}: {
  readonly heading: PlacedHeading;
  readonly className?: string;
  readonly children?: ReactNode;
}): ReactElement {
  const Tag = `h${heading.level}` as const;
  return (
    <Tag id={heading.id} {...(className === undefined ? {} : { className })}>
      {children ?? heading.text}
    </Tag>
  );
}
