import { createHash } from 'node:crypto';

/** SHA-256 of text (as UTF-8) or bytes, as 64 lower-case hex digits. */
export function sha256(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}

/**
 * The one spelling of a JSON value, after RFC 8785: no spaces, keys in order of their UTF-16 units, numbers as
 * ECMAScript prints them. Keys whose value is undefined are left out. Throws a TypeError for what JSON cannot
 * hold: NaN, infinities, functions, big integers and text with half a surrogate pair.
 */
export function canonicalJson(value: unknown): string {
  switch (typeof value) {
    case 'string':
      return quote(value);
    case 'boolean':
      return String(value);
    case 'number':
      if (!Number.isFinite(value)) throw new TypeError('JSON has no such number');
      return JSON.stringify(value);
    case 'object':
      return value === null ? 'null' : structure(value);
    default:
      throw new TypeError(`JSON has no ${typeof value}`);
  }
}

function structure(value: object): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  const members = Object.entries(value)
    .filter(([, member]) => member !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, member]) => `${quote(key)}:${canonicalJson(member)}`);
  return `{${members.join(',')}}`;
}

function quote(text: string): string {
  if (/\p{Surrogate}/u.test(text)) throw new TypeError('JSON text must be whole Unicode characters');
  return JSON.stringify(text);
}
