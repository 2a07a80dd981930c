import type { Markup } from '../../model/locale.ts';
import { healthAgainstAlone } from './say-against.ts';
import { sharedDose } from './say-dose.ts';
import { mostCommonCell, mostCommonHarm, weightComesBack } from './say-drawbacks.ts';
import { gainInShort, weightGiven } from './say-gain.ts';
import { countedLines, harmsCounted, mainHarmLines, mainHarms } from './say-risk.ts';
import type { NamedOption, Scene } from './scene.ts';
import { isProcedure } from './view-people.ts';
import { staysGone } from './view-undo.ts';
import { bold, joined } from './words.ts';

/**
 * An option that was offered and not chosen: its weight, and what speaks against it, as of the option of an opinion.
 * "Gastric bypass. Weight after 5 years, on average: 181 lb. A serious problem, in the first month: 52 out of 1,000."
 */
export function declinedInWords(scene: Scene, option: NamedOption): Markup {
  const name = scene.words.say('consent.declined.name', { option: option.name });
  const dose = doseOfAll(scene, option);
  const harms = harmsInShort(scene, option, dose !== null);
  // Nobody may take it that a choice has no harm because none was counted, or no other than the one that was.
  const isOpen = harms.length === 0 || option.column.kind === 'none';
  const unknown = isOpen ? [scene.words.say(`options.${option.code}.unknown`)] : [];
  return joined(
    bold(name),
    ...(dose === null ? [] : [scene.words.say('common.dose.fact', { dose })]),
    gainInShort(scene, option, dose !== null),
    ...harms,
    ...unknown,
    ...healthAgainstAlone(scene, option),
    ...drawbacks(scene, option),
  );
}

/** The outcomes that these lines name. */
export function outcomesOfDeclined(scene: Scene, option: NamedOption): readonly string[] {
  const cells = isTreatment(option) ? mainHarms(scene, option) : harmsCounted(scene, option);
  const common = isTreatment(option) ? mostCommonCell(scene, option) : null;
  return [...cells, ...(common === null ? [] : [common])].map(({ outcome }) => outcome);
}

/** The dose of all figures of these lines, which is said once; null where they are not all of one. */
function doseOfAll(scene: Scene, option: NamedOption): Markup | null {
  if (!isTreatment(option)) return null;
  const common = mostCommonCell(scene, option) ?? undefined;
  return sharedDose(scene, [weightGiven(scene, option) ?? undefined, ...mainHarms(scene, option), common]);
}

/** What befalls people to whom nothing is done is not the doing of that choice, but what they must know of it. */
function harmsInShort(scene: Scene, option: NamedOption, doseSaid: boolean): readonly Markup[] {
  if (!isTreatment(option)) return countedLines(scene, option);
  const told = mainHarms(scene, option).map(({ id }) => id);
  const common = mostCommonHarm(scene, option, { outOf: 1000, told, doseSaid });
  return [...mainHarmLines(scene, option, doseSaid), ...(common === null ? [] : [common])];
}

function isTreatment(option: NamedOption): boolean {
  return isProcedure(option) || option.column.kind === 'medicine';
}

function drawbacks(scene: Scene, option: NamedOption): readonly Markup[] {
  const { words } = scene;
  const { possible } = option.column.reversibility;
  const isLasting = isProcedure(option) && (possible === 'no' || possible === 'partly');
  return [
    ...[weightComesBack(scene, option)].filter((said) => said !== null),
    ...(isLasting
      ? [joined(words.say(`comparison.opinion.undone_${possible}`), ...staysGone(scene, option))]
      : []),
    ...(option.tag === '' ? [] : [words.say('comparison.opinion.under_study')]),
  ];
}
