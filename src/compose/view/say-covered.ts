import type { Cell, KnownCell } from '../../model/comparison.ts';
import { bmiFor } from '../../model/bmi-by-sex.ts';
import type { EvidenceRecord, Spread } from '../../model/evidence-record.ts';
import type { Markup } from '../../model/locale.ts';
import { bmiBeside } from './say-bmi.ts';
import { aboutOptions } from './say-note.ts';
import type { Scene } from './scene.ts';
import { joined } from './words.ts';

/**
 * Who was measured, over all figures of a strip, as far as the studies state it, beside the person's own BMI. What was
 * only assumed to match them is never said as theirs. Null where no option has a figure.
 */
export function coveredLine(scene: Scene, cells: readonly Cell[]): Markup | null {
  const known = cells.filter((cell) => cell.state === 'known');
  const leads = known.map(({ lead }) => lead);
  const records = leads.flatMap(({ record }) => scene.records.get(record) ?? []);
  if (records.length === 0) return null;
  const { words } = scene;
  const several = new Set(leads.map(({ study }) => study)).size > 1;
  return joined(
    several ? words.say('common.covered.different') : oneStudy(scene, known),
    ...bodyLines(scene, { records, several }),
    ...ageLine(scene, records),
  );
}

/** Whose numbers the one study counted: they may stand on the page before. */
function oneStudy(scene: Scene, known: readonly KnownCell[]): Markup {
  const { words } = scene;
  const said = words.say(`common.covered.${known.length === 1 ? 'one_number' : 'one_study'}`);
  return aboutOptions(scene, known, said);
}

/** Records of one study or of several. */
interface Covered {
  readonly records: readonly EvidenceRecord[];
  readonly several: boolean;
}

/** Their BMI, then the person's own: "Your BMI is 44." */
function bodyLines(scene: Scene, covered: Covered): readonly Markup[] {
  const { others, lines } = bodyLine(scene, covered);
  const { yours } = bmiBeside(scene.format, scene.comparison.person.bmi, others);
  return [...lines, scene.words.say('common.covered.yours', { yours })];
}

interface BodyLine {
  readonly lines: readonly Markup[];
  /** A limit that is printed, with which the person's own BMI is compared. */
  readonly others: readonly number[];
}

function bodyLine(scene: Scene, { records, several }: Covered): BodyLine {
  const { words, format } = scene;
  const form = several ? '' : '_one';
  const { sex } = scene.comparison.person;
  const all = records.map(({ people }) => bmiFor(people, sex));
  const stated = all.filter((bmi) => bmi !== undefined);
  if (stated.length === 0) return { lines: [words.say(`common.covered.bmi_none${form}`)], others: [] };
  const middle = middleOver(scene, all);
  if (middle !== null)
    return {
      lines: [words.say(`common.covered.bmi_mean${middle.ofSome ? '_some' : form}`, { bmi: middle.range })],
      others: [],
    };
  const partly = stated.length < records.length ? [words.say('common.covered.bmi_partly')] : [];
  const lows = stated.flatMap(({ low }) => (low === undefined ? [] : [low]));
  if (lows.length < stated.length) return { lines: partly, others: [] };
  const lowest = Math.min(...lows);
  const low = bmiBeside(format, scene.comparison.person.bmi, [lowest]).others[0] ?? format.number(lowest);
  const limits = words.say(`common.covered.bmi_limits${form}`, {
    bmi: words.plain('common.or_more', { low }),
  });
  return { lines: [limits, ...partly], others: [lowest] };
}

function ageLine(scene: Scene, records: readonly EvidenceRecord[]): readonly Markup[] {
  const middle = middleOver(
    scene,
    records.map(({ people }) => people.age),
  );
  if (middle === null) return [];
  const years = scene.format.number(scene.comparison.person.age);
  const key = `common.covered.age_mean${middle.ofSome ? '_some' : ''}`;
  return [scene.words.say(key, { age: middle.range, years })];
}

interface Middle {
  /** "46", or "43 to 49" over several studies. */
  readonly range: string;
  /** Others of these studies state no average, and it is never said as theirs. */
  readonly ofSome: boolean;
}

/** Null where no study states an average. */
function middleOver({ format }: Scene, spreads: readonly (Spread | undefined)[]): Middle | null {
  const stated = spreads
    .map((spread) => spread?.mean ?? spread?.median)
    .filter((middle) => middle !== undefined)
    .map((middle) => Math.round(middle));
  if (stated.length === 0) return null;
  const [low, high] = [Math.min(...stated), Math.max(...stated)];
  const range = low === high ? format.number(low) : format.range(format.number(low), format.number(high));
  return { range, ofSome: stated.length < spreads.length };
}
