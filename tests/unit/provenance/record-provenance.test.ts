import { describe, expect, it } from 'vitest';

import { canonicalJson } from '../../../src/io/digest.ts';
import { recordProvenance } from '../../../src/provenance/index.ts';
import type { ProvenanceInput } from '../../../src/provenance/index.ts';
import { figure, paragraph, smallTree } from '../../helpers/small-tree.ts';

const namedTitle = 'My choices, for Ilsa Marchetti-Boone';

const input: ProvenanceInput = {
  packet: {
    caseReference: 'PE-0417',
    language: 'en',
    title: namedTitle,
    author: 'Clinic of the North',
    documents: [
      smallTree(
        [
          {
            type: 'callout',
            kind: 'health',
            heading: 'Your health',
            origin: 'a:1',
            body: [
              paragraph('a:2', [
                figure('6 out of 1,000', 'sleeve/leak/30d', ['sleeve.leak.30d.b', 'sleeve.leak.30d.a']),
                figure('9 out of 1,000', 'sleeve/leak/1y', ['sleeve.leak.30d.a']),
              ]),
            ],
          },
        ],
        { title: namedTitle },
      ),
      smallTree([], { kind: 'questions' }),
    ],
  },
  documentIds: ['PE-0417-en-1-3f9a2c', 'PE-0417-en-2-3f9a2c'],
  state: 'example',
  date: '2026-11-25',
  digests: { case: 'c1', clinic: 'c2', templates: 't1', words: 'w1', fonts: 'f1' },
  evidence: { version: '2026.11', date: '2026-11-25', nextReview: '2027-11-25', digest: 'e1' },
  program: { version: '0.1.0', lock: 'l1' },
};

describe('the provenance of a packet', () => {
  it('says for each document which records it prints, and in which cells', () => {
    const { wasDerivedFrom } = recordProvenance(input);
    expect(Object.values(wasDerivedFrom)).toEqual([
      {
        'prov:generatedEntity': 'document:PE-0417-en-1-3f9a2c',
        'prov:usedEntity': 'record:sleeve.leak.30d.a',
        'plainleaf:cell': ['sleeve/leak/1y', 'sleeve/leak/30d'],
      },
      {
        'prov:generatedEntity': 'document:PE-0417-en-1-3f9a2c',
        'prov:usedEntity': 'record:sleeve.leak.30d.b',
        'plainleaf:cell': ['sleeve/leak/30d'],
      },
    ]);
  });

  it('holds a digest of everything the packet was made from', () => {
    const { entity, agent } = recordProvenance(input);
    const digests = Object.fromEntries(
      Object.entries(entity).flatMap(([id, attributes]) =>
        'plainleaf:sha256' in attributes ? [[id, attributes['plainleaf:sha256']]] : [],
      ),
    );
    expect(digests).toEqual({
      'plainleaf:case': 'c1',
      'plainleaf:clinic-profile': 'c2',
      'plainleaf:evidence-release': 'e1',
      'plainleaf:templates': 't1',
      'plainleaf:words': 'w1',
      'plainleaf:fonts': 'f1',
    });
    expect(agent['plainleaf:program']).toMatchObject({
      'plainleaf:version': '0.1.0',
      'plainleaf:lockSha256': 'l1',
    });
  });

  it('says the language, the state, the day and the documents', () => {
    const { entity, hadMember } = recordProvenance(input);
    expect(entity['plainleaf:packet']).toMatchObject({
      'plainleaf:reference': 'PE-0417',
      'plainleaf:language': 'en',
      'plainleaf:state': 'example',
      'plainleaf:date': '2026-11-25',
    });
    expect(Object.values(hadMember).map((member) => member['prov:entity'])).toEqual([
      'document:PE-0417-en-1-3f9a2c',
      'document:PE-0417-en-2-3f9a2c',
    ]);
  });

  it('holds nothing of the person but the case reference', () => {
    expect(canonicalJson(recordProvenance(input))).not.toMatch(/Ilsa|Marchetti|1981/);
  });

  it('is the same text for the same inputs', () => {
    expect(canonicalJson(recordProvenance(input))).toBe(
      canonicalJson(recordProvenance(structuredClone(input))),
    );
  });

  it('refers only to entities, activities and agents that it describes', () => {
    const record = recordProvenance(input);
    const described = new Set([
      ...Object.keys(record.entity),
      ...Object.keys(record.activity),
      ...Object.keys(record.agent),
    ]);
    const relations = [
      record.wasGeneratedBy,
      record.used,
      record.wasAssociatedWith,
      record.wasDerivedFrom,
      record.hadMember,
    ];
    const ends = relations.flatMap((relation) =>
      Object.values(relation).flatMap((item: object): [string, unknown][] => Object.entries(item)),
    );
    const unknown = ends.filter(([key, value]) => key.startsWith('prov:') && !described.has(String(value)));
    expect(ends.length).toBeGreaterThan(20);
    expect(unknown).toEqual([]);
  });
});
