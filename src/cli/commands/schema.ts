import { caseJsonSchema, clinicJsonSchema } from '../../input/index.ts';
import { exitCodes } from '../../diagnostics/codes.ts';
import type { Call, Context } from '../context.ts';
import { textOption } from '../context.ts';
import { openPrepared } from '../open-prepared.ts';

/** plainleaf schema case | clinic */
export async function run(call: Call, context: Context): Promise<number> {
  const { terminal, workspace } = context;
  const schemas = new Map([
    ['case', caseJsonSchema],
    ['clinic', clinicJsonSchema],
  ]);
  const schemaOf = schemas.get(call.files[0] ?? '');
  if (schemaOf === undefined) {
    terminal.err('plainleaf: schema takes case or clinic.');
    return exitCodes.usage;
  }
  const prepared = await openPrepared(context);
  if (typeof prepared === 'number') return prepared;
  const text = JSON.stringify(schemaOf(prepared.known), null, 2);
  const out = textOption(call, 'out');
  if (out === undefined) terminal.out(text);
  else await workspace.write(out, `${text}\n`);
  return 0;
}
