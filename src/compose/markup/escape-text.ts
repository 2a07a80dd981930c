const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Escapes plain text for use as element content or inside a quoted attribute. */
export function escapeText(text: string): string {
  return text.replace(/[&<>"]/g, (character) => escapes[character] ?? character);
}

/** Text behind character references; null if a reference is not one of XML's five or a number. */
export function unescapeText(markup: string): string | null {
  let broken = false;
  const text = markup.replace(/&(#x[0-9a-fA-F]+|#[0-9]+|[a-z]+)?(;)?/g, (reference: string, name?: string, end?: string) => {
    const value = end === undefined || name === undefined ? undefined : decode(name);
    if (value === undefined) broken = true;
    return value ?? reference;
  });
  return broken ? null : text;
}

function decode(name: string): string | undefined {
  if (!name.startsWith('#')) return entities[name];
  const point = name.startsWith('#x') ? Number.parseInt(name.slice(2), 16) : Number(name.slice(1));
  return point > 0 && point <= 0x10ffff ? String.fromCodePoint(point) : undefined;
}

/** Plain text of a locale's words: their only markup is <b>…</b>. */
export function plainText(markup: string): string {
  return unescapeText(markup.replace(/<\/?b>/g, '')) ?? markup;
}
