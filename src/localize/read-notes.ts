import { isMap, isNode, isScalar, parseDocument } from 'yaml';

/**
 * What the comments of a file of words say of each text: the one at the head of the file, those above the groups that the
 * text belongs to, and its own. By key, with the namespace.
 */
export function readNotes(text: string, namespace: string): ReadonlyMap<string, string> {
  const document = parseDocument(text, { schema: 'failsafe' });
  const notes = new Map<string, string>();
  const head = [document.commentBefore, isNode(document.contents) ? document.contents.commentBefore : null];
  walk(document.contents, { path: namespace, said: head.flatMap(tidy), notes });
  return notes;
}

interface Walking {
  readonly path: string;
  readonly said: readonly string[];
  readonly notes: Map<string, string>;
}

function walk(node: unknown, { path, said, notes }: Walking): void {
  if (!isMap(node)) {
    if (said.length > 0) notes.set(path, said.join(' '));
    return;
  }
  for (const [at, { key, value }] of node.items.entries()) {
    if (!isScalar(key)) continue;
    // The comment above the first of a group is that of the group.
    const own = at === 0 && node.commentBefore === undefined ? [] : tidy(key.commentBefore);
    const above = tidy(isNode(value) ? value.commentBefore : null);
    walk(value, { path: `${path}.${String(key.value)}`, said: [...said, ...own, ...above], notes });
  }
}

function tidy(comment: string | null | undefined): readonly string[] {
  const text = (comment ?? '').replace(/\s+/g, ' ').trim();
  return text === '' ? [] : [text];
}
