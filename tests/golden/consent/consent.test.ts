import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

import { checkConsent } from '../../../src/score/check-consent.ts';
import { expectedText } from '../../../src/model/tree-text.ts';
import { consentAbout, consentCase, wholeCase } from '../../helpers/consent-cases.ts';
import type { ConsentCase } from '../../helpers/consent-cases.ts';

const update = process.env['UPDATE'] === '1';
if (update && (process.env['CI'] ?? '') !== '')
  throw new Error('UPDATE=1 is refused when CI is set: goldens are read by a person first');

const folder = import.meta.dirname;
const cases = {
  'first-operation': ['QB-1128', (text: string) => text],
  'under-study': wholeCase,
  medicine: ['QB-1115', consentAbout('semaglutide')],
  'nothing-new': ['QB-1115', consentAbout('no-operation')],
  'many-illnesses': ['QB-1102', consentAbout('sleeve')],
  'after-a-band': ['QB-0755', consentAbout('band-removal')],
} as const;

/** The record word for word, then where each element stands. */
function describeConsent({ documents, input }: ConsentCase): string {
  const tree = documents.find(({ kind }) => kind === 'consent');
  const said = tree === undefined ? [] : expectedText(tree).map(({ text }) => text.replace(/\s+/g, ' '));
  const elements = checkConsent(input).map(({ element, outcome, places }) => {
    const headings = [...new Set(places.map(({ heading }) => heading ?? 'at the top'))];
    return `${element.id} ${outcome}${headings.length === 0 ? '' : `: ${headings.join('; ')}`}`;
  });
  return [...said, '', ...elements, ''].join('\n');
}

describe('the record of the talk', () => {
  it.each(Object.entries(cases))(
    '%s says what it said when it was last read',
    async (name, [reference, change]) => {
      for (const language of ['en', 'es']) {
        const text = describeConsent(await consentCase([reference, change], language));
        const golden = join(folder, `${name}.${language}.txt`);
        if (update) writeFileSync(golden, text);
        expect(existsSync(golden) ? readFileSync(golden, 'utf8') : '').toBe(text);
      }
    },
  );

  it.each(Object.entries(cases))('%s lacks nothing', async (_name, [reference, change]) => {
    const { input } = await consentCase([reference, change], 'en');
    const lost = checkConsent(input).filter(({ outcome }) => outcome === 'lost');
    expect(lost.map(({ element }) => element.id)).toEqual([]);
  });

  it('lists on the clinician sheet every element that applies, with who asks for it', async () => {
    const { documents, input } = await consentCase(wholeCase, 'en');
    const sheet = documents.find(({ kind }) => kind === 'clinician-sheet');
    const said =
      sheet === undefined
        ? ''
        : expectedText(sheet)
            .map(({ text }) => text)
            .join('\n');
    const missing = checkConsent(input).filter(
      ({ element }) => !said.includes(input.locale.translator.text(`consent-elements.${element.id}`)),
    );
    expect(missing.map(({ element }) => element.id)).toEqual([]);
    expect(said).toContain('Understanding is checked (Joint Commission†).');
  });
});
