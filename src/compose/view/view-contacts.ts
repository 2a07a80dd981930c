import type { Contact } from '../../model/aftercare-plan.ts';
import type { Markup } from '../../model/locale.ts';
import type { SignCode } from '../../model/protocol-codes.ts';
import type { LocalText } from '../../model/scalars.ts';
import { writtenAt } from './say-aftercare.ts';
import type { Scene } from './scene.ts';
import { afterColon, asMarkup } from './words.ts';

export interface NamedContact {
  readonly name: Markup;
  readonly number: string;
  /** When somebody answers; null if the clinic does not say. */
  readonly hours: LocalText | null;
  /** The only sign that it is for; null: for all. */
  readonly about: SignCode | null;
}

/** For which sign alone a number is, and when somebody answers there; null where the clinic says neither. */
export function contactNote(scene: Scene, { about, hours }: NamedContact): Markup | null {
  const { words } = scene;
  if (about === null) return hours === null ? null : words.free(hours);
  const label = words.say(`aftercare.signs.${about}`);
  return hours === null
    ? label
    : words.say('common.labelled', { label, text: afterColon(words, words.free(hours)) });
}

/** Whom to call, each once, in the order of the plan; without a plan the clinic's phones. */
export function contactsOf(scene: Scene): readonly NamedContact[] {
  const named = (scene.aftercare?.calls ?? phones).map((call) => nameContact(scene, call));
  return named.filter((one, index) => named.findIndex(({ number }) => number === one.number) === index);
}

const phones: readonly Pick<Contact, 'entry' | 'phone'>[] = [
  { entry: null, phone: 'day' },
  { entry: null, phone: 'out_of_hours' },
  { entry: null, phone: 'emergency' },
];

export function nameContact(scene: Scene, { entry, phone }: Pick<Contact, 'entry' | 'phone'>): NamedContact {
  const { words, clinic } = scene;
  if (entry === null) {
    const kind = phone ?? 'day';
    const name = asMarkup(words.plain(`aftercare.phones.${kind}`));
    return { name, number: clinic.clinic.phones[kind], hours: null, about: null };
  }
  const { who, phone: number, hours, about } = writtenAt(scene, 'call', entry);
  return { name: words.free(who), number, hours: hours ?? null, about: about ?? null };
}
