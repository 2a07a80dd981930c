const names = new Intl.DisplayNames('en', { type: 'language' });

/** Name of a language for those who work with plainleaf, whose commands speak English. */
export function englishName(tag: string): string {
  return names.of(tag) ?? tag;
}
