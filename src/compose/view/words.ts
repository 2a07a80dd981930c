import type { LocalText } from '../../model/scalars.ts';
import type { Locale, Markup, TextVariable } from '../../model/locale.ts';
import { hasDecimalComma } from '../../model/list-marks.ts';
import { spaceBetween } from '../../model/wide-marks.ts';
import { escapeText, plainText, withoutTags } from '../markup/escape-text.ts';

type Variables = Readonly<Record<string, TextVariable>>;

/** Words of the document's language. All throw WordsError for a missing key or variable. */
export interface Words {
  /** Markup for a line of text. */
  readonly say: (key: string, variables?: Variables) => Markup;
  /** Plain text for a name, a label or an alternative to a picture. */
  readonly plain: (key: string, variables?: Variables) => string;
  readonly has: (key: string) => boolean;
  /** The mark that shows where the decimals of a number begin. */
  readonly decimalMark: string;
  /** Whether a sentence after a colon begins with a small letter. */
  readonly smallAfterColon: boolean;
  /** Free text of the case or clinic in the document's language, else in the first it has, marked as such. */
  readonly free: (text: LocalText) => Markup;
}

export function makeWords(locale: Locale): Words {
  const { translator, tag } = locale;
  // Names of options and outcomes are asked for again and again.
  const bare = new Map<string, string>();
  const bareText = (key: string): string => {
    const text = bare.get(key) ?? plainText(translator.text(key));
    bare.set(key, text);
    return text;
  };
  return {
    say: (key, variables) => ({ markup: translator.text(key, variables) }),
    plain: (key, variables) =>
      variables === undefined ? bareText(key) : plainText(translator.text(key, variables)),
    has: translator.has,
    smallAfterColon: locale.smallAfterColon === true,
    decimalMark: locale.formatter.number(0.5).charAt(1),
    free: (text) => {
      const [language, words] = freeText(text, tag);
      return inLanguage(words, { language, document: tag });
    },
  };
}

/** Free text in a language if it has it, else the first by code; with the language it is in. */
export function freeText(text: LocalText, tag: string): readonly [language: string, words: string] {
  const own = text[tag];
  if (own !== undefined) return [tag, own];
  const [language, words] = Object.entries(text).sort(([a], [b]) => (a < b ? -1 : 1))[0] ?? [tag, ''];
  return [language, words];
}

/** Plain text as markup, marked with its language where that is not the document's. */
export function inLanguage(
  words: string,
  tags: { readonly language: string; readonly document: string },
): Markup {
  const escaped = escapeText(words);
  return {
    markup:
      tags.language === tags.document
        ? escaped
        : `<lang code="${escapeText(tags.language)}">${escaped}</lang>`,
  };
}

/** Plain text, for example a name, as markup. */
export function asMarkup(words: string): Markup {
  return { markup: escapeText(words) };
}

/** Several sentences one after the other. */
export function joined(...parts: readonly Markup[]): Markup {
  const said = parts.map((part) => part.markup).filter((part) => part !== '');
  return {
    markup: said
      .map((part, at) => (at === 0 ? part : spaceBetween(said[at - 1] ?? '', part) + part))
      .join(''),
  };
}

/** A lead and what follows it on the same line. */
export function runIn(words: Words, lead: Markup, text: Markup): Markup {
  return joined(lead, /:(?:<[^>]*>)*$/.test(lead.markup) ? afterColon(words, text) : text);
}

/** A sentence after a colon: with a small letter where the language asks for it. */
export function afterColon({ smallAfterColon }: Words, text: Markup): Markup {
  return smallAfterColon ? { markup: text.markup.replace(firstCapital, small) } : text;
}

/** The capital of a first word in the language of the page; none of "HbA1c" or of a quotation in another language. */
const firstCapital = /^((?:<(?!lang\b)[^>]*>)*)(\p{Lu})(?=[\p{Ll}\p{M}’-]*(?![\p{L}\p{Nd}.]))/u;

function small(_: string, tags: string, letter: string): string {
  return tags + letter.toLowerCase();
}

/** A mark at which a sentence ends in one of the languages, maybe before a closing quotation mark. */
const sentenceEnd = /[.!?…؟।。！？]["”»」』]?$/u;

/** Whether words end as a sentence by themselves. */
export function endsSentence(markup: string): boolean {
  return sentenceEnd.test(withoutTags(markup));
}

/** Words with the mark at which a sentence of the language ends, unless they end in one of their own. */
export function sentence(words: Words, text: Markup): Markup {
  return endsSentence(text.markup) ? text : words.say('common.sentence', { text });
}

type Between = 'items' | 'clauses';

/** Parts with the marks of the language between them: those of a list, or stronger ones between clauses. */
export function series(words: Words, between: Between, parts: readonly Markup[]): Markup {
  const texts = parts.map(({ markup }) => withoutTags(markup));
  const key = `common.between.${markBetween(words, between, texts)}`;
  const [last = asMarkup(''), ...before] = [...parts].reverse();
  return before.reduce((rest, first) => words.say(key, { first, rest }), last);
}

/** The same of texts that hold no markup, for a name or a label. */
export function plainSeries(words: Words, between: Between, texts: readonly string[]): string {
  const key = `common.between.${markBetween(words, between, texts)}`;
  const [last = '', ...before] = [...texts].reverse();
  return before.reduce((rest, first) => words.plain(key, { first, rest }), last);
}

function markBetween({ decimalMark }: Words, between: Between, texts: readonly string[]): Between {
  return hasDecimalComma(texts, decimalMark) ? 'clauses' : between;
}

/** Parts that bring their own punctuation: "largest; BMI assumed". */
export function attached(...parts: readonly Markup[]): Markup {
  return { markup: parts.map((part) => part.markup).join('') };
}

export function bold(words: Markup): Markup {
  return { markup: `<b>${words.markup}</b>` };
}

/**
 * A figure in words, tied to its cell and records, so that it can be followed to its source and read back. `alone` is
 * what it says where no sentence over it gives the number of people it is out of.
 */
export function figure(
  value: string,
  source: { readonly cell: string; readonly records: readonly string[] },
  alone = value,
): Markup {
  const records = source.records.map(escapeText).join(' ');
  const apart = alone === value ? '' : ` alone="${escapeText(alone)}"`;
  return {
    markup: `<fig cell="${escapeText(source.cell)}" records="${records}"${apart}>${escapeText(value)}</fig>`,
  };
}

/** Whole sentences tied to the rows of the evidence that they stand on (see model/statement.ts). */
export function standingOn(statements: readonly string[], words: Markup): Markup {
  if (words.markup === '' || statements.length === 0) return words;
  return { markup: `<stands on="${statements.map(escapeText).join(' ')}">${words.markup}</stands>` };
}
