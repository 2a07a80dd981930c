/** A piece of a text: words, a variable that a translator must keep, or the start or end of bold words. */
export type Piece =
  | { readonly type: 'words'; readonly text: string }
  | { readonly type: 'variable'; readonly name: string }
  | { readonly type: 'bold'; readonly pieces: readonly Piece[] };

const escapes: readonly (readonly [string, string])[] = [
  ['&lt;', '<'],
  ['&gt;', '>'],
  ['&amp;', '&'],
];

/** Splits a text of the files of words; null where its bold marks do not pair. */
export function readPieces(text: string): readonly Piece[] | null {
  const parts = text.split(/(\{\{\w+\}\}|<\/?b>)/).filter((part) => part !== '');
  const outer: Piece[] = [];
  let inner: Piece[] | null = null;
  for (const part of parts) {
    if (part === '<b>' || part === '</b>') {
      if ((part === '<b>') !== (inner === null)) return null;
      if (inner !== null) outer.push({ type: 'bold', pieces: inner });
      inner = inner === null ? [] : null;
    } else (inner ?? outer).push(pieceOf(part));
  }
  return inner === null ? outer : null;
}

function pieceOf(part: string): Piece {
  const [, name] = /^\{\{(\w+)\}\}$/.exec(part) ?? [];
  if (name !== undefined) return { type: 'variable', name };
  const text = escapes.reduce((said, [escaped, character]) => said.replaceAll(escaped, character), part);
  return { type: 'words', text };
}

/** The text as the files of words hold it. */
export function writePieces(pieces: readonly Piece[]): string {
  return pieces
    .map((piece) => {
      if (piece.type === 'variable') return `{{${piece.name}}}`;
      if (piece.type === 'bold') return `<b>${writePieces(piece.pieces)}</b>`;
      return piece.text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
    })
    .join('');
}

/** Names of the variables in order, each as often as it stands there. */
export function variableNames(pieces: readonly Piece[]): readonly string[] {
  return pieces.flatMap((piece) => {
    if (piece.type === 'bold') return variableNames(piece.pieces);
    return piece.type === 'variable' ? [piece.name] : [];
  });
}
