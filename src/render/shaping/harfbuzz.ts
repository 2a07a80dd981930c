import { Blob, Buffer, ClusterLevel, Direction, Face as ShaperFace, Font, shape } from 'harfbuzzjs';
import type { Face } from '../fonts.ts';

/** One glyph of a shaped text, from left to right. Lengths in units of the face. */
export interface ShapedGlyph {
  readonly id: number;
  /** Where the characters that it stands for begin in the text; glyphs of one cluster have the same. */
  readonly cluster: number;
  readonly advance: number;
  readonly offset: { readonly x: number; readonly y: number };
}

const shapers = new WeakMap<Face, Font>();

function shaperOf(face: Face): Font {
  const known = shapers.get(face);
  if (known !== undefined) return known;
  const shaper = new Font(new ShaperFace(new Blob(face.stream.buffer)));
  shapers.set(face, shaper);
  return shaper;
}

/**
 * Glyphs of a text of one script, one face and one direction, as HarfBuzz joins, orders and places them. Brackets of a
 * text from right to left are mirrored.
 */
export function shapeText(text: string, face: Face, rightToLeft: boolean): readonly ShapedGlyph[] {
  const buffer = new Buffer();
  buffer.addText(text);
  // A vowel sign keeps its own place in the text, so that each glyph can be read as its own letter.
  buffer.setClusterLevel(ClusterLevel.MONOTONE_CHARACTERS);
  buffer.guessSegmentProperties();
  buffer.setDirection(rightToLeft ? Direction.RTL : Direction.LTR);
  shape(shaperOf(face), buffer);
  const positions = buffer.getGlyphPositions();
  return buffer.getGlyphInfos().map(({ codepoint, cluster }, index) => {
    const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[index] ?? {};
    return { id: codepoint, cluster, advance: xAdvance, offset: { x: xOffset, y: yOffset } };
  });
}
