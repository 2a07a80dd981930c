import { composePacket } from './compose-packet.ts';
import { success } from './diagnostics/diagnostic.ts';
import type { Result } from './diagnostics/diagnostic.ts';
import { failAll } from './diagnostics/fail-all.ts';
import { documentAlone, identifyPacket } from './identify-packet.ts';
import type { FinishedPacket, OpenCase } from './model/packet.ts';
import { finishPacket } from './pipeline.ts';
import type { Prepared } from './prepare.ts';

/** The documents of a packet as files of their own. If one does not come back whole, none is handed out. */
export async function makeSeparately(
  prepared: Prepared,
  open: OpenCase,
  language: string,
): Promise<Result<readonly FinishedPacket[]>> {
  const identity = identifyPacket(prepared, open, language);
  const composed = composePacket(prepared, open, identity);
  if (!composed.ok) return composed;
  const made: Result<FinishedPacket>[] = [];
  for (const [index, tree] of composed.value.documents.entries()) {
    const packet = { ...composed.value, title: tree.title, documents: [tree] };
    const alone = documentAlone(identity, index);
    made.push(await finishPacket(prepared, open, { name: tree.kind, identity: alone, packet }));
  }
  const files = made.flatMap((result) => (result.ok ? [result.value] : []));
  if (files.length < made.length) return failAll(made);
  const warnings = made.flatMap((result) => (result.ok ? result.warnings : []));
  return success(files, [...composed.warnings, ...warnings]);
}
