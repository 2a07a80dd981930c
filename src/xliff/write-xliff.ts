import { DOMImplementation, XMLSerializer } from '@xmldom/xmldom';
import type { Document, Element } from '@xmldom/xmldom';

import { InternalError } from '../diagnostics/diagnostic.ts';
import type { Translation, TranslationUnit } from '../model/translation.ts';
import { readPieces, variableNames } from './inline-codes.ts';
import type { Piece } from './inline-codes.ts';
import { codeIds, core, idOf, sizes } from './names.ts';

/**
 * An XLIFF 2.0 file for a translator: a `file` for each file of words, a `unit` for each text with its note, its longest
 * length (module sizerestriction, in characters) and its variables as codes that must not be lost. A text that somebody has
 * read is `final`, one that nobody has read is `translated`, one without words is `initial`.
 */
export function writeXliff({ sourceLanguage, language, units }: Translation): string {
  const document = new DOMImplementation().createDocument(core, 'xliff', null);
  const root = document.documentElement;
  if (root === null) throw new InternalError('an XML document has no root');
  const writer = new Writer(document);
  writer.attributes(root, { version: '2.0', srcLang: sourceLanguage, trgLang: language });
  root.setAttributeNS('http://www.w3.org/2000/xmlns/', 'xmlns:slr', sizes);
  for (const name of new Set(units.map(fileOf))) {
    writer.text(root, '\n');
    const file = writer.add(root, 'file', { id: idOf(name), original: `${name}.yaml` });
    const profiles = document.createElementNS(sizes, 'slr:profiles');
    profiles.setAttribute('generalProfile', 'xliff:codepoints');
    file.appendChild(profiles);
    for (const unit of units) if (fileOf(unit) === name) writer.unit(file, unit);
    writer.text(file, '\n');
  }
  const written = new XMLSerializer().serializeToString(document);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written}\n`;
}

function fileOf({ key }: TranslationUnit): string {
  return key.split('.')[0] ?? key;
}

function stateOf({ target, reviewed }: TranslationUnit): string {
  if (target === null) return 'initial';
  return reviewed ? 'final' : 'translated';
}

class Writer {
  readonly #document: Document;

  constructor(document: Document) {
    this.#document = document;
  }

  attributes(element: Element, values: Readonly<Record<string, string>>): void {
    for (const [name, value] of Object.entries(values)) element.setAttribute(name, value);
  }

  add(parent: Element, name: string, values: Readonly<Record<string, string>> = {}): Element {
    const element = this.#document.createElementNS(core, name);
    this.attributes(element, values);
    parent.appendChild(element);
    return element;
  }

  unit(file: Element, given: TranslationUnit): void {
    this.text(file, '\n');
    const unit = this.add(file, 'unit', { id: idOf(given.key), name: given.key });
    if (given.longest !== null) unit.setAttributeNS(sizes, 'slr:sizeRestriction', String(given.longest));
    if (given.note !== '') this.text(this.add(this.add(unit, 'notes'), 'note'), given.note);
    const source = readPieces(given.source) ?? [];
    const target = given.target === null ? null : readPieces(given.target);
    const names = [...new Set([...variableNames(source), ...variableNames(target ?? [])])];
    if (names.length > 0) {
      const data = this.add(unit, 'originalData');
      for (const name of names) this.text(this.add(data, 'data', { id: `d.${name}` }), `{{${name}}}`);
    }
    const segment = this.add(unit, 'segment', { state: stateOf(given) });
    this.pieces(this.add(segment, 'source'), source, new Set(variableNames(source)));
    if (target !== null) this.pieces(this.add(segment, 'target'), target, new Set(variableNames(source)));
  }

  /** `known` are the variables of the source: one that the target alone has stands for none of its codes. */
  pieces(parent: Element, pieces: readonly Piece[], known: ReadonlySet<string>): void {
    const nextId = codeIds();
    const visit = (element: Element, each: readonly Piece[]): void => {
      for (const piece of each) {
        if (piece.type === 'words') this.text(element, piece.text);
        else if (piece.type === 'bold')
          visit(this.add(element, 'pc', { id: nextId('b'), type: 'fmt', subType: 'xlf:b' }), piece.pieces);
        else this.add(element, 'ph', this.#code(nextId(piece.name), piece.name, known));
      }
    };
    visit(parent, pieces);
  }

  #code(id: string, name: string, known: ReadonlySet<string>): Readonly<Record<string, string>> {
    const kept = known.has(name) && name !== 'count' ? { canDelete: 'no' } : {};
    return {
      id,
      dataRef: `d.${name}`,
      equiv: `{{${name}}}`,
      disp: name,
      type: 'other',
      subType: 'plainleaf:variable',
      ...kept,
    };
  }

  text(element: Element, text: string): void {
    element.appendChild(this.#document.createTextNode(text));
  }
}
