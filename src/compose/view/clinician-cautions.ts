import type { CautionHit } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { cautionStatement } from '../../model/statement.ts';
import { denseTable, labels } from './dense-table.ts';
import type { Scene } from './scene.ts';
import { optionsNamed } from './scene.ts';
import type { TableView } from './shared-shapes.ts';
import { cautionText, mayState } from './view-health.ts';
import { asMarkup, inLanguage, joined, standingOn } from './words.ts';

const columns = [
  { key: 'id', width: 21 },
  { key: 'options', width: 16 },
  { key: 'effect', width: 15 },
  { key: 'statement', width: 48 },
];

/** Every caution the case triggers, struck ones too; what stands on usual practice says that it needs confirming. */
export function clinicianCautions(scene: Scene): TableView {
  const rows = scene.comparison.cautions.map((hit) => ({ group: '', cells: cellsOf(scene, hit) }));
  return denseTable(labels(scene, 'cautions', columns), rows);
}

function cellsOf(scene: Scene, hit: CautionHit): readonly Markup[] {
  const { words } = scene;
  const names = optionsNamed(scene, hit.options).map((option) => option.name);
  return [
    asMarkup(hit.id),
    asMarkup(names.join(', ')),
    asMarkup(
      [
        words.plain(`codes.effects.${hit.effect}`),
        words.plain(`clinician-sheet.strength.${hit.strength}`),
        words.plain(`clinician-sheet.basis.${hit.basis}`),
      ].join('; '),
    ),
    statementOf(scene, hit),
  ];
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

/** What usual practice says, in the words of the evidence (English), since no patient page prints it. */
function practiceStatement(scene: Scene, hit: CautionHit): Markup {
  const caution = scene.evidence.cautions.find((row) => row.id === hit.id);
  const words = inLanguage(caution?.statement ?? '', { language: 'en', document: scene.locale.tag });
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
  return unique.length === 0
    ? []
    : [scene.words.say('clinician-sheet.cautions.sources', { list: unique.join(', ') })];
}

function hostOf(url: string): string {
  return url.replace(/^https?:\/\/(www\.)?/, '').split('/')[0] ?? url;
}
