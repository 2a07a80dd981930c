import type { CautionHit } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { cautionStatement } from '../../model/statement.ts';
import { denseTable, groupRow, labels } from './dense-table.ts';
import { cautionText, mayState } from './patient-cautions.ts';
import type { Scene } from './scene.ts';
import { optionsNamed } from './scene.ts';
import type { TableView } from './shared-shapes.ts';
import { asMarkup, inLanguage, joined, plainSeries, standingOn } from './words.ts';

const columns = [
  { key: 'id', width: 27 },
  { key: 'strength', width: 9 },
  { key: 'statement', width: 64 },
];

/**
 * Every caution the case triggers, struck ones too, under a band for each effect; what stands on usual practice says
 * that it needs confirming.
 */
export function clinicianCautions(scene: Scene): TableView {
  const { cautions } = scene.comparison;
  const rows = cautions.flatMap((hit, index) => [
    ...(hit.effect === cautions[index - 1]?.effect
      ? []
      : [groupRow(scene.words.plain(`codes.effects.${hit.effect}`))]),
    { group: '', cells: [hitInWords(scene, hit), asMarkup(strengthOf(scene, hit)), statementOf(scene, hit)] },
  ]);
  return denseTable(labels(scene, 'cautions', columns), rows);
}

/** Id and options of a caution. */
function hitInWords(scene: Scene, hit: CautionHit): Markup {
  return scene.words.say('clinician-sheet.cautions.hit', { id: hit.id, options: optionsInWords(scene, hit) });
}

/** Fewer are named. */
const severalOperations = 3;

/** The names; where a caution touches each operation of several, and nothing else, that says it shorter. */
function optionsInWords(scene: Scene, hit: CautionHit): string {
  const operations = scene.options.filter(({ column }) => column.kind === 'operation');
  const touched = optionsNamed(scene, hit.options);
  const every = touched.length === operations.length && operations.every((one) => touched.includes(one));
  return every && operations.length >= severalOperations
    ? scene.words.plain('clinician-sheet.cautions.every_operation')
    : plainSeries(
        scene.words,
        'items',
        touched.map(({ name }) => name),
      );
}

function strengthOf({ words }: Scene, hit: CautionHit): string {
  return words.plain(`clinician-sheet.strength.${hit.strength}`);
}

function statementOf(scene: Scene, hit: CautionHit): Markup {
  const { words } = scene;
  const verdict = scene.clinic.cautions[hit.id];
  const mark =
    verdict === undefined
      ? hit.basis === 'practice'
        ? [words.say('clinician-sheet.needs_confirming')]
        : []
      : [words.say(`clinician-sheet.verdict.${verdict}`)];
  return joined(
    ...mark,
    mayState(scene, hit) ? cautionText(scene, hit) : practiceStatement(scene, hit),
    ...sourcesOf(scene, hit),
  );
}

/** What usual practice says, in the words of the evidence (English), said to be so, since no patient page prints it. */
function practiceStatement(scene: Scene, hit: CautionHit): Markup {
  const caution = scene.evidence.cautions.find((row) => row.id === hit.id);
  if (caution === undefined) return asMarkup('');
  const statement = inLanguage(caution.statement, { language: 'en', document: scene.locale.tag });
  const words = scene.words.say('clinician-sheet.cautions.from_record', { statement });
  return standingOn([cautionStatement(hit.id)], words);
}

function sourcesOf(scene: Scene, hit: CautionHit): readonly Markup[] {
  const sources = scene.evidence.cautions.find((row) => row.id === hit.id)?.sources ?? [];
  const named = sources
    .filter((source) => source.seen === 'page')
    .flatMap(
      (source) => source.study ?? source.aftercare ?? (source.url === undefined ? [] : hostOf(source.url)),
    );
  const unique = named.filter((one, index) => named.indexOf(one) === index);
  if (unique.length === 0)
    return hit.basis === 'practice' ? [scene.words.say('clinician-sheet.usual_practice')] : [];
  return [
    scene.words.say('clinician-sheet.cautions.sources', { list: plainSeries(scene.words, 'items', unique) }),
  ];
}

function hostOf(url: string): string {
  return url.replace(/^https?:\/\/(www\.)?/, '').split('/')[0] ?? url;
}
