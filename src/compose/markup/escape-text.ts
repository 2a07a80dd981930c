const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Escapes plain text for use as element content or inside a quoted attribute. */
export function escapeText(text: string): string {
  return text.replace(/[&<>"]/g, (character) => escapes[character] ?? character);
}

const reference = /&(#x[0-9a-fA-F]+|#[0-9]+|[a-z]+);/g;

/** Text behind character references; null if a reference is not one of XML's five or a number. */
export function unescapeText(markup: string): string | null {
  if (/&(?!(?:#x[0-9a-fA-F]+|#[0-9]+|[a-z]+);)/.test(markup)) return null;
  const names = [...markup.matchAll(reference)].map(([, name = '']) => name);
  if (names.some((name) => decode(name) === undefined)) return null;
  return markup.replace(reference, (whole, name: string) => decode(name) ?? whole);
}

function decode(name: string): string | undefined {
  if (!name.startsWith('#')) return Object.hasOwn(entities, name) ? entities[name] : undefined;
  const point = name.startsWith('#x') ? Number.parseInt(name.slice(2), 16) : Number(name.slice(1));
  return point > 0 && point <= 0x10ffff ? String.fromCodePoint(point) : undefined;
}

/** Words without their figures' ties and all other tags. */
export function withoutTags(markup: string): string {
  return markup.replace(/<[^>]*>/g, '');
}

/** Plain text of a locale's words: their only markup is <b>…</b>. */
export function plainText(markup: string): string {
  return unescapeText(markup.replace(/<\/?b>/g, '')) ?? markup;
}
