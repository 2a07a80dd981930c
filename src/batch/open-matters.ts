import { locatePath } from '../input/index.ts';
import type { FieldPlace } from '../input/index.ts';
import type { OpenPoint } from '../model/open-point.ts';
import type { OpenCase } from '../model/packet.ts';

/** An open point of a packet, its texts where a person finds them. */
export type OpenMatter =
  | Exclude<OpenPoint, { readonly code: 'free_text' }>
  | { readonly code: 'free_text'; readonly texts: readonly FieldPlace[] };

/** Gives the texts that are not written in the language of a packet their places in the files of its case. */
export function placePoints(
  { files }: Pick<OpenCase, 'files'>,
  points: readonly OpenPoint[],
): readonly OpenMatter[] {
  return points.map((point) => {
    if (point.code !== 'free_text') return point;
    const find = { case: locatePath(files.case), clinic: locatePath(files.clinic) };
    return { code: 'free_text', texts: point.texts.map((text) => find[text.in](text.path)) };
  });
}
