import { expect } from 'vitest';

import type { Language, Packet } from './packets.ts';

/** What every page for a patient says, in the language of the packet; the numbers are those of the example clinic. */
const furniture: Record<Language, { phones: RegExp; defers: RegExp; page: RegExp; example: RegExp }> = {
  en: {
    phones: /555-0129\b.{0,40}\bOther hours\b.{0,20} 555-0134\b.{0,40}\b[Ee]mergency\b.{0,20} 911\b/,
    defers: /not replace your surgeon/,
    page: /Page (\d+) of (\d+)/g,
    example: /person is invented/,
  },
  es: {
    phones: /555-0129\b.{0,40}\bOtras horas\b.{0,20} 555-0134\b.{0,40}\b[Ee]mergencia\b.{0,20} 911\b/,
    defers: /[Nn]o reemplaza al equipo de cirugía/,
    page: /Página (\d+) de (\d+)/g,
    example: /persona es inventada/,
  },
};

const other: Record<Language, Language> = { en: 'es', es: 'en' };

export function expectStandardWordsOnEveryPage(packet: Packet, language: Language): void {
  const own = furniture[language];
  const foreign = furniture[other[language]];
  expect(packet.pages.length).toBeGreaterThan(5);
  for (const document of new Set(packet.pages.map((page) => page.document))) {
    const pages = packet.pages.filter((page) => page.document === document);
    const numbers = pages.map(({ text }) => [...text.matchAll(own.page)].map((found) => found.slice(1)));
    expect(numbers).toEqual(pages.map((_, index) => [[`${index + 1}`, `${pages.length}`]]));
  }
  for (const { text } of packet.pages) {
    expect(text).toMatch(own.phones);
    expect(text).toMatch(own.defers);
    expect(text).toMatch(own.example);
    expect(text).not.toMatch(
      new RegExp(`${foreign.page.source}|${foreign.defers.source}|${foreign.example.source}`),
    );
  }
}

/** Ways to say a chance that mislead: one in x, a word for a count, a ratio without the two counts. */
const misleading: Record<Language, RegExp> = {
  en: new RegExp(
    [
      String.raw`\b(1|one) in (every )?(\d|two|three|four|five|ten|a hundred|a thousand)`,
      String.raw`\b(very |un)?(rare|rarely|uncommon|unlikely|seldom)\b`,
      String.raw`\b(twice|double|triple|half) (as|the) (many|much|likely|often|risk|chance)`,
      String.raw`\btimes (as|more|less|higher|lower|the) `,
      String.raw`(%|percent) (more|less|higher|lower|fewer|greater) `,
      String.raw`\b(risk|chance) (falls|rises|drops|grows|is cut) by\b`,
      String.raw`\b(odds|hazard|risk) ratio\b`,
    ].join('|'),
    'i',
  ),
  es: new RegExp(
    [
      String.raw`\b(1|una?|uno) de cada\b`,
      String.raw`\b(raro|rara|raros|raras|raramente|rara vez|poco frecuente|poco probable|improbable)\b`,
      String.raw`\b(el doble|el triple|la mitad) (de|del) (riesgo|veces|posibilidad|probabilidad)`,
      String.raw`\d veces (más|menos|mayor|menor)`,
      String.raw`(%|por ciento) (más|menos|mayor|menor) (de riesgo|probab|posib|veces|que)`,
      String.raw`\b(riesgo|posibilidad) (baja|sube|aumenta|disminuye) (un|en un)\b`,
      String.raw`\brazón de (riesgos|momios|probabilidades)\b`,
    ].join('|'),
    'i',
  ),
};

export function expectNoMisleadingChance(packet: Packet, language: Language): void {
  expect(packet.pages.length).toBeGreaterThan(5);
  const found = packet.pages.flatMap(({ text, document }) => {
    const words = misleading[language].exec(text)?.[0];
    return words === undefined ? [] : [`${document}: ${words}`];
  });
  expect(found).toEqual([]);
}
