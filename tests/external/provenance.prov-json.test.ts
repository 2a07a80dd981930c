// Source: PROV-JSON schema, W3C Member Submission of 24 April 2013, https://www.w3.org/submissions/prov-json/schema
// (names of properties and required ends, written down by hand; read 2026-11-25), which spells the types and
// relations of PROV-DM, W3C Recommendation of 30 April 2013, section 5.
import { describe, expect, it } from 'vitest';

import { recordProvenance } from '../../src/provenance/index.ts';
import { staleReview } from '../helpers/batch-outcomes.ts';
import { figure, paragraph, smallTree } from '../helpers/small-tree.ts';

/** Every property a PROV-JSON document may have (additionalProperties: false). The schema writes wasEndedby. */
const properties = new Set([
  'prefix',
  'entity',
  'activity',
  'agent',
  'wasGeneratedBy',
  'used',
  'wasInformedBy',
  'wasStartedBy',
  'wasEndedby',
  'wasInvalidatedBy',
  'wasDerivedFrom',
  'wasAttributedTo',
  'wasAssociatedWith',
  'actedOnBehalfOf',
  'wasInfluencedBy',
  'specializationOf',
  'alternateOf',
  'hadMember',
  'bundle',
]);

/** Ends of a relation: those the schema requires, then all the prov: attributes it knows for it. */
const ends: Record<string, { required: string[]; known: string[] }> = {
  wasGeneratedBy: { required: ['prov:entity'], known: ['prov:entity', 'prov:activity', 'prov:time'] },
  used: { required: ['prov:entity'], known: ['prov:entity', 'prov:activity', 'prov:time'] },
  wasAssociatedWith: { required: ['prov:activity'], known: ['prov:activity', 'prov:agent', 'prov:plan'] },
  wasDerivedFrom: {
    required: ['prov:generatedEntity', 'prov:usedEntity'],
    known: ['prov:generatedEntity', 'prov:usedEntity', 'prov:activity', 'prov:generation', 'prov:usage'],
  },
  hadMember: { required: ['prov:collection', 'prov:entity'], known: ['prov:collection', 'prov:entity'] },
};

/** PROV-DM section 5.7.2.4 (prov:type): the types that PROV itself names. */
const types = new Set([
  'prov:Bundle',
  'prov:Collection',
  'prov:EmptyCollection',
  'prov:Organization',
  'prov:Person',
  'prov:Plan',
  'prov:PrimarySource',
  'prov:Quotation',
  'prov:Revision',
  'prov:SoftwareAgent',
]);

const record = recordProvenance({
  packet: {
    caseReference: 'PE-1',
    language: 'en',
    title: 't',
    author: 'a',
    documents: [
      smallTree([
        paragraph('a:1', [figure('6', 'sleeve/leak/30d', ['sleeve.leak.30d.a'])]),
        paragraph('a:2', [{ type: 'text', value: '1 of 48', statements: ['undo:bypass#weight_after'] }]),
      ]),
    ],
  },
  documentIds: ['PE-1-en-1'],
  state: 'draft',
  edition: 'standard',
  date: '2026-11-25',
  digests: { case: '1', clinic: '2', templates: '3', words: '4', fonts: '5' },
  review: {
    digest: '8',
    state: 'changed',
    reviews: [
      { review: { ...staleReview, scope: ['comparison', 'consent'] }, holds: false },
      { review: staleReview, holds: true },
    ],
  },
  evidence: { version: '2026.11', date: '2026-11-25', nextReview: '2027-11-25', digest: '6' },
  program: { version: '0.1.0', lock: '7' },
});

describe('the provenance record against the PROV-JSON schema', () => {
  it('has only properties that the schema knows', () => {
    expect(Object.keys(record).filter((key) => !properties.has(key))).toEqual([]);
  });

  it('names both ends of each relation as the schema does', () => {
    const relations = Object.entries(record).filter(
      ([key]) => !['prefix', 'entity', 'activity', 'agent'].includes(key),
    );
    expect(relations.map(([key]) => key).sort((a, b) => (a < b ? -1 : 1))).toEqual(
      Object.keys(ends).sort((a, b) => (a < b ? -1 : 1)),
    );
    for (const [key, items] of relations) {
      const each = Object.values(items as Record<string, object>);
      expect(each).not.toEqual([]);
      for (const item of each) {
        const own = Object.keys(item).filter((attribute) => attribute.startsWith('prov:'));
        expect(own).toEqual(expect.arrayContaining(ends[key]?.required ?? []));
        expect(own.filter((attribute) => !ends[key]?.known.includes(attribute))).toEqual([]);
      }
    }
  });

  it('names types as qualified names, of PROV or of a declared prefix', () => {
    const described = [record.entity, record.activity, record.agent].flatMap((group) => Object.values(group));
    const named = described.map((attributes) => attributes['prov:type']);
    expect(named.length).toBeGreaterThan(13);
    for (const type of named) {
      expect(type).toMatchObject({ type: 'prov:QUALIFIED_NAME' });
      const { $: qualified } = type as { $: string };
      const [prefix] = qualified.split(':');
      expect(types.has(qualified) || Object.keys(record.prefix).includes(prefix ?? '')).toBe(true);
    }
  });

  it('describes both ends of every relation', () => {
    const { prefix, entity, activity, agent, ...relations } = record;
    expect(Object.keys(prefix)).not.toEqual([]);
    const described = new Set([entity, activity, agent].flatMap((group) => Object.keys(group)));
    const named = Object.values(relations).flatMap((items) =>
      Object.values(items as Readonly<Record<string, object>>).flatMap((item) =>
        Object.entries(item).flatMap(([key, id]) => (key.startsWith('prov:') ? [String(id)] : [])),
      ),
    );
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((id) => !described.has(id))).toEqual([]);
  });
});
