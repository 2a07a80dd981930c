import { Fragment } from 'react';
import type { ReactElement, ReactNode } from 'react';
import { ownDirection } from '../model/left-to-right.ts';
import type { Inline, Label, Paragraph } from '../model/document.ts';
import { Directed, Isolated, directedParts } from './directed.tsx';
import type { Place, PlacedHeading } from './place.ts';
import { HeadingWords, Words } from './whole-words.tsx';

/** Runs of a sentence: bold ones marked as such, and those in another language with its tag. */
export function Runs({
  inlines,
  place,
}: {
  readonly inlines: readonly Inline[];
  readonly place: Place;
}): ReactElement {
  const phones = phonesOf(place).filter((phone) => phone.replace(/\D/g, '').length >= digitsOfAPhone);
  const run = (inline: Inline, text: string, key: number): ReactElement => (
    <Run key={key} inline={inline} text={text} phones={phones} />
  );
  if (place.tree.direction === 'ltr') return <>{inlines.map((one, index) => run(one, one.value, index))}</>;
  return (
    <>
      {directedParts(inlines).map(({ isolated, pieces }, index) => {
        const runs = pieces.map(({ inline, text }, at) => run(inline, text, at));
        return isolated ? <Isolated key={index}>{runs}</Isolated> : <Fragment key={index}>{runs}</Fragment>;
      })}
    </>
  );
}

/** Words of a name or a label. */
export function LabelWords({ label, place }: { readonly label: Label; readonly place: Place }): ReactElement {
  return typeof label === 'string' ? (
    <Directed text={label} place={place} />
  ) : (
    <Runs inlines={label} place={place} />
  );
}

interface RunProps {
  readonly inline: Inline;
  /** As much of it as stands here. */
  readonly text: string;
  readonly phones: readonly string[];
}

function Run({ inline, text, phones }: RunProps): ReactElement {
  const words = inline.type === 'text' ? <WithPhones text={text} phones={phones} /> : <Words text={text} />;
  const language = inline.type === 'text' ? inline.language : undefined;
  const said = language === undefined ? words : <span lang={language}>{words}</span>;
  return inline.bold === true ? <strong>{said}</strong> : <>{said}</>;
}

/** Fewer could be any number in a sentence; where a paragraph is there to be called, they count too. */
const digitsOfAPhone = 5;

/** Every number that the document may give to call. */
export function phonesOf({ tree }: Place): readonly string[] {
  const { phones, otherPhones = [] } = tree.furniture;
  return [...phones, ...otherPhones];
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

/** A text in which these phone numbers can be called by a touch, where they stand whole. */
export function WithPhones({
  text,
  phones,
}: {
  readonly text: string;
  readonly phones: readonly string[];
}): ReactElement {
  const found = phones
    .map((phone) => ({ phone, at: placeOf(phone, text) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at || b.phone.length - a.phone.length)[0];
  if (found === undefined) return <Words text={text} />;
  const { phone, at } = found;
  return (
    <>
      <Words text={text.slice(0, at)} />
      <PhoneLink number={phone} />
      <WithPhones text={text.slice(at + phone.length)} phones={phones} />
    </>
  );
}

/**
 * Where a number stands that is no part of a longer one, or of an id; -1 if nowhere. Chinese words stand right beside it,
 * and Korean ones right after it.
 */
function placeOf(phone: string, text: string): number {
  if (phone === '') return -1;
  let at = text.indexOf(phone);
  while (
    at >= 0 &&
    (/[\p{Script=Latin}\d+-]$/u.test(text.slice(0, at)) ||
      /^[\p{Script=Latin}\d]/u.test(text.slice(at + phone.length)))
  )
    at = text.indexOf(phone, at + 1);
  return at;
}

/** The numbers of the clinic, and a number that a paragraph is made of. */
function phonesIn(text: string, place: Place): readonly string[] {
  return /^\+?[\d\s().-]+$/.test(text) ? [text] : phonesOf(place);
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
  const own = ownDirection(inlines, place.tree.direction);
  return (
    <p className={role} {...(own === undefined ? {} : { dir: own })}>
      {duty === 'phone' && plain ? (
        <WithPhones text={single.value} phones={phonesIn(single.value, place)} />
      ) : (
        <Runs inlines={inlines} place={place} />
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
  dir,
  lang,
  children,
}: {
  readonly heading: PlacedHeading;
  readonly className?: string;
  readonly dir?: 'ltr' | 'rtl' | undefined;
  /** Where it is not the document's. */
  readonly lang?: string | undefined;
  readonly children?: ReactNode;
}): ReactElement {
  const Tag = `h${heading.level}` as const;
  return (
    <Tag
      id={heading.id}
      {...(className === undefined ? {} : { className })}
      {...(dir === undefined ? {} : { dir })}
      lang={lang}
    >
      {children ?? <HeadingWords text={heading.text} />}
    </Tag>
  );
}
