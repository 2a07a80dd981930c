import { PDFParse } from 'pdf-parse';

/** A finished file as an independent reader sees it. */
export interface ReadBack {
  /** Text of each page in painting order, as the reader gives it. */
  readonly pages: readonly string[];
  /** Language of the document catalog, if there is one. */
  readonly language: string | undefined;
  /** Attached files by name. */
  readonly attachments: ReadonlyMap<string, Uint8Array>;
}

/** Marks of lines are kept as the reader found them; nothing is guessed from positions or rewritten. */
const plainText = {
  lineEnforce: false,
  cellSeparator: '',
  pageJoiner: '',
  disableNormalization: true,
} as const;

/** Opens a finished PDF with pdf-parse. Null when it cannot be opened or a page cannot be read. */
export async function readBack(pdf: Uint8Array): Promise<ReadBack | null> {
  // The reader takes the bytes for itself, so it gets a copy.
  const parser = new PDFParse({ data: pdf.slice(), verbosity: 0 });
  try {
    const text = await parser.getText({ ...plainText });
    const information: object = await parser.getInfo();
    const catalog: unknown = Reflect.get(information, 'info');
    const language = isObject(catalog) ? catalog['Language'] : undefined;
    return {
      pages: text.pages.map((page) => page.text),
      language: typeof language === 'string' ? language : undefined,
      attachments: await readAttachments(parser),
    };
  } catch {
    return null;
  } finally {
    await parser.destroy();
  }
}

/** The reader has no method of its own for attachments; the opened document it holds (pdf.js) has one. */
async function readAttachments(parser: PDFParse): Promise<ReadonlyMap<string, Uint8Array>> {
  const opened: unknown = Reflect.get(parser, 'doc');
  if (!isObject(opened) || typeof opened['getAttachments'] !== 'function') return new Map();
  const found: unknown = await Promise.resolve(Reflect.apply(opened['getAttachments'], opened, []));
  const attachments = new Map<string, Uint8Array>();
  for (const [name, file] of Object.entries(isObject(found) ? found : {})) {
    if (isObject(file) && file['content'] instanceof Uint8Array) attachments.set(name, file['content']);
  }
  return attachments;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
