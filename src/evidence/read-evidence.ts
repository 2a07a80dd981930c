import type { z } from 'zod';

import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result, SourceSpan } from '../diagnostics/diagnostic.ts';
import type { DataFile } from './data-files.ts';
import { describeIssue } from './describe-issue.ts';
import { EvidenceListsSchema } from './evidence-set.ts';
import type { EvidenceLists, EvidenceSet } from './evidence-set.ts';
import { parseDataFile } from './parse-data-file.ts';
import type { DataPath, ParsedFile } from './parse-data-file.ts';

type SingleName = 'release' | 'topics';
type ListName = Exclude<keyof EvidenceLists, SingleName>;

/** Files that hold one thing, and not a list. */
const singleFiles: Readonly<Record<SingleName, string>> = { release: 'release.yaml', topics: 'topics.yaml' };

const listFiles: Readonly<Record<ListName, string>> = {
  options: 'options.yaml',
  outcomes: 'outcomes.yaml',
  metrics: 'metrics.yaml',
  studies: 'studies/',
  records: 'records/',
  reversibility: 'reversibility.yaml',
  cautions: 'cautions.yaml',
  cautionCoverage: 'caution-coverage.yaml',
  standing: 'standing.yaml',
  riskFactors: 'risk-factors.yaml',
  definitions: 'definitions.yaml',
  reasons: 'reasons.yaml',
  criteria: 'criteria.yaml',
  consentElements: 'consent-elements.yaml',
  aftercare: 'aftercare/',
  aftercareSources: 'aftercare-sources.yaml',
  copySites: 'copy-sites.yaml',
  arithmeticExceptions: 'arithmetic-exceptions.yaml',
};
const belongsTo = (path: string, place: string): boolean =>
  place.endsWith('/') ? path.startsWith(place) : path === place;

interface Origin {
  readonly parsed: ParsedFile;
  readonly path: DataPath;
}

/** Collects everything that is wrong with the shape of the files before giving up. */
class Reader {
  readonly problems: Diagnostic[] = [];
  readonly origins = new WeakMap<object, Origin>();
  readonly #folder: string;

  constructor(folder: string) {
    this.#folder = folder;
  }

  open(file: DataFile): ParsedFile {
    const parsed = parseDataFile(`${this.#folder}/${file.path}`, file.text);
    this.problems.push(...parsed.problems);
    return parsed;
  }

  /** Validates one entry; undefined if it does not fit, with the reasons in `problems`. */
  entry<T extends object>(schema: z.ZodType<T>, raw: unknown, origin: Origin): T | undefined {
    const checked = schema.safeParse(raw);
    if (!checked.success) {
      this.problems.push(
        ...checked.error.issues.flatMap((issue) => describeIssue(issue, { raw, ...origin })),
      );
      return undefined;
    }
    this.origins.set(checked.data, origin);
    return checked.data;
  }

  single<T extends object>(schema: z.ZodType<T>, files: readonly DataFile[]): T | undefined {
    const parsed = files.map((file) => this.open(file))[0];
    return parsed?.content === undefined
      ? undefined
      : this.entry(schema, parsed.content, { parsed, path: [] });
  }

  list<T extends object>(schema: z.ZodType<T>, files: readonly DataFile[]): T[] {
    return files.flatMap((file) => {
      const parsed = this.open(file);
      if (parsed.content === undefined) return [];
      if (!Array.isArray(parsed.content)) {
        this.refuse('the file must hold a list', parsed.spanAt([]), 'Start each entry with "- ".');
        return [];
      }
      const entries = parsed.content.map((raw: unknown, index) =>
        this.entry(schema, raw, { parsed, path: [index] }),
      );
      return entries.filter((entry) => entry !== undefined);
    });
  }

  refuse(message: string, span: SourceSpan, hint: string): void {
    this.problems.push({ code: 'EVIDENCE_INVALID', severity: 'error', message, hint, span });
  }
}

/** Reads and validates all data files. The value still knows where each entry stands. */
export function readEvidence(files: readonly DataFile[], folder: string): Result<EvidenceSet> {
  const reader = new Reader(folder);
  const { shape } = EvidenceListsSchema;
  const filesOf = (name: ListName): readonly DataFile[] =>
    files.filter((file) => belongsTo(file.path, listFiles[name]));
  checkFileNames(reader, files, folder);
  const singleOf = (name: SingleName): readonly DataFile[] =>
    files.filter((file) => file.path === singleFiles[name]);
  const release = reader.single(shape.release, singleOf('release'));
  const topics = reader.single(shape.topics, singleOf('topics'));
  const lists = {
    options: reader.list(shape.options.element, filesOf('options')),
    outcomes: reader.list(shape.outcomes.element, filesOf('outcomes')),
    metrics: reader.list(shape.metrics.element, filesOf('metrics')),
    studies: reader.list(shape.studies.element, filesOf('studies')),
    records: reader.list(shape.records.element, filesOf('records')),
    reversibility: reader.list(shape.reversibility.element, filesOf('reversibility')),
    cautions: reader.list(shape.cautions.element, filesOf('cautions')),
    cautionCoverage: reader.list(shape.cautionCoverage.element, filesOf('cautionCoverage')),
    standing: reader.list(shape.standing.element, filesOf('standing')),
    riskFactors: reader.list(shape.riskFactors.element, filesOf('riskFactors')),
    definitions: reader.list(shape.definitions.element, filesOf('definitions')),
    reasons: reader.list(shape.reasons.element, filesOf('reasons')),
    criteria: reader.list(shape.criteria.element, filesOf('criteria')),
    consentElements: reader.list(shape.consentElements.element, filesOf('consentElements')),
    aftercare: reader.list(shape.aftercare.element, filesOf('aftercare')),
    aftercareSources: reader.list(shape.aftercareSources.element, filesOf('aftercareSources')),
    copySites: reader.list(shape.copySites.element, filesOf('copySites')),
    arithmeticExceptions: reader.list(shape.arithmeticExceptions.element, filesOf('arithmeticExceptions')),
  };
  if (release === undefined || topics === undefined || reader.problems.length > 0)
    return failure(reader.problems);
  const place: EvidenceSet['place'] = (entry, path = []) => {
    const origin = reader.origins.get(entry);
    return origin?.parsed.spanAt([...origin.path, ...path]);
  };
  return success({ release, topics, ...lists, place });
}

function checkFileNames(reader: Reader, files: readonly DataFile[], folder: string): void {
  const places = [...Object.values(singleFiles), ...Object.values(listFiles)];
  for (const place of places.filter((wanted) => !files.some((file) => belongsTo(file.path, wanted)))) {
    reader.refuse(`${place} is missing`, { file: `${folder}/${place}`, line: 1, column: 1 }, 'Add the file.');
  }
  for (const file of files.filter(({ path }) => !places.some((place) => belongsTo(path, place)))) {
    const span = { file: `${folder}/${file.path}`, line: 1, column: 1 };
    reader.refuse('this file is not part of the evidence', span, `Use one of ${places.join(', ')}.`);
  }
}
