import type { Markup } from '../../model/locale.ts';
import type { NamedOption, Scene } from './scene.ts';
import { group, list, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, lineShape, withDuty } from './shared-shapes.ts';
import type { Line } from './shared-shapes.ts';
import { joined } from './words.ts';

export const studyShape = list(group({ heading: text, lines: list(lineShape) }));

/** One panel for each option that is still under study. */
export function viewStudies(scene: Scene): Viewed<typeof studyShape> {
  return scene.options
    .filter((option) => option.column.standing.maturity === 'under-study')
    .map((option) => ({
      heading: scene.words.plain('comparison.study.heading', { option: option.name }),
      lines: [
        body(
          joined(
            scene.words.say('comparison.study.only_in_study'),
            scene.words.say(`options.${option.code}.unknown`),
          ),
        ),
        ...oversight(scene, option),
        body(ownCount(scene, option)),
        body(scene.words.say('comparison.study.your_right')),
      ],
    }));
}

function oversight(scene: Scene, option: NamedOption): readonly Line[] {
  const { words, clinic } = scene;
  const entry = clinic.under_study[option.code];
  if (entry === undefined) return [body(words.say('comparison.study.not_given'))];
  const contact = words.say('comparison.study.contact', { phone: entry.contact, approval: entry.approval });
  return [
    body(words.say('comparison.study.oversight', { who: words.free(entry.oversight) })),
    withDuty('phone', contact),
    body(
      entry.form === null
        ? words.say('comparison.study.no_form')
        : words.say('comparison.study.form', { form: formName(scene, entry.form, entry.form_names) }),
    ),
  ];
}

/** In quotation marks, as it is the title of a paper: one that is only in another language has its name in that one. */
function formName(
  { words, locale }: Scene,
  form: string,
  others: Readonly<Record<string, string>> = {},
): string {
  return words.plain('common.quote', { words: others[locale.tag] ?? form });
}

/** How many this surgeon has counted, from the largest group in the profile. */
function ownCount(scene: Scene, option: NamedOption): Markup {
  const surgeon = scene.clinic.surgeons.find((one) => one.id === scene.case.plan.surgeon);
  const counts = (surgeon?.results ?? [])
    .filter((result) => result.option === option.code)
    .map((result) => result.n);
  if (counts.length === 0) return scene.words.say('comparison.study.own_unknown');
  const most = Math.max(...counts);
  return scene.words.say('comparison.study.own', { n: scene.format.number(most), count: most });
}
