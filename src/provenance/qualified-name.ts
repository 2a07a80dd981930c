import type { QualifiedName } from '../model/provenance.ts';

/** A type as PROV-JSON writes it. */
export function qualified(name: string): QualifiedName {
  return { $: name, type: 'prov:QUALIFIED_NAME' };
}
