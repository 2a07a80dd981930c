// Sources: veraPDF (https://verapdf.org), the version in tests/tooling/pdf-validator/pom.xml, rules of PDF/UA-1
// (ISO 14289-1) and PDF/A-3a (ISO 19005-3); pdf.js (through pdf-parse) and poppler (https://poppler.freedesktop.org), two
// readers that share no code with each other. Packets in every language, with every kind of document, made once.
import { describe, expect, it } from 'vitest';

import { documentKinds } from '../../src/model/codes.ts';
import type { DocumentTree } from '../../src/model/document.ts';
import { expectedAlternatives } from '../../src/model/tree-pictures.ts';
import { comparisonFor } from '../../src/verify/normalize-text.ts';
import { readDocument } from '../../src/verify/read-document.ts';
import { allLanguages } from '../helpers/all-languages.ts';
import { clinicEnglish } from '../helpers/clinic-english.ts';
import { firstDifference } from '../helpers/first-difference.ts';
import { comparisonCases, languagePackets, printPacket } from '../helpers/language-packets.ts';
import type { AskedPacket, PrintedPacket } from '../helpers/language-packets.ts';
import { partsByPoppler, popplerAvailable, readWithPoppler } from '../helpers/second-readers.ts';
import { structureByPdfJs } from '../helpers/structure-by-pdfjs.ts';
import {
  foreignAlternatives,
  foreignBesideRibbons,
  ribbonTexts,
  structuredTexts,
  textsBesideRibbons,
} from '../helpers/structured-texts.ts';
import { validateBytes, validatorAvailable } from '../helpers/validate-pdf.ts';

const made = new Map<string, Promise<PrintedPacket>>();

function printed(asked: AskedPacket): Promise<PrintedPacket> {
  const packet = made.get(asked.name) ?? printPacket(asked);
  made.set(asked.name, packet);
  return packet;
}

/** Letters and digits alone: poppler hands the marks between words from right to left back at either of their ends. */
const onlyLetters = (text: string): string => text.normalize('NFC').replace(/[^\p{L}\p{Mc}\p{Nd}]/gu, '');

/** The letters of each text in an order of their own, as long as that text is. */
function sortedBy(texts: readonly string[], print: string): readonly string[] {
  let at = 0;
  return texts.map((text) => {
    const letters = Array.from(print.slice(at, at + text.length)).sort();
    at += text.length;
    return letters.join('');
  });
}

/** Where what poppler reads of a document parts from the document. */
function differenceByPoppler(tree: DocumentTree, print: string): unknown {
  const texts = structuredTexts(tree);
  const compact = tree.direction === 'rtl' ? onlyLetters : comparisonFor(tree);
  const expected = texts.map(compact);
  const read = compact(print);
  if (tree.direction === 'ltr') return firstDifference(read, expected.join(''));
  const [inFile, inTree] = [read, expected.join('')].map((all) =>
    sortedBy([...expected, '\n'.repeat(99)], all),
  );
  const at = inTree?.findIndex((letters, index) => letters !== inFile?.[index]) ?? 0;
  return at < 0 ? null : texts[at];
}

