/** Marks of direction and joining, which steer how a line is set and print nothing: U+200B–200F, 202A–202E, 2060–2069. */
const steering = /[\u200b-\u200f\u202a-\u202e\u2060-\u2069]/;
const steeringAll = new RegExp(steering, 'g');

export function isInvisible(codePoint: number): boolean {
  return steering.test(String.fromCodePoint(codePoint));
}

/** A text as a reader sees it. */
export function withoutInvisible(text: string): string {
  return text.replace(steeringAll, '');
}
