import { readFileSync } from 'node:fs';
import { isPair, isScalar, parseDocument, visit } from 'yaml';

import type { AskedPacket } from './language-packets.ts';

/** Names of stages of eating, and names and hours of telephones, are labels of a row, which carry no language. */
const labels: readonly unknown[] = ['name', 'label', 'hours', 'who', 'when'];

/**
 * What a clinic and a case say in English, in two words or more, and not in the language of a packet: it stands there in
 * English. Read from the files alone; without what is a label.
 */
export function clinicEnglish({ reference, language }: AskedPacket): readonly string[] {
  if (language === 'en') return [];
  return [`examples/cases/${reference}.yaml`, 'examples/clinic.yaml'].flatMap((file) => {
    const found: string[] = [];
    visit(parseDocument(readFileSync(file, 'utf8')), {
      Map(_key, node, path) {
        const around = path.at(-1);
        const named = isPair(around) && isScalar(around.key) && labels.includes(around.key.value);
        const english = node.get('en');
        if (typeof english === 'string' && !node.has(language) && !named) found.push(english);
      },
    });
    return found.filter((text) => / \S/.test(text));
  });
}
