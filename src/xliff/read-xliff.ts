import { DOMParser, ParseError } from '@xmldom/xmldom';
import type { Element, Node } from '@xmldom/xmldom';

import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result, SourceSpan } from '../diagnostics/diagnostic.ts';
import { writePieces } from './inline-codes.ts';
import type { Piece } from './inline-codes.ts';
import { core } from './names.ts';

/** A text as a translator handed it back. */
export interface ReturnedUnit {
  readonly key: string;
  readonly source: string;
  /** Null: not translated. */
  readonly target: string | null;
  /** Where it stands in the file. */
  readonly span: SourceSpan;
}

export interface ReturnedTranslation {
  readonly language: string;
  readonly units: readonly ReturnedUnit[];
}

/**
 * Reads an XLIFF 2 file. Fails with TRANSLATION_INVALID, at its line, for what is no such file or has marks that the words
 * cannot hold. Several segments of one unit are put together again.
 */
export function readXliff(text: string, file: string): Result<ReturnedTranslation> {
  const root = parseXml(text);
  if (root instanceof ParseError) {
    const at = root.locator as Place | undefined;
    return failure([invalid(root.message.replace(/^.* caused ParseError: /s, ''), spanOf(file, at))]);
  }
  const language = root?.getAttribute('trgLang') ?? '';
  if (root?.namespaceURI !== core || root.localName !== 'xliff' || language === '')
    return failure([invalid('this is no XLIFF 2 file with a target language', spanOf(file, root))]);
  const faults: Diagnostic[] = [];
  const units = elementsIn(root, 'unit').map((unit) => readUnit(unit, file, faults));
  return faults.length > 0 ? failure(faults) : success({ language, units });
}

interface Place {
  readonly lineNumber?: number;
  readonly columnNumber?: number;
}

function parseXml(text: string): Element | ParseError | null {
  try {
    return new DOMParser({ onError: stopAtFault }).parseFromString(text, 'application/xml').documentElement;
  } catch (error) {
    if (error instanceof ParseError) return error;
    throw error;
  }
}

function stopAtFault(level: string, message: string): void {
  if (level !== 'warning') throw new ParseError(message);
}

function readUnit(unit: Element, file: string, faults: Diagnostic[]): ReturnedUnit {
  const span = spanOf(file, unit);
  const data = new Map(
    elementsIn(unit, 'data').map((each) => [each.getAttribute('id') ?? '', each.textContent ?? '']),
  );
  const join = (name: 'source' | 'target'): string | null => {
    const parts = partsOf(unit).map((part) => elementsIn(part, name)[0]);
    if (
      name === 'target' &&
      parts.every((part) => part === undefined || (part.textContent === '' && part.childNodes.length === 0))
    )
      return null;
    return parts
      .map((part) => (part === undefined ? '' : writePieces(piecesOf(part, { data, file, faults }))))
      .join('');
  };
  return { key: unit.getAttribute('name') ?? '', source: join('source') ?? '', target: join('target'), span };
}

/** Segments and what stands between them, in order. */
function partsOf(unit: Element): readonly Element[] {
  return childElements(unit).filter(({ localName }) => localName === 'segment' || localName === 'ignorable');
}

interface Reading {
  readonly data: ReadonlyMap<string, string>;
  readonly file: string;
  readonly faults: Diagnostic[];
}

function piecesOf(parent: Element, reading: Reading): readonly Piece[] {
  return Array.from(parent.childNodes).flatMap((node): readonly Piece[] => {
    if (node.nodeType === node.TEXT_NODE || node.nodeType === node.CDATA_SECTION_NODE)
      return [{ type: 'words', text: node.nodeValue ?? '' }];
    if (node.nodeType !== node.ELEMENT_NODE) return [];
    return pieceOf(node as Element, reading);
  });
}

function pieceOf(element: Element, reading: Reading): readonly Piece[] {
  // A mark of a translator's tool round words says nothing about them.
  if (element.localName === 'mrk') return piecesOf(element, reading);
  if (element.localName === 'pc') return [{ type: 'bold', pieces: piecesOf(element, reading) }];
  const said = reading.data.get(element.getAttribute('dataRef') ?? '') ?? '';
  const [, name] = /^\{\{(\w+)\}\}$/.exec(said) ?? [];
  if (element.localName === 'ph' && name !== undefined) return [{ type: 'variable', name }];
  const what = `<${element.localName ?? ''}>`;
  reading.faults.push(
    invalid(`${what} stands for nothing that the words can hold`, spanOf(reading.file, element)),
  );
  return [];
}

function elementsIn(parent: Element, name: string): readonly Element[] {
  return Array.from(parent.getElementsByTagNameNS(core, name));
}

function childElements(parent: Element): readonly Element[] {
  const isElement = (node: Node): node is Element => node.nodeType === node.ELEMENT_NODE;
  return Array.from(parent.childNodes).filter(isElement);
}

function spanOf(file: string, at: Place | null | undefined): SourceSpan {
  return { file, line: Math.max(at?.lineNumber ?? 1, 1), column: Math.max(at?.columnNumber ?? 1, 1) };
}

function invalid(message: string, span: SourceSpan): Diagnostic {
  const hint = 'Ask for the file again as plainleaf languages export wrote it, with its codes.';
  return { code: 'TRANSLATION_INVALID', severity: 'error', message, hint, span };
}
