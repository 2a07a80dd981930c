/**
 * Where a packet comes from, in the terms of W3C PROV-DM (Recommendation of 30 April 2013) and the shape of
 * PROV-JSON (W3C Member Submission of 24 April 2013), so that general tools for provenance can read it.
 * Of the patient it holds the clinic's own case reference and nothing else; of those who reviewed the words what they
 * are to be known by in the clinic's ledger.
 */
export interface ProvenanceRecord {
  /** Short names of namespaces. */
  readonly prefix: Readonly<Record<string, string>>;
  readonly entity: Readonly<Record<string, ProvenanceAttributes>>;
  readonly activity: Readonly<Record<string, ProvenanceAttributes>>;
  readonly agent: Readonly<Record<string, ProvenanceAttributes>>;
  readonly wasGeneratedBy: Readonly<Record<string, Relation<'prov:entity' | 'prov:activity'>>>;
  readonly used: Readonly<Record<string, Relation<'prov:activity' | 'prov:entity'>>>;
  readonly wasAssociatedWith: Readonly<Record<string, Relation<'prov:activity' | 'prov:agent'>>>;
  readonly wasDerivedFrom: Readonly<Record<string, Relation<'prov:generatedEntity' | 'prov:usedEntity'>>>;
  readonly hadMember: Readonly<Record<string, Relation<'prov:collection' | 'prov:entity'>>>;
}

/** A text, a qualified name, or several of either. */
export type ProvenanceValue = string | QualifiedName | readonly string[];

export interface QualifiedName {
  readonly $: string;
  readonly type: 'prov:QUALIFIED_NAME';
}

export type ProvenanceAttributes = Readonly<Record<string, ProvenanceValue>>;

/** Both ends by their identifiers, and attributes of the relation. */
export type Relation<Ends extends string> = Readonly<Record<Ends, string>> & ProvenanceAttributes;
