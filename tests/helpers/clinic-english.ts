import { readFileSync } from 'node:fs';
import { parseDocument, visit } from 'yaml';

import type { AskedPacket } from './language-packets.ts';

/** Whether a language is written in the letters of English, so that a single word could be one of its own. */
function sharesLetters(language: string): boolean {
  return new Intl.Locale(language).maximize().script === 'Latn';
}

/**
 * What a clinic and a case say in English, and not in the language of a packet: it stands there in English. Read from the
 * files alone; without single words where they could be of the language itself.
 */
export function clinicEnglish({
  reference,
  language,
}: Pick<AskedPacket, 'reference' | 'language'>): readonly string[] {
  if (language === 'en') return [];
  return [`examples/cases/${reference}.yaml`, 'examples/clinic.yaml'].flatMap((file) => {
    const found: string[] = [];
    visit(parseDocument(readFileSync(file, 'utf8')), {
      Map(_key, node) {
        const english = node.get('en');
        if (typeof english === 'string' && !node.has(language)) found.push(english);
      },
    });
    return found.filter((text) => !sharesLetters(language) || / \S/.test(text));
  });
}
