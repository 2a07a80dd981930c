import type { Protocol } from './clinic-protocol.ts';
import type { OptionCode } from './evidence-record.ts';

/** Topics of the protocol about the time after a treatment, where `same_as` fills what an option does not say. */
export const afterTopics = [
  'diet',
  'follow_up',
  'lifting',
  'driving',
  'work',
  'walking',
  'wound',
  'medicines_after',
  'supplements',
  'blood_tests',
  'advice',
  'warnings',
  'call',
] as const satisfies readonly (keyof Protocol)[];
export type AfterTopic = (typeof afterTopics)[number];

/** What the protocol holds of a topic for one option. */
export type Practice<K extends AfterTopic> = Protocol[K] extends Record<string, infer E> ? E : never;

export interface ProtocolOf<K extends AfterTopic> {
  /** The option under which the clinic wrote it: the one asked for, or one that it is the same as. */
  readonly option: OptionCode;
  readonly practice: Practice<K>;
}

/** What a clinic says of a topic for an option; undefined if nothing. */
export function protocolOf<K extends AfterTopic>(
  protocol: Protocol,
  topic: K,
  option: OptionCode,
): ProtocolOf<K> | undefined {
  const byOption = protocol[topic] as Readonly<Record<string, Practice<K>>>;
  for (const like of likeOptions(protocol, option)) {
    const practice = Object.hasOwn(byOption, like) ? byOption[like] : undefined;
    if (practice !== undefined) return { option: like, practice };
  }
  return undefined;
}

/** The option itself, the one that it is the same as, and so on; a circle ends where it closes. */
export function likeOptions(
  { same_as: sameAs }: Pick<Protocol, 'same_as'>,
  option: OptionCode,
): readonly OptionCode[] {
  const found = [option];
  for (let next = sameAs[option]; next !== undefined && !found.includes(next); next = sameAs[next]) {
    found.push(next);
  }
  return found;
}
