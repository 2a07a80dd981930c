import type { PassiveWords } from './locale.ts';
import { sentencesIn } from './word-forms.ts';

export interface PassiveShare {
  readonly sentences: number;
  /** Sentences that say what is done to somebody, and not who does it. */
  readonly passive: readonly string[];
}

/**
 * Sentences in which a form of the verb is followed by a participle, with nothing between but the words that may stand
 * there. It reads words, not grammar: "is gone" and "is not known" are none, "is closed" is one.
 */
export function findPassives(texts: readonly string[], words: PassiveWords): PassiveShare {
  const sentences = texts.flatMap(sentencesIn).filter((sentence) => /\p{L}/u.test(sentence));
  return { sentences: sentences.length, passive: sentences.filter((sentence) => isPassive(sentence, words)) };
}

function isPassive(sentence: string, words: PassiveWords): boolean {
  const said = wordsIn(sentence);
  return said.some((word, index) => {
    if (!words.verbs.includes(word)) return false;
    const rest = said.slice(index + 1);
    const next = rest.find((one) => !words.between.includes(one));
    return next !== undefined && isParticiple(next, words);
  });
}

function isParticiple(word: string, { endings, participles, others }: PassiveWords): boolean {
  if (others.includes(word)) return false;
  return (
    participles.includes(word) ||
    endings.some((ending) => word.length > ending.length + 1 && word.endsWith(ending))
  );
}

/** Words in small letters. */
export function wordsIn(text: string): readonly string[] {
  return text.toLowerCase().match(/\p{L}[\p{L}’'-]*/gu) ?? [];
}
