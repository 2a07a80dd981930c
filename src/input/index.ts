export { checkTogether } from './check-together.ts';
export type { Pairing } from './check-together.ts';
export { caseJsonSchema, clinicJsonSchema } from './json-schema.ts';
export { readCase } from './read-case.ts';
export { readClinic } from './read-clinic.ts';
export type { ReadContext } from './read-context.ts';
export type { SourceFile } from './read-file.ts';
export { withNoOperation } from './with-no-operation.ts';
