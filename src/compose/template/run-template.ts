import Handlebars from 'handlebars';

import { InternalError } from '../../diagnostics/diagnostic.ts';
import type { Markup, TextVariable, Translator } from '../../model/locale.ts';
import type { ParsedTemplate } from './parse-template.ts';

/** A compiled template: gives the markup for a view model in the words of a language. */
export type RunTemplate = (view: object, translator: Translator) => string;

const knownHelpers = { t: true, say: true, if: true, unless: true, each: true };

/** Compiles a template with its partials. Escaping stays on; no helper but the closed list can be called. */
export function compileTemplate(
  template: ParsedTemplate,
  partials: ReadonlyMap<string, ParsedTemplate>,
): RunTemplate {
  const environment = Handlebars.create();
  const options = { strict: true, knownHelpers, knownHelpersOnly: true, preventIndent: true };
  const compiledPartials = Object.fromEntries(
    [...partials].map(([name, partial]) => [name, environment.compile(partial.program, options)]),
  );
  const run = environment.compile<object>(template.program, options);
  return (view, translator) => run(view, { helpers: helpersFor(translator), partials: compiledPartials });
}

function helpersFor(translator: Translator): Record<string, (...values: readonly unknown[]) => unknown> {
  return {
    t: (...values) => {
      const [key, options] = [values[0], values.at(-1)];
      if (typeof key !== 'string') throw new InternalError('the helper t needs a key');
      // The only markup that words hold is <b>, so every quotation mark is text and can be escaped for attributes.
      const words = translator.text(key, hashOf(options)).replaceAll('"', '&quot;');
      return new Handlebars.SafeString(words);
    },
    say: (...values) => {
      const words = values[0];
      if (!isMarkup(words)) throw new InternalError('the helper say needs words made by the view model');
      return new Handlebars.SafeString(words.markup);
    },
  };
}

function hashOf(options: unknown): Readonly<Record<string, TextVariable>> {
  const hash = typeof options === 'object' && options !== null && 'hash' in options ? options.hash : {};
  return hash as Readonly<Record<string, TextVariable>>;
}

function isMarkup(value: unknown): value is Markup {
  return typeof value === 'object' && value !== null && 'markup' in value && typeof value.markup === 'string';
}
