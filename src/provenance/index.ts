import type { DocumentTree } from '../model/document.ts';
import type { PrintEdition } from '../model/edition.ts';
import type { PacketState, PacketTree } from '../model/packet.ts';
import type { ProvenanceAttributes, ProvenanceRecord, Relation } from '../model/provenance.ts';
import { statementKind } from '../model/statement.ts';
import type { StatementKind } from '../model/statement.ts';
import type { WordsStanding } from '../model/words-review.ts';
import { describeReviews } from './describe-reviews.ts';
import { qualified } from './qualified-name.ts';
import { recordsOf, statementsOf } from './records-of-document.ts';

/** Digests are SHA-256 in hexadecimal. */
export interface ProvenanceInput {
  readonly packet: PacketTree;
  /** Id of each document, in the order of the packet. */
  readonly documentIds: readonly string[];
  readonly state: PacketState;
  readonly edition: PrintEdition;
  /** Day the packet is made for, ISO. */
  readonly date: string;
  readonly digests: {
    readonly case: string;
    readonly clinic: string;
    readonly templates: string;
    readonly words: string;
    readonly fonts: string;
  };
  /** How the words stand in the ledger of the clinic. */
  readonly review: WordsStanding;
  readonly evidence: {
    readonly version: string;
    readonly date: string;
    readonly nextReview: string;
    readonly digest: string;
  };
  readonly program: { readonly version: string; readonly lock: string };
  /** Its HTML edition, if one was made. */
  readonly html?: { readonly sha256: string };
}

const making = 'plainleaf:making';
const packetId = 'plainleaf:packet';
const program = 'plainleaf:program';

const prefix = {
  plainleaf: 'tag:plainleaf.example,2026:terms/',
  document: 'tag:plainleaf.example,2026:document/',
  record: 'tag:plainleaf.example,2026:record/',
  undo: 'tag:plainleaf.example,2026:undo/',
  caution: 'tag:plainleaf.example,2026:caution/',
  definition: 'tag:plainleaf.example,2026:definition/',
  aftercare: 'tag:plainleaf.example,2026:aftercare/',
} as const;

/** Writes down what a packet was made from. The same inputs give the same record; it holds no clock time. */
export function recordProvenance(input: ProvenanceInput): ProvenanceRecord {
  const reviews = describeReviews(input.review);
  const sources = { ...sourcesOf(input), ...reviews.entity };
  const documents = input.packet.documents.map((tree, index) => ({
    id: `document:${input.documentIds[index] ?? String(index + 1)}`,
    tree,
  }));
  const derivations = documents.flatMap(({ id, tree }) => derivationsOf(id, tree));
  const members = documents.map(({ id }) => ({ 'prov:collection': packetId, 'prov:entity': id }));
  const rows = new Set(derivations.map((derivation) => derivation['prov:usedEntity']));
  return {
    prefix,
    entity: {
      ...sources,
      ...Object.fromEntries([...rows].map((id) => [id, { 'prov:type': qualified(rowType(id)) }])),
      ...Object.fromEntries(documents.map(({ id, tree }) => [id, documentAttributes(tree)])),
      [packetId]: packetAttributes(input),
      ...htmlEntity(input),
    },
    activity: {
      [making]: { 'prov:type': qualified('plainleaf:Making'), 'plainleaf:date': input.date },
      ...reviews.activity,
    },
    agent: {
      [program]: {
        'prov:type': qualified('prov:SoftwareAgent'),
        'plainleaf:version': input.program.version,
        'plainleaf:lockSha256': input.program.lock,
      },
      ...reviews.agent,
    },
    wasGeneratedBy: numbered('g', [
      ...[packetId, ...documents.map(({ id }) => id), ...Object.keys(htmlEntity(input))].map((id) => ({
        'prov:entity': id,
        'prov:activity': making,
      })),
      ...reviews.wasGeneratedBy,
    ]),
    used: numbered(
      'u',
      Object.keys(sources).map((id) => ({ 'prov:activity': making, 'prov:entity': id })),
    ),
    wasAssociatedWith: numbered('a', [
      { 'prov:activity': making, 'prov:agent': program },
      ...reviews.wasAssociatedWith,
    ]),
    wasDerivedFrom: numbered('d', derivations),
    hadMember: numbered('m', members),
  };
}

