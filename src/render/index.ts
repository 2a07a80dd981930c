import type { Result } from '../diagnostics/diagnostic.ts';
import type { PacketTree, RenderedPacket } from '../model/packet.ts';
import { blockUnits } from './blocks/index.tsx';
import { pageFurniture } from './furniture.tsx';
import { renderPacket } from './render-packet.ts';
import type { RenderOptions } from './render-packet.ts';

export { digestFonts, digestFontsOf, loadFonts } from './fonts.ts';
export type { RenderOptions } from './render-packet.ts';

/**
 * Document trees → one PDF: tagged, archivable (PDF/UA-1, PDF/A-3a), the same bytes for the same input.
 * Errors, all collected: RENDER_GLYPH_MISSING, RENDER_OVERFLOW; FILE_NOT_FOUND for a font file.
 */
export async function renderPdf(packet: PacketTree, options: RenderOptions): Promise<Result<RenderedPacket>> {
  return renderPacket(packet, options, { blockUnits, pageFurniture });
}
