import { isScalar, parseDocument, stringify } from 'yaml';
import type { Document } from 'yaml';

/**
 * A file of words with other texts for some of its keys (`comparison.title`); everything else stays as it is written. A
 * key that the file has not comes at the end of the group it belongs to.
 */
export function changeWords(file: string, changes: ReadonlyMap<string, string>): string {
  const document = parseDocument(file, { schema: 'failsafe' });
  const placed = [...changes].map(([key, text]) => ({ key, text, range: rangeOf(document, key) }));
  const patched = placed
    .flatMap(({ text, range }) => (range === undefined ? [] : [{ text, range }]))
    .sort((a, b) => b.range[0] - a.range[0])
    .reduce(
      (whole, { text, range }) => whole.slice(0, range[0]) + oneLine(text) + whole.slice(range[1]),
      file,
    );
  const added = placed.filter(({ range }) => range === undefined);
  if (added.length === 0) return patched;
  const changed = parseDocument(patched, { schema: 'failsafe' });
  for (const { key, text } of added) changed.setIn(pathOf(key), text);
  return changed.toString({ lineWidth: 0 });
}

/** Where the text of a key begins and ends in the file. */
function rangeOf(document: Document, key: string): readonly [number, number] | undefined {
  const node = document.getIn(pathOf(key), true);
  if (!isScalar(node) || !node.range) return undefined;
  return [node.range[0], node.range[1]];
}

/** Without the namespace, which is the name of the file. */
function pathOf(key: string): readonly string[] {
  return key.split('.').slice(1);
}

function oneLine(text: string): string {
  return stringify(text, { lineWidth: 0 }).trimEnd();
}
