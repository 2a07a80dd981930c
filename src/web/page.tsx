import { Fragment } from 'react';
import type { ReactElement } from 'react';
import type { PacketTree } from '../model/packet.ts';
import { webMarks } from '../model/web-page.ts';
import type { WebPageWords } from '../model/web-page.ts';
import { makeDocument } from './document.tsx';
import { PeopleGroups } from './people-groups.tsx';
import { markOnPaper, styleSheet } from './style/index.ts';
import { HeadingWords, Words } from './whole-words.tsx';

/**
 * Nothing is fetched and nothing runs: not from this file, and not from words that somebody put into a case. The style
 * sheet is in the page.
 */
const policy =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

function Head({ packet }: { readonly packet: PacketTree }): ReactElement {
  const marks = webMarks(packet.documents[0]?.furniture ?? {});
  return (
    <head>
      <meta charSet="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <meta httpEquiv="Content-Security-Policy" content={policy} />
      <meta name="color-scheme" content="light only" />
      <meta name="referrer" content="no-referrer" />
      <meta name="format-detection" content="telephone=no" />
      <title>{`${packet.title} · ${packet.author}`}</title>
      <style dangerouslySetInnerHTML={{ __html: styleSheet + markOnPaper(marks.map(({ text }) => text)) }} />
    </head>
  );
}

interface PageProps {
  readonly packet: PacketTree;
  readonly words: WebPageWords;
}

/** A packet as one page: the documents one after another, and ways to each. */
export function Page({ packet, words }: PageProps): ReactElement {
  const direction = packet.documents[0]?.direction ?? 'ltr';
  const made = packet.documents.map((tree, index) => makeDocument(tree, index, words));
  return (
    <html lang={packet.language} dir={direction}>
      <Head packet={packet} />
      <body>
        <a className="skip" href="#text" data-page="skip">
          {words.skip}
        </a>
        <header>
          <p className="clinic" data-page="clinic">
            {packet.author}
          </p>
          <nav id="documents" aria-label={words.documents} data-page="documents">
            <ul role="list">
              {made.map(({ id, title }) => (
                <li key={id}>
                  <a href={`#${id}`}>
                    <HeadingWords text={title} />
                  </a>
                </li>
              ))}
            </ul>
          </nav>
        </header>
        <main id="text" tabIndex={-1}>
          <PeopleGroups documents={packet.documents} direction={direction} />
          {made.map(({ id, element }) => (
            <Fragment key={id}>{element}</Fragment>
          ))}
        </main>
        <footer data-page="about">
          {words.about.map((line, index) => (
            <p key={index}>
              <Words text={line} />
            </p>
          ))}
        </footer>
      </body>
    </html>
  );
}
