/** Where two long texts part, with what stands there in each; null where they are the same. */
export function firstDifference(
  read: string,
  expected: string,
): { readonly read: string; readonly expected: string } | null {
  if (read === expected) return null;
  let at = 0;
  while (at < read.length && read.charAt(at) === expected.charAt(at)) at += 1;
  const around = (text: string): string => text.slice(Math.max(0, at - 40), at + 80);
  return { read: around(read), expected: around(expected) };
}
