import type { Diagnostic, SourceSpan } from '../diagnostics/diagnostic.ts';
import type { DocumentTree } from '../model/document.ts';
import { covers } from './fonts.ts';
import { placesOf } from './place-of-words.ts';
import type { WrittenFile } from './place-of-words.ts';
import { printable } from './printable-text.ts';
import { isInvisible } from './shaping/invisible.ts';
import { typefaces } from './shaping/typefaces.ts';

/** Keys of the document tree whose text is never printed: said by a screen reader, or of use to the program only. */
const unprinted: ReadonlySet<string> = new Set(['origin', 'alt', 'title', 'language', 'cell', 'records']);

/**
 * One error for every code point and place that the typeface has no glyph for: it would come out as another character
 * or as an empty box. Names the code point and where a person wrote it in these files, else the template line; never the
 * text around it. Call loadFonts first.
 */
export function checkGlyphs(
  documents: readonly DocumentTree[],
  files: readonly WrittenFile[] = [],
): readonly Diagnostic[] {
  const found = new Map<string, Diagnostic>();
  for (const document of documents) {
    visit(document, `${document.kind} document`, (text, origin) => {
      for (const codePoint of codePointsWithoutGlyph(text)) {
        const written = placesOf(String.fromCodePoint(codePoint), files);
        const name = `U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}`;
        for (const span of written)
          found.set(`${name} ${span.file}:${span.line}`, writtenWithout(name, span));
        if (written.length === 0) found.set(`${name} ${origin}`, missingGlyph(name, origin));
      }
    });
  }
  return [...found.values()];
}

/** Code points of a text, as it is printed, that no typeface which is loaded can show in every weight. */
export function codePointsWithoutGlyph(text: string): readonly number[] {
  const codePoints = new Set(Array.from(printable(text), (character) => character.codePointAt(0) ?? 0));
  return [...codePoints].filter(
    (codePoint) => !isInvisible(codePoint) && !typefaces.some((typeface) => covers(typeface, codePoint)),
  );
}

/** Every printed string below a value, with the origin of the nearest node around it. */
function visit(value: unknown, origin: string, report: (text: string, origin: string) => void): void {
  if (typeof value === 'string') report(value, origin);
  else if (Array.isArray(value)) for (const entry of value) visit(entry, origin, report);
  else if (typeof value === 'object' && value !== null) visitNode(value, origin, report);
}

function visitNode(node: object, around: string, report: (text: string, origin: string) => void): void {
  const origin = 'origin' in node && typeof node.origin === 'string' ? node.origin : around;
  for (const [key, value] of Object.entries(node)) if (!unprinted.has(key)) visit(value, origin, report);
}

function writtenWithout(name: string, span: SourceSpan): Diagnostic {
  return {
    code: 'RENDER_GLYPH_MISSING',
    severity: 'error',
    message: `the typeface has no character ${name}, which stands here`,
    hint: 'Spell it another way, or leave it out.',
    span,
  };
}

function missingGlyph(name: string, origin: string): Diagnostic {
  return {
    code: 'RENDER_GLYPH_MISSING',
    severity: 'error',
    message: `the typeface has no character ${name}, which the text made by ${origin} holds`,
    hint: 'Spell it another way; look in the words of this language and in the free text of the case and the clinic profile.',
    ...placeOf(origin),
  };
}

/** The span of an origin that names a file and a line, for example `templates/comparison/main.hbs:12`. */
export function placeOf(origin: string | undefined): { readonly span?: SourceSpan } {
  const match = /^(.+?):(\d+)(?::(\d+))?$/.exec(origin ?? '');
  if (match?.[1] === undefined) return {};
  return { span: { file: match[1], line: Number(match[2]), column: Number(match[3] ?? 1) } };
}
