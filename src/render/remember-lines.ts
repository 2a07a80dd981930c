import { faceOf } from './fonts.ts';
import type { Face } from './fonts.ts';
import type { SetNode } from './layout-node.ts';

type SetLines = NonNullable<SetNode['lines']>;

/** Some 6 KB each; enough for what the packets of a few languages have in common. */
const rememberedLines = 4_000;
const linesByFace = new WeakMap<Face, Map<string, SetLines>>();

/**
 * Lines as the typesetter left them, by what they hold and how it is set. Most of a packet does not depend on the person:
 * in a batch it is set once. Of use only for text whose setting does not depend on its surroundings (see text.tsx).
 */
export function recallLines(key: string): SetLines | undefined {
  return known().get(key);
}

export function rememberLines(key: string, lines: SetLines): void {
  const all = known();
  if (all.size >= rememberedLines) all.clear();
  all.set(key, lines);
}

/** Kept with the face they were set in, so that other font files never meet them. */
function known(): Map<string, SetLines> {
  const face = faceOf(400);
  const lines = linesByFace.get(face) ?? new Map<string, SetLines>();
  linesByFace.set(face, lines);
  return lines;
}