describe('the packets in every language', () => {
  it('hold every kind of document in each language, and every case that compares', async () => {
    const kindsOf = async (language: string): Promise<readonly string[]> => {
      const packets = await Promise.all(
        languagePackets.filter((asked) => asked.language === language).map(printed),
      );
      return packets.flatMap(({ packet }) => packet.documents.map(({ kind }) => kind));
    };
    expect(allLanguages.length).toBeGreaterThanOrEqual(12);
    for (const language of allLanguages)
      expect(new Set(await kindsOf(language))).toEqual(new Set(documentKinds));
    const cases = languagePackets.map(({ reference }) => reference);
    for (const reference of comparisonCases)
      expect(cases.filter((other) => other === reference).length).toBeGreaterThan(1);
  }, 1_800_000);

  it.each(languagePackets)('come back whole: $name', async (asked) => {
    const { report } = await printed(asked);
    expect(report.findings).toEqual([]);
    expect(report.statements).toBeGreaterThan(100);
  });

  it.each(languagePackets)('are read in the order of the documents, by pdf.js: $name', async (asked) => {
    const { packet, pdf } = await printed(asked);
    const { texts, alternatives } = await structureByPdfJs(pdf);
    const compact = comparisonFor(packet.documents[0] ?? { direction: 'ltr' });
    const ribbons = packet.documents.flatMap(ribbonTexts).map(compact);
    const isRibbon = ({ text, pictured }: { text: string; pictured: boolean }): boolean =>
      pictured && ribbons.includes(compact(text));
    // A mark that joins two digits may stand where a line ends: so what is compared is the whole, not piece by piece.
    const whole = (parts: readonly string[]): string => compact(parts.join('\n'));
    const beside = texts.filter((one) => !isRibbon(one)).map(({ text }) => text);
    expect(firstDifference(whole(beside), whole(packet.documents.flatMap(textsBesideRibbons)))).toBeNull();
    expect(texts.filter(isRibbon).map(({ text }) => compact(text))).toEqual(ribbons);
    expect(alternatives).toEqual(packet.documents.flatMap(expectedAlternatives));
  });

  it.each(languagePackets)('say in which language each word is: $name', async (asked) => {
    const { packet, pdf } = await printed(asked);
    const { language, texts } = await structureByPdfJs(pdf);
    const compact = comparisonFor(packet.documents[0] ?? { direction: 'ltr' });
    const own = texts.filter((text) => text.language === asked.language);
    const others = texts.filter((text) => text.language !== asked.language);
    // What a reader hears of a picture is its alternative.
    const heard = (parts: typeof texts): readonly string[] =>
      parts.map(({ text, alternative }) => alternative ?? text);
    expect(language).toBe(asked.language);
    const marked = compact(packet.documents.flatMap(foreignBesideRibbons).join('\n'));
    const beside = others.filter(({ pictured }) => !pictured);
    expect(firstDifference(compact(heard(beside).join('\n')), marked)).toBeNull();
    const pictures = others.filter(({ pictured }) => pictured);
    expect(heard(pictures)).toEqual(packet.documents.flatMap(foreignAlternatives));
    const ownWords = compact(heard(own).join('\n'));
    const unmarked = clinicEnglish(asked).filter((text) => ownWords.includes(compact(text)));
    expect(unmarked).toEqual([]);
  });

  // The time that poppler takes for a structure grows with the square of its pages.
  it.skipIf(!popplerAvailable()).each(languagePackets.filter(({ reference }) => reference === 'QB-1141'))(
    'are read in the order of the documents, by poppler: $name',
    async (asked) => {
      const { packet, pdf } = await printed(asked);
      const parts = partsByPoppler(pdf);
      expect(parts).toHaveLength(packet.documents.length);
      packet.documents.forEach((tree, index) => {
        expect(differenceByPoppler(tree, parts[index] ?? '')).toBeNull();
      });
    },
  );

  // From right to left poppler puts the words of a painted line in an order of its own; the structure is read above.
  it.skipIf(!popplerAvailable()).each(languagePackets.filter(({ language }) => language !== 'ar'))(
    'are painted with every text in its place, and nothing else, by poppler: $name',
    async (asked) => {
      const { packet, pdf, pages } = await printed(asked);
      const read = readWithPoppler(pdf);
      const placed = pages.map((place, index) => ({ ...place, number: index + 1, text: read[index] ?? '' }));
      packet.documents.forEach((tree, document) => {
        const own = placed.filter((page) => page.document === document);
        const { lost, leftovers, absentFurniture } = readDocument(tree, own);
        const found = { lost: lost.map(({ text }) => text.text), leftovers, absentFurniture };
        expect(found).toEqual({ lost: [], leftovers: [], absentFurniture: [] });
      });
    },
  );

  it.skipIf(!validatorAvailable()).each(['ua1', '3a'] as const)(
    'pass the validator by %s',
    async (flavour) => {
      const packets = await Promise.all(languagePackets.map(printed));
      const verdicts = await validateBytes(
        packets.map(({ name, pdf }) => ({ name, bytes: pdf })),
        flavour,
      );
      expect(verdicts).toHaveLength(languagePackets.length);
      expect(verdicts.filter(({ passed }) => !passed)).toEqual([]);
    },
    600_000,
  );
});
