import { describe, expect, it } from 'vitest';

import { canonicalJson } from '../../../src/io/digest.ts';
import type { Inline } from '../../../src/model/document.ts';
import { recordProvenance } from '../../../src/provenance/index.ts';
import type { ProvenanceInput } from '../../../src/provenance/index.ts';
import { theCase } from '../../../src/model/statement.ts';
import { staleReview } from '../../helpers/batch-outcomes.ts';
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
  edition: 'standard',
  date: '2026-11-25',
  digests: { case: 'c1', clinic: 'c2', templates: 't1', words: 'w1', fonts: 'f1' },
  review: { digest: '8', state: 'unreviewed', reviews: [] },
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

  it('says who reviewed the words, what this person read, and whether the words are still those', () => {
    const older = { ...staleReview, digest: '1'.repeat(64), scope: ['consent' as const] };
    const { entity, activity, agent, used, wasGeneratedBy, wasAssociatedWith } = recordProvenance({
      ...input,
      review: {
        digest: staleReview.digest,
        state: 'reviewed',
        reviews: [
          { review: older, holds: false },
          { review: staleReview, holds: true },
        ],
      },
    });
    expect(entity['plainleaf:words']).toMatchObject({
      'plainleaf:reviewedSha256': staleReview.digest,
      'plainleaf:reviewState': 'reviewed',
    });
    expect(entity['plainleaf:words-review-1']).toMatchObject({
      'plainleaf:scope': ['consent'],
      'plainleaf:state': 'changed',
    });
    expect(entity['plainleaf:words-review-2']).toMatchObject({
      'plainleaf:language': 'es',
      'plainleaf:scope': 'all',
      'plainleaf:reviewedSha256': staleReview.digest,
      'plainleaf:state': 'holds',
    });
    expect(activity['plainleaf:review-2']).toMatchObject({ 'plainleaf:date': '2026-10-01' });
    expect(agent['plainleaf:reviewer-2']).toMatchObject({
      'plainleaf:name': 'M. Example',
      'plainleaf:role': 'translator',
      'plainleaf:qualification': 'certified for medical texts',
    });
    const pairs = [used, wasGeneratedBy, wasAssociatedWith].flatMap((group) => Object.values<object>(group));
    expect(pairs).toEqual(
      expect.arrayContaining([
        { 'prov:activity': 'plainleaf:making', 'prov:entity': 'plainleaf:words-review-2' },
        { 'prov:entity': 'plainleaf:words-review-2', 'prov:activity': 'plainleaf:review-2' },
        { 'prov:activity': 'plainleaf:review-2', 'prov:agent': 'plainleaf:reviewer-2' },
      ]),
    );
  });

  it('says that nobody has reviewed the words', () => {
    const { entity, agent } = recordProvenance(input);
    expect(entity['plainleaf:words']).toMatchObject({ 'plainleaf:reviewState': 'unreviewed' });
    expect(Object.keys(agent)).toEqual(['plainleaf:program']);
  });

  it('names the HTML edition with its digest, where there is one', () => {
    const { entity, wasGeneratedBy } = recordProvenance({ ...input, html: { sha256: 'h1' } });
    expect(entity['plainleaf:html-edition']).toMatchObject({ 'plainleaf:sha256': 'h1' });
    const made = Object.values(wasGeneratedBy).map((relation) => relation['prov:entity']);
    expect(made).toContain('plainleaf:html-edition');
    expect(Object.keys(recordProvenance(input).entity)).not.toContain('plainleaf:html-edition');
  });

  describe('with sentences that stand on rows of the evidence', () => {
    const standing = (value: string, ...statements: readonly string[]): Inline => ({
      type: 'text',
      value,
      statements,
    });
    const documents = [
      smallTree([
        {
          type: 'strip',
          layout: 'way-back',
          origin: 'a:1',
          rows: [
            {
              name: 'Bypass',
              origin: 'a:1',
              words: [
                paragraph('a:2', [
                  standing('Scars stay. ', 'undo:bypass'),
                  { ...standing('24 of 48 had a problem.', 'undo:bypass'), bold: true },
                  standing('It is not known.', 'undo:bypass#weight_after'),
                ]),
              ],
            },
          ],
        },
        paragraph('a:3', [standing('You have type 2 diabetes.', theCase)], 'caution'),
        paragraph('a:4', [
          standing(
            'From a BMI of 27.5.',
            'definition:asian-obesity-2022',
            'definition:indication-asian-2022',
          ),
        ]),
        paragraph('a:5', [figure('6', 'sleeve/leak/30d', ['sleeve.leak.30d.a'])]),
      ]),
      smallTree([paragraph('a:6', [standing('Ask about B12.', 'caution:b12-deficiency-others')])]),
    ];
    const record = recordProvenance({ ...input, packet: { ...input.packet, documents } });

    it('says for each document which ones, and whether a figure of them is printed', () => {
      const found = Object.values(record.wasDerivedFrom).map((relation) => [
        relation['prov:generatedEntity'].slice('document:PE-0417-en-'.length, -'-3f9a2c'.length),
        relation['prov:usedEntity'],
        relation['plainleaf:printed'],
      ]);
      expect(found).toEqual([
        ['1', 'record:sleeve.leak.30d.a', undefined],
        ['1', 'definition:asian-obesity-2022', 'figures'],
        ['1', 'definition:indication-asian-2022', 'figures'],
        ['1', 'undo:bypass', 'figures'],
        ['1', 'undo:bypass#weight_after', 'words'],
        ['2', 'caution:b12-deficiency-others', 'words'],
      ]);
    });

    it('describes each with a type of its own, and keeps the case as it was', () => {
      const typeOf = (id: string): unknown => record.entity[id]?.['prov:type'];
      const qualified = (name: string): unknown => ({ $: name, type: 'prov:QUALIFIED_NAME' });
      expect(typeOf('record:sleeve.leak.30d.a')).toEqual(qualified('plainleaf:EvidenceRecord'));
      expect(typeOf('undo:bypass')).toEqual(qualified('plainleaf:UndoStatement'));
      expect(typeOf('undo:bypass#weight_after')).toEqual(qualified('plainleaf:UndoStatement'));
      expect(typeOf('caution:b12-deficiency-others')).toEqual(qualified('plainleaf:CautionStatement'));
      expect(typeOf('definition:asian-obesity-2022')).toEqual(qualified('plainleaf:Definition'));
      expect(typeOf('plainleaf:case')).toEqual(qualified('plainleaf:Case'));
      expect(Object.keys(record.prefix)).toEqual(expect.arrayContaining(['undo', 'caution', 'definition']));
    });

    it('holds none of their words, which may repeat the case', () => {
      expect(canonicalJson(record)).not.toMatch(/type 2|Scars|27\.5/);
    });
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
