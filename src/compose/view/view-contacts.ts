import type { Contact } from '../../model/aftercare-plan.ts';
import { writtenAt } from './say-aftercare.ts';
import type { Scene } from './scene.ts';
import { freeText } from './words.ts';

export interface NamedContact {
  readonly name: string;
  readonly number: string;
  /** When somebody answers; empty if the clinic does not say. */
  readonly hours: string;
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
  const { words, clinic, locale } = scene;
  if (entry === null) {
    const kind = phone ?? 'day';
    return { name: words.plain(`aftercare.phones.${kind}`), number: clinic.clinic.phones[kind], hours: '' };
  }
  const { who, phone: number, hours } = writtenAt(scene, 'call', entry);
  const inWords = (text: typeof who): string => freeText(text, locale.tag)[1];
  return { name: inWords(who), number, hours: hours === undefined ? '' : inWords(hours) };
}