type Derivation = Relation<'prov:generatedEntity' | 'prov:usedEntity'>;

/** What a document says, back to the rows of the evidence: its figures to records, its sentences to statements. */
function derivationsOf(document: string, tree: DocumentTree): readonly Derivation[] {
  return [
    ...recordsOf(tree).map(({ record, cells }) => ({
      'prov:generatedEntity': document,
      'prov:usedEntity': `record:${record}`,
      'plainleaf:cell': cells,
    })),
    ...statementsOf(tree).map(({ statement, figures }) => ({
      'prov:generatedEntity': document,
      'prov:usedEntity': statement,
      'plainleaf:printed': figures ? 'figures' : 'words',
    })),
  ];
}

const statementTypes: { readonly [K in StatementKind]: string } = {
  undo: 'plainleaf:UndoStatement',
  caution: 'plainleaf:CautionStatement',
  definition: 'plainleaf:Definition',
  aftercare: 'plainleaf:AftercareFact',
};

function rowType(id: string): string {
  const kind = statementKind(id);
  return kind === undefined ? 'plainleaf:EvidenceRecord' : statementTypes[kind];
}

function sourcesOf({
  packet,
  digests,
  evidence,
  review,
}: ProvenanceInput): Record<string, ProvenanceAttributes> {
  return {
    'plainleaf:case': {
      'prov:type': qualified('plainleaf:Case'),
      'plainleaf:reference': packet.caseReference,
      'plainleaf:sha256': digests.case,
    },
    'plainleaf:clinic-profile': {
      'prov:type': qualified('plainleaf:ClinicProfile'),
      'plainleaf:sha256': digests.clinic,
    },
    'plainleaf:evidence-release': {
      'prov:type': qualified('plainleaf:EvidenceRelease'),
      'plainleaf:version': evidence.version,
      'plainleaf:date': evidence.date,
      'plainleaf:nextReview': evidence.nextReview,
      'plainleaf:sha256': evidence.digest,
    },
    'plainleaf:templates': {
      'prov:type': qualified('plainleaf:Templates'),
      'plainleaf:sha256': digests.templates,
    },
    'plainleaf:words': {
      'prov:type': qualified('plainleaf:Words'),
      'plainleaf:language': packet.language,
      'plainleaf:sha256': digests.words,
      'plainleaf:reviewedSha256': review.digest,
      'plainleaf:reviewState': review.state,
    },
    'plainleaf:fonts': { 'prov:type': qualified('plainleaf:Fonts'), 'plainleaf:sha256': digests.fonts },
  };
}

function packetAttributes({ packet, state, edition, date }: ProvenanceInput): ProvenanceAttributes {
  return {
    'prov:type': qualified('prov:Collection'),
    'plainleaf:reference': packet.caseReference,
    'plainleaf:language': packet.language,
    'plainleaf:state': state,
    'plainleaf:edition': edition,
    'plainleaf:date': date,
  };
}

/** The page is made before the record that goes into the PDF, so that the record can hold its digest. */
function htmlEntity({ html }: ProvenanceInput): Record<string, ProvenanceAttributes> {
  if (html === undefined) return {};
  return {
    'plainleaf:html-edition': {
      'prov:type': qualified('plainleaf:HtmlEdition'),
      'plainleaf:mediaType': 'text/html',
      'plainleaf:sha256': html.sha256,
    },
  };
}

function documentAttributes(tree: DocumentTree): ProvenanceAttributes {
  return {
    'prov:type': qualified('plainleaf:Document'),
    'plainleaf:kind': tree.kind,
    'plainleaf:audience': tree.audience,
    'plainleaf:language': tree.language,
  };
}

/** Relations have no names of their own; PROV-JSON asks for one each, and `_:` marks it as local. */
function numbered<T>(letter: string, relations: readonly T[]): Record<string, T> {
  return Object.fromEntries(relations.map((relation, index) => [`_:${letter}${index + 1}`, relation]));
}
