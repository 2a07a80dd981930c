import type { SourceSpan } from '../diagnostics/diagnostic.ts';
import { escapePattern } from '../model/word-forms.ts';
import { isText, textOf } from './layout-node.ts';
import type { SetNode } from './layout-node.ts';

/** A file that the clinic wrote. */
export interface WrittenFile {
  readonly file: string;
  readonly text: string;
}

/** As many letters of a paragraph are looked for: what follows may be joined to other words on the page. */
const sought = 40;
/** Shorter words stand in many places, and none of them is too long. */
const shortest = 12;

/** Where the longest of the words that overrun their column was written, if a person wrote it in one of these files. */
export function placeOfOverrun(node: SetNode, files: readonly WrittenFile[]): SourceSpan | undefined {
  const words = paragraphsIn(node)
    .filter(({ props }) => props.overrun === true)
    .flatMap((paragraph) => textOf(paragraph).split(' '));
  return firstPlace(words, files);
}

/** Every line of these files on which a sign stands, at its first place there. */
export function placesOf(sign: string, files: readonly WrittenFile[]): readonly SourceSpan[] {
  return files.flatMap(({ file, text }) =>
    text.split('\n').flatMap((line, index) => {
      const at = line.indexOf(sign);
      return at === -1 ? [] : [{ file, line: index + 1, column: at + 1 }];
    }),
  );
}

/** Where the longest paragraph of a block was written, if a person wrote it in one of these files. */
export function placeOfLongest(node: SetNode, files: readonly WrittenFile[]): SourceSpan | undefined {
  return firstPlace(paragraphsIn(node).map(textOf), files);
}

/** Boxes with the lines of one paragraph. */
function paragraphsIn(node: SetNode): readonly SetNode[] {
  const inner = node.children.filter((child): child is SetNode => !isText(child));
  if (inner.some(({ type }) => type === 'TEXT')) return [node];
  return inner.flatMap(paragraphsIn);
}

function firstPlace(texts: readonly string[], files: readonly WrittenFile[]): SourceSpan | undefined {
  const longestFirst = texts
    .map((text) => text.trim())
    .filter((text) => text.length >= shortest)
    .sort((a, b) => b.length - a.length);
  for (const text of longestFirst)
    for (const file of files) {
      const at = file.text.search(patternOf(text.slice(0, sought)));
      if (at !== -1) return spanAt(file, at);
    }
  return undefined;
}

/** White space in a file may be a line feed where a page has a space. */
function patternOf(text: string): RegExp {
  const parts = text.split(' ').map(escapePattern);
  return new RegExp(parts.join('\\s+'), 'u');
}

function spanAt({ file, text }: WrittenFile, at: number): SourceSpan {
  const before = text.slice(0, at).split('\n');
  return { file, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
