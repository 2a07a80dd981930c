import type { Protocol } from './clinic-protocol.ts';
import type { OptionCode } from './evidence-record.ts';
import { protocolOf } from './protocol-of.ts';
import type { AfterTopic, Practice } from './protocol-of.ts';
import type { LocalText } from './scalars.ts';

/** Words of the clinic's own, and where they stand. */
export interface WrittenText {
  /** Within the protocol, for example ['driving', 'sleeve', 0, 'what']. */
  readonly path: readonly (string | number)[];
  readonly text: LocalText;
}

/** Every text that a clinic wrote about the time after a treatment. */
export function writtenTexts(protocol: Protocol, option: OptionCode): readonly WrittenText[] {
  const within = <K extends AfterTopic>(
    topic: K,
    textsOf: (practice: Practice<K>) => readonly WrittenText[],
  ): readonly WrittenText[] => {
    const found = protocolOf(protocol, topic, option);
    if (found === undefined) return [];
    return textsOf(found.practice).map(({ path, text }) => ({ path: [topic, found.option, ...path], text }));
  };
  return [
    ...within('diet', (lines) => textsIn(lines, ({ name, what }) => ({ name, what }))),
    ...within('follow_up', (lines) => textsIn(lines, ({ what }) => ({ what }))),
    ...(['lifting', 'driving', 'work', 'walking', 'wound', 'medicines_after', 'advice'] as const).flatMap(
      (topic) => within(topic, (lines) => textsIn<{ what: LocalText }>(lines, ({ what }) => ({ what }))),
    ),
    ...within('supplements', (lines) => textsIn(lines, ({ product, how }) => ({ product, how }))),
    ...within('blood_tests', (lines) => textsIn(lines, ({ other }) => ({ other }))),
    ...within('warnings', textsOfSigns),
    ...within('call', (lines) => textsIn(lines, ({ who, hours }) => ({ who, hours }))),
  ];
}

function textsIn<Line>(
  lines: readonly Line[],
  textsOf: (line: Line) => Readonly<Record<string, LocalText | undefined>>,
): readonly WrittenText[] {
  return lines.flatMap((line, index) =>
    Object.entries(textsOf(line)).flatMap(([key, text]) =>
      text === undefined ? [] : [{ path: [index, key], text }],
    ),
  );
}

/** Signs that the clinic wrote in its own words, what it counts as a coded one, and what to do first; plainleaf has words for the coded ones. */
function textsOfSigns(warnings: Practice<'warnings'>): readonly WrittenText[] {
  return (['now', 'today', 'at_visit'] as const).flatMap((when) =>
    textsIn(warnings[when], (sign) =>
      'text' in sign ? { text: sign.text } : { means: sign.means, first: sign.first },
    ).map(({ path, text }) => ({ path: [when, ...path], text })),
  );
}
