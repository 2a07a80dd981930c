import type { Cell, OwnResult } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { roundShare } from '../round-counts.ts';
import type { Denominator } from '../round-counts.ts';
import { topicCells } from './cells-shown.ts';
import { isShare, limitsInWords, shareInSentence, sourceOf } from './say-share.ts';
import { isFirstMonth, otherTime, sayTime } from './say-time.ts';
import type { Scene } from './scene.ts';
import { list } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, plainRow, rowShape } from './shared-shapes.ts';
import type { Line, Row } from './shared-shapes.ts';
import { figure, joined } from './words.ts';

export const ownShape = list(rowShape);

interface OwnCell {
  readonly cell: Cell;
  readonly own: OwnResult;
  readonly denominator: Denominator;
}

/** The clinic's own counts, each beside the published figure; only for options that have one. */
export function viewOwn(scene: Scene): Viewed<typeof ownShape> {
  const cells = ownCells(scene);
  return scene.options.flatMap((option): Row[] => {
    const mine = cells.filter(({ cell }) => cell.option === option.code);
    return mine.length === 0
      ? []
      : [
          plainRow(
            option,
            mine.map((one) => ownLine(scene, one)),
          ),
        ];
  });
}

/** The figure is counted out of the denominator of its table, where it has one, since it may stand in a picture too. */
function ownCells(scene: Scene): readonly OwnCell[] {
  const found = new Map<string, OwnCell>();
  for (const { cell, denominator } of topicCells(scene.comparison)) {
    if (cell.own !== undefined) found.set(cell.id, { cell, own: cell.own, denominator });
  }
  return [...found.values()];
}

function ownLine(scene: Scene, { cell, own, denominator }: OwnCell): Line {
  const { words, format } = scene;
  const source = { cell: `${cell.id}/own`, records: [] };
  const time = isFirstMonth({ days: own.days })
    ? words.plain('codes.time.first_month')
    : sayTime(scene, { days: own.days }, 'by');
  const counted = words.say('comparison.own.count', {
    outcome: words.plain(`outcomes.${cell.outcome}.name`),
    time,
    counted: figure(
      words.plain('common.share.counted', { events: format.number(own.events), n: format.number(own.n) }),
      source,
    ),
    from: format.date(own.from),
    to: format.date(own.to),
  });
  const sure = own.tooFew
    ? words.say('comparison.own.too_few')
    : scoreInWords(scene, own, { source, denominator });
  return body(joined(counted, sure, ...published(scene, cell, denominator)));
}

interface Said {
  readonly source: { readonly cell: string; readonly records: readonly string[] };
  readonly denominator: Denominator;
}

function scoreInWords(scene: Scene, own: OwnResult, { source, denominator }: Said): Markup {
  const range = figure(limitsInWords(scene, own.score, denominator), source);
  return scene.words.say('comparison.own.score', { range, of: scene.format.number(denominator) });
}

function published(scene: Scene, cell: Cell, denominator: Denominator): readonly Markup[] {
  if (cell.state !== 'known' || !isShare(cell)) return [scene.words.say('comparison.own.no_published')];
  const number = shareInSentence(scene, roundShare(cell.value, denominator), denominator);
  const said = figure(number, sourceOf(cell));
  const time = otherTime(scene, cell.asked, cell.lead);
  return [
    time === null
      ? scene.words.say('comparison.own.published', { number: said })
      : scene.words.say('comparison.own.published_then', { time, number: said }),
  ];
}
