import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { TranslationUnit } from '../model/translation.ts';
import { readPieces, variableNames } from './inline-codes.ts';
import type { ReturnedUnit } from './read-xliff.ts';

/** Everything for which translated texts must be refused, held against the texts as they stand now. */
export function checkReturned(
  returned: readonly ReturnedUnit[],
  present: readonly TranslationUnit[],
): readonly Diagnostic[] {
  const known = new Map(present.map((unit) => [unit.key, unit]));
  return returned
    .filter(({ target }) => target !== null)
    .flatMap((unit) => {
      const now = known.get(unit.key);
      return now === undefined ? [unknown(unit)] : [...outdated(unit, now), ...changedCodes(unit, now)];
    });
}

function unknown({ key, span }: ReturnedUnit): Diagnostic {
  const message = `there is no text ${key} to translate`;
  return { code: 'TRANSLATION_UNKNOWN', severity: 'error', message, hint: 'Leave it out.', path: key, span };
}

function outdated({ key, source, span }: ReturnedUnit, now: TranslationUnit): readonly Diagnostic[] {
  if (source === now.source) return [];
  const message = `the text of ${key} has changed since this file was written`;
  const hint = 'Export it again, and have it translated anew.';
  return [{ code: 'TRANSLATION_OUTDATED', severity: 'error', message, hint, path: key, span }];
}

/** "a day" says its count in words; a language whose form `one` is also that of 21 says it in digits. */
const saysItsCount = /_(?:zero|one|two)$/;
const isForm = /_(?:zero|one|two|few|many|other)$/;

function changedCodes({ key, target, span }: ReturnedUnit, now: TranslationUnit): readonly Diagnostic[] {
  const has = namesOf(target ?? '');
  const wanted = namesOf(now.source);
  const lost = [...wanted].filter((name) => !has.has(name) && !(name === 'count' && saysItsCount.test(key)));
  const others = [...has].filter((name) => !wanted.has(name) && !(name === 'count' && isForm.test(key)));
  if (lost.length + others.length === 0) return [];
  const listed = (names: readonly string[]): string => names.map((name) => `{{${name}}}`).join(', ');
  const parts = [
    ...(lost.length > 0 ? [`lost ${listed(lost)}`] : []),
    ...(others.length > 0 ? [`has ${listed(others)}, which is not in the source`] : []),
  ];
  const message = `the translation of ${key} ${parts.join(' and ')}`;
  const hint = 'Put the codes of the source into the translation, each where its value belongs.';
  return [{ code: 'TRANSLATION_CODE_LOST', severity: 'error', message, hint, path: key, span }];
}

function namesOf(text: string): ReadonlySet<string> {
  return new Set(variableNames(readPieces(text) ?? []));
}
