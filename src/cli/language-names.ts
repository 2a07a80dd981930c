const names = new Intl.DisplayNames('en', { type: 'language' });

/** Unicode calls Tagalog Filipino; our words are Tagalog. */
const ours: ReadonlyMap<string, string> = new Map([['tl', 'Tagalog']]);

/** Name of a language for those who work with plainleaf, whose commands speak English. */
export function englishName(tag: string): string {
  return ours.get(tag) ?? names.of(tag) ?? tag;
}
