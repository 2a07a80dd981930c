import type { DocumentTree } from '../../model/document.ts';
import type { FurniturePart } from '../page-furniture.ts';
import { webMarks } from '../../model/web-page.ts';
import { expectedTexts } from '../expected-texts.ts';
import { compactText } from '../normalize-text.ts';
import { compareBodies } from '../read-document.ts';
import type { DocumentReading } from '../read-document.ts';
import type { WebPage } from './read-page.ts';

/** Text of one part of a document, or of the page itself, as it stands there. */
export function textOfPart(page: WebPage, document: number | null, part: string): string {
  return page.texts
    .filter((text) => text.document === document && text.part === part && !text.repeated)
    .map(({ text }) => text)
    .join('\n');
}

/** All that stands in a document, whatever its part. */
function textOfDocument(page: WebPage, document: number): string {
  return page.texts
    .filter((text) => text.document === document)
    .map(({ text }) => text)
    .join('\n');
}

interface Fixed {
  readonly part: FurniturePart;
  readonly text: string;
}

/** What stands at the head and at the foot of every document. */
function fixedTexts({ furniture }: DocumentTree): {
  readonly head: readonly Fixed[];
  readonly foot: readonly Fixed[];
} {
  const { header, headerOnFirstPage, footer } = furniture;
  return {
    head: [
      ...webMarks(furniture).map(({ text }) => ({ part: 'tab', text }) as const),
      ...(headerOnFirstPage
        ? [header.start, header.end].map((text) => ({ part: 'header', text }) as const)
        : []),
    ],
    foot: [footer.call, footer.deferral, footer.id].map((text) => ({ part: 'footer', text }) as const),
  };
}

interface FixedReading {
  readonly absent: readonly FurniturePart[];
  /** Letters that are not of the texts looked for. */
  readonly letters: number;
}

function readFixed(text: string, wanted: readonly Fixed[]): FixedReading {
  let left = compactText(text);
  const absent: FurniturePart[] = [];
  for (const { part, text: sought } of wanted) {
    const compact = compactText(sought);
    if (left.startsWith(compact)) left = left.slice(compact.length);
    else absent.push(part);
  }
  return { absent, letters: left.length };
}

/** Compares one document of a page with its tree. A list counts its items by itself: no number of theirs is text. */
export function readWebDocument(tree: DocumentTree, index: number, page: WebPage): DocumentReading {
  const number = index + 1;
  const pages = [{ number, page: 1, pages: 1, text: textOfDocument(page, index) }];
  const { texts } = expectedTexts(tree);
  const counted = {
    texts: texts.filter(({ kind }) => kind !== 'counter'),
    repeated: [],
    compact: compactText,
  };
  const compared = compareBodies(counted, pages, [compactText(textOfPart(page, index, 'body'))]);
  const { head, foot } = fixedTexts(tree);
  const fixed = [
    readFixed(textOfPart(page, index, 'head'), head),
    readFixed(textOfPart(page, index, 'foot'), foot),
  ];
  const more = fixed.filter(({ letters }) => letters > 0).map(({ letters }) => ({ page: number, letters }));
  return {
    ...compared,
    tree,
    leftovers: [...compared.leftovers, ...more],
    absentFurniture: fixed.flatMap(({ absent }) => absent.map((part) => ({ page: number, part }))),
  };
}
