import { clearCommunicationPass } from '../../model/document-score.ts';
import type {
  CriterionOutcome,
  DocumentScore,
  ScoredCriterion,
  SetScore,
} from '../../model/document-score.ts';
import type { Markup } from '../../model/locale.ts';
import { denseTable, groupRow } from './dense-table.ts';
import type { DenseRow } from './dense-table.ts';
import type { Scene } from './scene.ts';
import { flag, group, list, markup } from './shape.ts';
import type { Viewed } from './shape.ts';
import { tableShape } from './shared-shapes.ts';
import type { TableView } from './shared-shapes.ts';
import { asMarkup, series } from './words.ts';

/** How the patient pages stand against published criteria; for clinicians alone. */
export const documentScoreShape = group({
  any: flag,
  /** A line a standard. */
  lines: list(markup),
  /** What is not met, and what the pages alone cannot meet: what has a place on the pages, then what has none. */
  owed: list(tableShape),
});
export type DocumentScoreView = Viewed<typeof documentScoreShape>;

export function viewDocumentScore(scene: Scene): DocumentScoreView {
  const { score } = scene;
  return {
    any: score !== undefined,
    lines:
      score === undefined
        ? []
        : [decisionLine(scene, score), materialLine(scene, score), clearLine(scene, score)],
    owed: score === undefined ? [] : owedTables(scene, score),
  };
}

/** "10 of 17 (58.8%, 6 not judged)". */
function points({ words, format }: Scene, { met, applicable, person, percent }: SetScore): string {
  const said = {
    met: format.number(met),
    all: format.number(applicable),
    percent: format.number(percent ?? 0, 1),
  };
  return person === 0
    ? words.plain('document-score.points', said)
    : words.plain('document-score.unjudged', { ...said, person: format.number(person) });
}

/** This standard gives no percentages: all that qualify and certify are needed. */
function decisionLine({ words, format }: Scene, { sets }: DocumentScore): Markup {
  if (sets.qualifying.percent === null) return words.say('document-score.no_decision');
  const count = ({ met, applicable }: SetScore): string =>
    words.plain('document-score.count', { met: format.number(met), all: format.number(applicable) });
  return words.say('document-score.decision', {
    qualifying: count(sets.qualifying),
    certification: count(sets.certification),
    quality: count(sets.quality),
  });
}

function materialLine(scene: Scene, { sets }: DocumentScore): Markup {
  return scene.words.say('document-score.material', {
    understandability: points(scene, sets.understandability),
    actionability: points(scene, sets.actionability),
  });
}

function clearLine(scene: Scene, { sets }: DocumentScore): Markup {
  const clear = sets['clear-communication'];
  const verdict = (clear.percent ?? 0) >= clearCommunicationPass ? 'passes' : 'fails';
  return scene.words.say('document-score.clear', {
    clear: points(scene, clear),
    verdict: scene.words.plain(`document-score.${verdict}`),
    pass: scene.format.number(clearCommunicationPass),
  });
}

const widths = { criterion: 46, set: 25, place: 29 } as const;
const widthsWithoutPlace = { criterion: 70, set: 30 } as const;

/**
 * Apart by whether anything has a place: what only others can bring stands on no page, and where such rows go over to the
 * next one, the head of their places would stand there over nothing.
 */
function owedTables(scene: Scene, score: DocumentScore): readonly TableView[] {
  const groups = owedGroups(scene, score);
  return [
    owedTable(scene, groups.filter(isPlaced).flat(), widths),
    owedTable(scene, groups.filter((rows) => !isPlaced(rows)).flat(), widthsWithoutPlace),
  ].filter(({ rows }) => rows.length > 0);
}

function isPlaced(rows: readonly DenseRow[]): boolean {
  return rows.some(({ cells }) => (cells[2]?.markup ?? '') !== '');
}

function owedTable(
  scene: Scene,
  rows: readonly DenseRow[],
  shown: typeof widths | typeof widthsWithoutPlace,
): TableView {
  const columns = Object.entries(shown).map(([key, width]) => ({
    label: scene.words.plain(`document-score.columns.${key}`),
    width: String(width),
    align: 'start',
  }));
  return denseTable(
    columns,
    rows.map((row) => ({ ...row, cells: row.cells.slice(0, columns.length) })),
  );
}

/** Who owes what, what the pages themselves lost first. */
const owed: readonly CriterionOutcome[] = ['not-met', 'clinic', 'organisation', 'study', 'person'];

function owedGroups(scene: Scene, { items }: DocumentScore): readonly (readonly DenseRow[])[] {
  return owed.flatMap((outcome) => {
    const rows = rowsOf(
      scene,
      items.filter((item) => item.outcome === outcome),
    );
    return rows.length === 0
      ? []
      : [[groupRow(scene.words.plain(`document-score.owed.${outcome}`)), ...rows]];
  });
}

/** Where two standards ask the same in the same words, it is said once, with both. */
function rowsOf(scene: Scene, items: readonly ScoredCriterion[]): readonly DenseRow[] {
  const { words } = scene;
  const said = items.map(({ criterion, places }) => ({
    asks: words.say(`criteria.${criterion.id}`),
    set: words.plain(`document-score.sets.${criterion.set}`),
    where: whereOf(scene, places),
  }));
  const alike = (row: (typeof said)[number]) =>
    said.filter(({ asks, where }) => asks.markup === row.asks.markup && where === row.where);
  return said
    .filter((row) => alike(row)[0] === row)
    .map((row) => ({
      group: '',
      cells: [
        row.asks,
        series(
          words,
          'clauses',
          alike(row).map(({ set }) => asMarkup(set)),
        ),
        asMarkup(row.where),
      ],
    }));
}

function whereOf({ words }: Scene, [place]: ScoredCriterion['places']): string {
  if (place === undefined) return '';
  const { title, heading } = place;
  return heading === undefined ? title : words.plain('document-score.place', { title, heading });
}
