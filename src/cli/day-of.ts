import type { Call, Context } from './context.ts';
import { textOption } from './context.ts';

/** The day asked for, else today where this machine stands. ISO. */
export function dayOf(call: Call, { workspace }: Context): string {
  const given = textOption(call, 'date');
  if (given !== undefined) return given;
  const now = workspace.now();
  const parts = [now.getFullYear(), now.getMonth() + 1, now.getDate()];
  return parts.map((part) => String(part).padStart(2, '0')).join('-');
}
