import type { MortalityScore, ScoredFactor } from '../../model/mortality-score.ts';
import { scoredFactors } from '../../model/mortality-score.ts';
import type { CautionConflict } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { cautionStatement } from '../../model/statement.ts';
import { citationOf } from './number-studies.ts';
import type { Scene } from './scene.ts';
import { optionList } from './scene.ts';
import { group, list, markup } from './shape.ts';
import type { Viewed } from './shape.ts';
import { asMarkup, joined, plainSeries, standingOn } from './words.ts';

/** What a clinician weighs beside the figures: cautions against each other, and an old score. */
export const weighingShape = group({ conflicts: list(markup), score: list(markup) });
export type WeighingView = Viewed<typeof weighingShape>;

export function viewWeighing(scene: Scene): WeighingView {
  const { conflicts, mortalityScore: score } = scene.comparison;
  return {
    conflicts: conflicts.map((conflict) => conflictInWords(scene, conflict)),
    score: score === null ? [] : [resultOf(scene, score), limitsOf(scene, score)],
  };
}

function conflictInWords(scene: Scene, { caution, to, from, against }: CautionConflict): Markup {
  const words = scene.words.say('clinician-sheet.conflict', {
    caution,
    to: optionList(scene, [to], 'and'),
    from: optionList(scene, from, 'or'),
    against: plainSeries(scene.words, 'items', against),
  });
  return standingOn([caution, ...against].map(cautionStatement), words);
}

/** "The mortality score of 2007: class B. 2 points: …", or which two classes cannot be told apart and for want of what. */
function resultOf(scene: Scene, { classes, factors }: MortalityScore): Markup {
  const { words } = scene;
  const withState = (state: string): readonly ScoredFactor[] =>
    scoredFactors.filter((factor) => factors[factor] === state);
  const named = (folder: string, codes: readonly string[]): string =>
    plainSeries(
      words,
      'clauses',
      codes.map((code) => words.plain(`clinician-sheet.score.${folder}.${code}`)),
    );
  const [given, untold] = [withState('yes'), withState('not-told')];
  return joined(
    classes.low === classes.high
      ? words.say('clinician-sheet.score.class', { class: classes.low })
      : words.say('clinician-sheet.score.cannot_tell', { low: classes.low, high: classes.high }),
    given.length === 0
      ? words.say('clinician-sheet.score.no_points')
      : words.say('clinician-sheet.score.points', { count: given.length, factors: named('factors', given) }),
    ...(untold.length === 0
      ? []
      : [words.say('clinician-sheet.score.not_told', { factors: named('untold', untold) })]),
  );
}

function limitsOf(scene: Scene, { options, highestClass, studies }: MortalityScore): Markup {
  const { words, format, evidence } = scene;
  const [first, ...others] = studies;
  const made = evidence.studies.get(first ?? '');
  return joined(
    words.say('clinician-sheet.score.limits', {
      options: optionList(scene, options, 'and'),
      people: format.range(format.number(highestClass.low), format.number(highestClass.high)),
    }),
    words.say('clinician-sheet.score.source'),
    made === undefined ? asMarkup(first ?? '') : citationOf(scene, made),
    ...(others.length === 0
      ? []
      : [words.say('clinician-sheet.score.others', { list: plainSeries(words, 'items', others) })]),
  );
}
