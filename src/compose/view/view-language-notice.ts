import type { Locale } from '../../model/locale.ts';
import type { Scene } from './scene.ts';
import { group, list, markup } from './shape.ts';
import type { Viewed } from './shape.ts';
import { inLanguage, makeWords } from './words.ts';

export const languageNoticeShape = group({
  /** Each language in itself: its name, and that help is free. */
  languages: list(group({ name: markup, statement: markup })),
});

/** That language help is free, in every language that the clinic lists, and in that of the packet. */
export function viewLanguageNotice(scene: Scene): Viewed<typeof languageNoticeShape> {
  const { clinic, locale, otherLocales = [] } = scene;
  const { languages = [], phone = '' } = clinic.language_notice ?? {};
  const tags = languages.some((tag) => tag === locale.tag) ? languages : [...languages, locale.tag];
  const listed = tags.flatMap((tag) => [locale, ...otherLocales].filter((one) => one.tag === tag));
  return {
    languages: listed.map((one) => ({
      name: written(scene, one, one.name),
      statement: written(scene, one, makeWords(one).plain('language-notice.statement', { phone })),
    })),
  };
}

function written(scene: Scene, { tag }: Locale, words: string) {
  return inLanguage(words, { language: tag, document: scene.locale.tag });
}
