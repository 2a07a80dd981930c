import type { ReactElement } from 'react';
import type { DocumentTree } from '../model/document.ts';
import { webMarks } from '../model/web-page.ts';
import type { WebPageWords } from '../model/web-page.ts';
import { blockElements } from './blocks/index.tsx';
import { openPlace } from './place.ts';
import type { PlacedHeading } from './place.ts';
import { WithPhones } from './words.tsx';
import { Ends, Words } from './whole-words.tsx';

/** A document that is ready to stand on the page, and where it can be found. */
export interface MadeDocument {
  readonly id: string;
  readonly title: string;
  readonly element: ReactElement;
}

/** Fewer parts than this are seen at a glance. */
const PARTS_TO_LIST = 3;

/** Links to the parts of a document, shut until they are asked for. */
function Parts({
  title,
  parts,
  words,
}: {
  readonly title: string;
  readonly parts: readonly PlacedHeading[];
  readonly words: WebPageWords;
}): ReactElement | null {
  if (parts.length < PARTS_TO_LIST) return null;
  return (
    <nav aria-label={words.partsOf(title)} data-page="parts">
      <details>
        <summary>{words.parts}</summary>
        <ul>
          {parts.map(({ id, text }) => (
            <li key={id}>
              <a href={`#${id}`}>
                <Words text={text} />
              </a>
            </li>
          ))}
        </ul>
      </details>
    </nav>
  );
}

/** What every page of a printed document says at its foot, once at the end. */
function DocumentFoot({ tree }: { readonly tree: DocumentTree }): ReactElement {
  const { footer, phones } = tree.furniture;
  return (
    <div className="foot" data-page="foot">
      <p className="strong">
        <WithPhones text={footer.call} phones={phones} />
      </p>
      <p>
        <Words text={footer.deferral} />
      </p>
      <p>
        <Words text={footer.id} />
      </p>
    </div>
  );
}

/** The cover of a document says for whom it is, and from whom. */
function DocumentHead({ tree }: { readonly tree: DocumentTree }): ReactElement {
  const { header, headerOnFirstPage } = tree.furniture;
  return (
    <div className="head" data-page="head">
      {webMarks(tree.furniture).map(({ text, language }) => (
        <p key={text} className="tab" {...(language === undefined ? {} : { lang: language, dir: 'ltr' })}>
          <Words text={text} />
        </p>
      ))}
      {headerOnFirstPage ? <Ends start={header.start} end={header.end} /> : null}
    </div>
  );
}

/** One document of the packet: its head, its blocks in the order of the tree, its foot. */
export function makeDocument(tree: DocumentTree, index: number, words: WebPageWords): MadeDocument {
  const id = `document-${String(index + 1)}`;
  const { place, headings } = openPlace(tree, id);
  const blocks = blockElements(tree.blocks, place);
  const [first] = headings;
  const title = first?.text ?? tree.title;
  const named = first === undefined ? { 'aria-label': title } : { 'aria-labelledby': first.id };
  const element = (
    <article id={id} className={tree.audience} lang={tree.language} dir={tree.direction} {...named}>
      <DocumentHead tree={tree} />
      <Parts title={title} parts={headings.filter(({ level }) => level === 2)} words={words} />
      <div className="body" data-page="body">
        {blocks}
      </div>
      <DocumentFoot tree={tree} />
      <p className="up">
        <a href="#documents" data-page="up">
          {words.up}
        </a>
      </p>
    </article>
  );
  return { id, title, element };
}
