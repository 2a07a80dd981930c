import { describe, expect, it } from 'vitest';

import { conditionCodes, historyCodes, medicineCodes } from '../../../src/model/codes.ts';
import type { Indication, RecordUse } from '../../../src/model/comparison.ts';
import { IndicationSchema, RecordTimeSchema, ShareValueSchema } from '../../../src/model/evidence-record.ts';
import { SeenSchema, StudyDesignSchema } from '../../../src/model/study.ts';
import { allLanguages } from '../../helpers/all-languages.ts';
import { shippedLocale } from '../../helpers/locale-words.ts';

/** The type makes a new one a fault here. */
const ledBy: Readonly<Record<RecordUse['ledBy'] | 'course', true>> = {
  'only-one': true,
  match: true,
  time: true,
  measure: true,
  'side-by-side': true,
  course: true,
  design: true,
  dose: true,
  size: true,
  year: true,
  id: true,
  'clinic-preference': true,
};
const histories: Readonly<Record<Indication, true>> = {
  'first-operation': true,
  'after-band': true,
  'after-sleeve': true,
  'after-bypass': true,
  'after-plication': true,
  'after-other': true,
  'band-trouble': true,
  none: true,
};
/** A percent of this weight is one of today's, so it is never a reason. */
const references = ShareValueSchema.shape.reference
  .unwrap()
  .options.filter((reference) => reference !== 'before-this-operation');
const timesWithoutNumber = ['peri-operative'];

describe.each(['en', 'es'])('the words of the clinician sheet in %s', (tag) => {
  const keys: Readonly<Record<string, readonly string[]>> = {
    conditions: conditionCodes,
    medicines: medicineCodes,
    history: historyCodes,
    indications: [...IndicationSchema.options, ...Object.keys(histories)],
    designs: StudyDesignSchema.options,
    time: RecordTimeSchema.shape.basis.options.filter((basis) => !timesWithoutNumber.includes(basis)),
    seen: SeenSchema.options,
    reference: references,
    led_by: Object.keys(ledBy),
    why: Object.keys(ledBy),
  };

  it.each(Object.entries(keys))('name every code of %s', async (group, codes) => {
    const { translator } = await shippedLocale(tag);
    expect(codes.filter((code) => !translator.has(`clinician-sheet.${group}.${code}`))).toEqual([]);
  });

  it('are short where they stand in narrow columns', async () => {
    const { translator } = await shippedLocale(tag);
    const long = Object.keys(ledBy).filter(
      (code) => translator.text(`clinician-sheet.led_by.${code}`).length > 14,
    );
    expect(long).toEqual([]);
  });

  it('tell each thing that decides apart, in the row and in the sentence that explains it', async () => {
    const { translator } = await shippedLocale(tag);
    const said = Object.keys(ledBy).map((code) => ({
      word: translator.text(`clinician-sheet.led_by.${code}`),
      sentence: translator.text(`clinician-sheet.why.${code}`),
    }));
    expect(said.filter(({ sentence }) => !sentence.endsWith('.'))).toEqual([]);
    const heads = said.map(({ sentence }) => /^<b>(.+):<\/b> /.exec(sentence)?.[1]?.toLowerCase());
    expect(heads).toEqual(said.map(({ word }) => word));
  });
});

const english = /inglés|inglês|anglais|anglè|английски|الإنجليزية|英文|अंग्रेज़ी|영어|tiếng Anh|Ingles/;

it.each(allLanguages.filter((tag) => tag !== 'en'))(
  'words of a record, which are English, are called so on the sheet in %s',
  async (tag) => {
    const { translator } = await shippedLocale(tag);
    const said = [
      translator.text('clinician-sheet.reasons.variant', { variant: 'x' }),
      translator.text('clinician-sheet.cautions.from_record', { statement: 'x' }),
    ];
    expect(said.filter((words) => !english.test(words))).toEqual([]);
  },
);
