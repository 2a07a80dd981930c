import type { Furniture } from './document.ts';
import type { Locale } from './locale.ts';
import { plainWords } from './plain-words.ts';

/** What the foot of an HTML page says of the packet, besides what its documents say of themselves. */
export interface WebPageIdentity {
  readonly caseReference: string;
  /** Day the packet is made for, ISO. */
  readonly date: string;
  readonly program: { readonly version: string };
  readonly evidence: { readonly version: string };
}

/** Words of an HTML page that no document has: ways around it, and what it is. */
export interface WebPageWords {
  readonly skip: string;
  /** Name of the list of documents. */
  readonly documents: string;
  /** Name of the list of the parts of a document. */
  readonly parts: string;
  readonly partsOf: (title: string) => string;
  readonly up: string;
  readonly about: readonly string[];
}

/** The renderer writes these words, and the read-back gate looks for them. */
export function webPageWords({ translator, formatter, tag }: Locale, page: WebPageIdentity): WebPageWords {
  const words = (key: string, variables: Readonly<Record<string, string>> = {}): string =>
    plainWords(translator.text(`web.${key}`, variables));
  return {
    skip: words('skip'),
    documents: words('documents'),
    parts: words('parts'),
    partsOf: (title) => words('parts_of', { title }),
    up: words('up'),
    about: [
      words('reference', { reference: page.caseReference }),
      words('made_on', { date: formatter.date(page.date) }),
      words('language', { language: formatter.languageName(tag) }),
      words('version', { version: page.program.version, evidence: page.evidence.version }),
      words('by_hand'),
    ],
  };
}

/** What an HTML page says of a packet that is not final. */
export interface WebMark {
  readonly text: string;
  /** Where it is not that of the page. */
  readonly language?: 'en';
}

/** As on the printed pages a draft says so to its reader, and in English to whoever hands it out. */
export function webMarks({ tab, draftEdges }: Pick<Furniture, 'tab' | 'draftEdges'>): readonly WebMark[] {
  const own = tab === undefined ? [] : [{ text: tab }];
  const [reader, english] = draftEdges ?? [];
  return english === undefined || english === reader ? own : [...own, { text: english, language: 'en' }];
}
