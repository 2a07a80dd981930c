/** A locale.yaml for tests of words. */
export const localeSettings = (commonWords: string): string => `name: Some language
direction: ltr
format: en-US
first_weekday: sunday
range_word: to
units: { kilogram: '{{n}} kg', pound: '{{n}} lb' }
common_words: [${commonWords}]
misleading: { never: [rare, '1 in #'], only_with_count: [common] }
sentence_words: 12
`;
