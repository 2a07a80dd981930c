// Source: veraPDF (https://verapdf.org), the version in tests/tooling/pdf-validator/pom.xml, rules of PDF/UA-1
// (ISO 14289-1) and PDF/A-3a (ISO 19005-3). Every document of every example case in every language, as it is released.
import { beforeAll, describe, expect, it } from 'vitest';

import { exampleCases, exampleLanguages, makeExample } from '../helpers/example-packets.ts';
import { validateBytes, validatorAvailable } from '../helpers/validate-pdf.ts';
import type { NamedPdf } from '../helpers/validate-pdf.ts';

describe.skipIf(!validatorAvailable())('the PDF validator', () => {
  const packets: NamedPdf[] = [];

  beforeAll(async () => {
    for (const reference of exampleCases) {
      for (const language of exampleLanguages) {
        const { pdf } = await makeExample(reference, language);
        packets.push({ name: `${reference}-${language}`, bytes: pdf });
      }
    }
    const draft = await makeExample('QB-0983', 'es', (text) =>
      text.replace(/^example: true$/m, 'example: false'),
    );
    packets.push({ name: 'draft-es', bytes: draft.pdf });
  }, 400_000);

  it.each(['ua1', '3a'] as const)(
    'passes every packet and a draft by %s',
    async (flavour) => {
      const verdicts = await validateBytes(packets, flavour);
      expect(verdicts).toHaveLength(exampleCases.length * exampleLanguages.length + 1);
      expect(verdicts.filter(({ passed }) => !passed)).toEqual([]);
    },
    200_000,
  );
});
