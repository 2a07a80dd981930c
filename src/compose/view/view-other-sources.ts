import { isCopy } from '../../model/copy-sites.ts';
import type { PointSource } from '../../model/evidence-rules.ts';
import type { Markup } from '../../model/locale.ts';
import { cautionRows, noteRows, sentToEmergency, undoRows } from './cited-studies.ts';
import type { CitedSource } from './cited-studies.ts';
import { asPublished, shortAddress } from './number-studies.ts';
import type { StudyNumbers } from './number-studies.ts';
import { patientCautions } from './patient-cautions.ts';
import { emergencyOrigins } from './say-emergency-first.ts';
import type { Scene } from './scene.ts';
import { aboutOptions, triggersInWords } from './view-health.ts';
import { asMarkup, joined, runIn } from './words.ts';

interface OtherSources {
  readonly points: readonly Markup[];
  readonly preferred: readonly Markup[];
  readonly release: readonly Markup[];
}

/** What else stands on a source: notes on thresholds, cautions, undoing, the clinic's own preferences, and the release itself. */
export function otherSources(scene: Scene, numbers: StudyNumbers): OtherSources {
  const { words, clinic } = scene;
  return {
    points: [
      ...noteSources(scene, numbers),
      ...cautionSources(scene, numbers),
      ...undoSources(scene, numbers),
      ...emergencyTexts(scene),
    ],
    preferred: clinic.prefer.map(({ record, reason }) =>
      words.say('sources.preferred', { record, reason: words.free(reason) }),
    ),
    release: releaseLines(scene),
  };
}

/** One line for all notes: their thresholds come from one set of indications. */
function noteSources(scene: Scene, numbers: StudyNumbers): readonly Markup[] {
  const where = whereSeen(scene, noteRows(scene), numbers);
  return where === null ? [] : [besideLead(scene, scene.words.say('sources.thresholds'), where)];
}

function cautionSources(scene: Scene, numbers: StudyNumbers): readonly Markup[] {
  return patientCautions(scene).flatMap((hit) => {
    const where = whereSeen(scene, cautionRows(scene, hit), numbers);
    if (where === null) return [];
    const about = aboutOptions(scene, hit);
    return [joined(triggersInWords(scene, hit), besideLead(scene, about, where))];
  });
}

function undoSources(scene: Scene, numbers: StudyNumbers): readonly Markup[] {
  return scene.options.flatMap((option) => {
    const where = whereSeen(scene, undoRows(scene, option.column), numbers);
    return where === null
      ? []
      : [besideLead(scene, scene.words.say('sources.undone', { option: option.inText }), where)];
  });
}

/** Where it was read for what the emergency number comes first, if a caution sends there; a text each. */
function emergencyTexts(scene: Scene): readonly Markup[] {
  const options = sentToEmergency(scene);
  const where = options.length === 0 ? null : emergencyOrigins(scene, options);
  return where === null ? [] : where.sources.map((source) => joined(where.lead, source));
}

interface Where {
  readonly said: Markup;
  /** Else it begins with the title of a text or its address, which stays as it was published. */
  readonly beginsWithStudies: boolean;
}

function besideLead({ words }: Scene, lead: Markup, { said, beginsWithStudies }: Where): Markup {
  return beginsWithStudies ? runIn(words, lead, said) : joined(lead, said);
}

/** Study numbers, then what is no study; only what was read on a page. */
function whereSeen(scene: Scene, sources: readonly CitedSource[], numbers: StudyNumbers): Where | null {
  const seen = sources.filter((source) => source.seen === 'page');
  const studies = seen.flatMap((source) => (source.study === undefined ? [] : [numbers.of(source.study)]));
  const others = seen.flatMap((source) => (source.study === undefined ? otherText(scene, source) : []));
  const cited = unique(studies)
    .toSorted((a, b) => a - b)
    .map(String);
  const parts = [
    ...(cited.length === 0
      ? []
      : [scene.words.say('sources.studies', { list: scene.format.list(cited, 'and'), count: cited.length })]),
    ...unique(others.map(({ markup }) => markup)).map((markup) => ({ markup })),
  ];
  return parts.length === 0 ? null : { said: joined(...parts), beginsWithStudies: cited.length > 0 };
}

/** The address, or what the text is and that it was read in a copy, to which nobody is sent. */
function otherText(scene: Scene, { url, text }: Pick<PointSource, 'url' | 'text'>): readonly Markup[] {
  if (url === undefined) return [];
  if (isCopy(url, scene.evidence.copySites)) {
    const named = text === undefined ? [] : [asPublished(scene, `${text}.`)];
    return [joined(...named, scene.words.say('sources.copy'))];
  }
  return [asMarkup(`${shortAddress(url)}.`)];
}

function unique<T>(all: readonly T[]): readonly T[] {
  return all.filter((one, index) => all.indexOf(one) === index);
}

function releaseLines(scene: Scene): readonly Markup[] {
  const { words, format, evidence } = scene;
  return [
    words.say('sources.release', { version: evidence.version, date: format.date(evidence.date) }),
    words.say('sources.next_review', { date: format.date(evidence.nextReview) }),
    words.say('sources.made_by', { who: words.free(evidence.madeBy) }),
    words.say('sources.paid_by', { who: words.free(evidence.paidBy) }),
  ];
}
