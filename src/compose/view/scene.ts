import { InternalError } from '../../diagnostics/diagnostic.ts';
import type { AftercarePlan } from '../../model/aftercare-plan.ts';
import type { Case } from '../../model/case.ts';
import type { ClinicProfile } from '../../model/clinic.ts';
import type { ComparisonTable, OptionColumn } from '../../model/comparison.ts';
import type { EvidenceBase } from '../../model/evidence.ts';
import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { CheckedElement } from '../../model/consent-element.ts';
import type { DocumentScore } from '../../model/document-score.ts';
import type { Formatter, Locale } from '../../model/locale.ts';
import type { PacketState } from '../../model/packet.ts';
import type { PrintedFigures } from '../../model/printed-figures.ts';
import type { DocumentReading } from '../../model/reading-level.ts';
import type { Drawings } from '../drawings/read-drawings.ts';
import { drawSoleOutcome } from './draw-sole-outcome.ts';
import { makeWords } from './words.ts';
import type { Words } from './words.ts';

/** What a document is made from. */
export interface SceneInput {
  readonly case: Case;
  readonly clinic: ClinicProfile;
  readonly evidence: EvidenceBase;
  readonly comparison: ComparisonTable;
  /** Null until a treatment is chosen and its day is set. */
  readonly aftercare: AftercarePlan | null;
  readonly locale: Locale;
  readonly state: PacketState;
  /** ISO date that the pages carry. */
  readonly date: string;
  readonly documentId: string;
  /** How hard the documents made before this one are to read. */
  readonly readings?: readonly DocumentReading[];
  /** The other languages that there are. */
  readonly otherLocales?: readonly Locale[];
  /** What the patient pages of the packet print; nothing where they are not made yet. */
  readonly printed?: PrintedFigures;
  /** How the patient documents of the packet stand against published criteria. */
  readonly score?: DocumentScore;
  /** What a consent must hold, and where the record of the talk of this packet holds it. */
  readonly consent?: readonly CheckedElement[];
  /** What operations do to a body. */
  readonly drawings?: Drawings;
}

/** An option with the words that stand for it everywhere. */
export interface NamedOption {
  readonly code: string;
  readonly column: OptionColumn;
  readonly name: string;
  readonly inText: string;
  /** "Under study", or empty. */
  readonly tag: string;
}

/** The input of a document together with its words: what every part of the view model is built from. */
export interface Scene extends SceneInput {
  readonly drawings: Drawings;
  readonly words: Words;
  readonly format: Formatter;
  readonly options: readonly NamedOption[];
  /** Unit that comes first on the page; ranges and changes are said in it alone. */
  readonly unit: 'metric' | 'us';
  readonly records: ReadonlyMap<string, EvidenceRecord>;
}

export function createScene(input: SceneInput): Scene {
  const words = makeWords(input.locale);
  const options = input.comparison.options.map((column): NamedOption => {
    const { code } = column;
    const underStudy = column.standing.maturity === 'under-study';
    return {
      code,
      column,
      name: words.plain(`options.${code}.name`),
      inText: words.plain(`options.${code}.in_text`),
      tag: underStudy ? words.plain('common.under_study') : '',
    };
  });
  const unit = input.clinic.clinic.units === 'metric' ? 'metric' : 'us';
  const records = new Map(input.evidence.records.map((record) => [record.id, record]));
  const { drawings = new Map() } = input;
  const comparison = drawSoleOutcome(input.comparison);
  return { ...input, comparison, drawings, words, format: input.locale.formatter, options, unit, records };
}

/** The options with these codes, in the order of the case. */
export function optionsNamed(scene: Scene, codes: readonly string[]): readonly NamedOption[] {
  return scene.options.filter((option) => codes.includes(option.code));
}

/** "a sleeve and a gastric bypass". */
export function optionList(scene: Scene, codes: readonly string[], join: 'and' | 'or'): string {
  return scene.format.list(
    optionsNamed(scene, codes).map((option) => option.inText),
    join,
  );
}

/** The scene as if there were no other choice, for parts that go through all of them. */
export function onlyAbout(scene: Scene, option: NamedOption): Scene {
  const { comparison } = scene;
  const cautions = comparison.cautions
    .filter(({ options }) => options.includes(option.code))
    .map((hit) => ({ ...hit, options: [option.code] }));
  return { ...scene, options: [option], comparison: { ...comparison, cautions } };
}

/** The option that the case has chosen, else the one of no operation, which every case has. */
export function chosenOption(scene: Scene): NamedOption {
  const { chosen } = scene.case.decision;
  const option = scene.options.find(({ code }) => code === (chosen ?? 'no-operation')) ?? scene.options[0];
  if (option === undefined) throw new InternalError('a comparison has no option');
  return option;
}
