import type { SourceSpan } from '../diagnostics/diagnostic.ts';
import type { GlossaryTerm } from '../model/glossary.ts';
import type { Term } from '../model/terms.ts';
import type { LocaleSettings } from '../model/locale-settings.ts';

/** One text of a language and where it stands. */
export interface Entry {
  /** Namespace and path joined by dots: `options.sleeve.name`, with a plural suffix where it has one. */
  readonly key: string;
  readonly text: string;
  readonly span: SourceSpan;
}

/** All words of one language, as written. */
export interface Words {
  readonly tag: string;
  readonly folder: string;
  readonly settings: LocaleSettings;
  readonly glossary: readonly GlossaryTerm[];
  /** Words of the trade, each translated in one way. */
  readonly terms: readonly Term[];
  readonly entries: ReadonlyMap<string, Entry>;
}

/** `{{name}}`: a letter, then letters, digits or underscores. */
const variable = /\{\{([A-Za-z][A-Za-z0-9_]*)\}\}/g;

/** Names of the variables of a text, sorted, each once. */
export function variablesOf(text: string): readonly string[] {
  const names = [...text.matchAll(variable)].map(([, name = '']) => name);
  return [...new Set(names)].sort((a, b) => (a < b ? -1 : 1));
}

export function withoutVariables(text: string): string {
  return text.replace(variable, ' ');
}

const categories = ['zero', 'one', 'two', 'few', 'many', 'other'];

/**
 * Keys of the texts that have plural forms. Every language has the form `other`, so a key such as `too_few` is not
 * taken for a form.
 */
export function countedKeys(languages: readonly Pick<Words, 'entries'>[]): ReadonlySet<string> {
  const keys = languages.flatMap(({ entries }) => [...entries.keys()]);
  return new Set(keys.filter((key) => key.endsWith('_other')).map((key) => key.slice(0, -'_other'.length)));
}

export interface PluralKey {
  readonly base: string;
  readonly category: string;
}

/** Base and category of a plural form's key, or undefined for a key that is no form of a counted text. */
export function pluralOf(key: string, counted: ReadonlySet<string>): PluralKey | undefined {
  const cut = key.lastIndexOf('_');
  const [base, category] = [key.slice(0, cut), key.slice(cut + 1)];
  return categories.includes(category) && counted.has(base) ? { base, category } : undefined;
}

/** The key that code asks for: without the plural suffix. */
export function askedKey(key: string, counted: ReadonlySet<string>): string {
  return pluralOf(key, counted)?.base ?? key;
}

/**
 * Finds the text of the base language that the text of a key comes from. A plural form that the base language has not comes
 * from its form `other`.
 */
export function sourcesIn(base: Pick<Words, 'entries'>): (key: string) => Entry | undefined {
  const counted = countedKeys([base]);
  return (key) => base.entries.get(key) ?? base.entries.get(`${askedKey(key, counted)}_other`);
}

/** Forms of a plural text by category; empty for a text without forms. */
export function pluralForms(words: Words, base: string): ReadonlyMap<string, Entry> {
  const forms = categories.flatMap((category) => {
    const entry = words.entries.get(`${base}_${category}`);
    return entry === undefined ? [] : [[category, entry] as const];
  });
  return new Map(forms);
}

/** Whose plural forms a language has: its own, or those that its settings name. */
export function pluralLocale({ tag, settings }: Pick<Words, 'tag' | 'settings'>): string {
  return settings.plurals ?? tag;
}

/** The file a key belongs to. */
export function fileOf(words: Pick<Words, 'folder'>, key: string): string {
  return `${words.folder}/${key.split('.')[0] ?? key}.yaml`;
}
