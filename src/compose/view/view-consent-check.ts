import type { CheckedElement, ConsentOutcome } from '../../model/consent-element.ts';
import type { Markup } from '../../model/locale.ts';
import { denseTable, groupRow } from './dense-table.ts';
import type { DenseRow } from './dense-table.ts';
import type { Scene } from './scene.ts';
import { flag, group } from './shape.ts';
import type { Viewed } from './shape.ts';
import { tableShape } from './shared-shapes.ts';
import { asMarkup, joined, plainSeries } from './words.ts';

/** What a consent must hold and where the record of the talk holds it; for clinicians alone. */
export const consentCheckShape = group({ any: flag, table: tableShape });

export function viewConsentCheck(scene: Scene): Viewed<typeof consentCheckShape> {
  const { consent: checked = [], words } = scene;
  const columns = Object.entries({ where: 24, element: 76 }).map(([key, width]) => ({
    label: words.plain(`consent-check.columns.${key}`),
    width: String(width),
    align: 'start',
  }));
  const rows = outcomes.flatMap((outcome) =>
    rowsOf(
      scene,
      outcome,
      checked.filter((one) => one.outcome === outcome),
    ),
  );
  return { any: checked.length > 0, table: denseTable(columns, rows) };
}

/** What is lost first, then what these pages do, then what others must. */
const outcomes: readonly ConsentOutcome[] = ['lost', 'met', 'talk', 'clinic', 'study'];

/** One row a place: what stands there, each with who asks for it. */
function rowsOf(
  scene: Scene,
  outcome: ConsentOutcome,
  checked: readonly CheckedElement[],
): readonly DenseRow[] {
  if (checked.length === 0) return [];
  const places = [...new Set(checked.map((one) => whereOf(scene, one)))];
  return [
    groupRow(scene.words.plain(`consent-check.outcomes.${outcome}`)),
    ...places.map((place) => {
      const here = checked.filter((one) => whereOf(scene, one) === place);
      return { group: '', cells: [asMarkup(place), saidOf(scene, here)] };
    }),
  ];
}

/** The headings under which it stands, each once. */
function whereOf({ words }: Scene, { places }: CheckedElement): string {
  if (places.length === 0) return words.plain('consent-check.nowhere');
  const headings = places.map(({ heading }) => heading ?? words.plain('consent-check.top'));
  return [...new Set(headings)].join(' ');
}

function saidOf(scene: Scene, checked: readonly CheckedElement[]): Markup {
  const said = checked.map(({ element }) =>
    scene.words.say('consent-check.element', {
      says: scene.words.say(`consent-elements.${element.id}`),
      sources: sourcesOf(scene, element),
    }),
  );
  return joined(...said);
}

/** "CMS form*, AMA": a star where the wording was not read, a dagger where it was read in a second account. */
function sourcesOf({ words }: Scene, { sources }: CheckedElement['element']): string {
  const named = sources.map(
    ({ document, seen }) => `${words.plain(`consent-check.documents.${document}`)}${marks[seen]}`,
  );
  return plainSeries(words, 'items', named);
}

const marks = { page: '', 'page-2nd': '†', memory: '*', own: '' } as const;
