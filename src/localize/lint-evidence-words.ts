import { comparePositions } from '../diagnostics/compare-positions.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import { listLanguages, readLocale } from './read-locale.ts';
import { faultAt, faultOfAbsent } from './rules/rule.ts';
import type { Words } from './words.ts';

type Named = Pick<
  EvidenceBase,
  'options' | 'outcomes' | 'metrics' | 'cautions' | 'criteria' | 'consentElements'
>;

/**
 * Words that the evidence calls for and a language lacks, and words for codes that the evidence does not define. A
 * language whose files cannot be read is left to `lintLocales`.
 */
export async function lintEvidenceWords(
  workspace: Workspace,
  folder: string,
  evidence: Named,
): Promise<readonly Diagnostic[]> {
  const tags = await listLanguages(workspace, folder);
  const read = await Promise.all(tags.map((tag) => readLocale(workspace, folder, tag)));
  const languages = read.flatMap((result) => (result.ok ? [result.value.words] : []));
  const wanted = wantedKeys(evidence);
  const defined = definedCodes(evidence);
  return languages
    .flatMap((words) => [...lacking(words, wanted), ...surplus(words, defined)])
    .sort(comparePositions);
}

function lacking(words: Words, wanted: readonly string[]): readonly Diagnostic[] {
  return wanted
    .filter((key) => !words.entries.has(key) && !words.entries.has(`${key}_other`))
    .map((key) =>
      faultOfAbsent(words, key, {
        code: 'LOCALE_KEY_MISSING',
        message: `${words.tag} has no words for ${key}, which the evidence calls for`,
        hint: 'Write them; the head of the file says how long they may be.',
      }),
    );
}

/** Keys of every text that a page may ask for because of the evidence. */
function wantedKeys(named: Named): readonly string[] {
  const { options, outcomes, metrics, cautions, criteria, consentElements } = named;
  const each = (start: string, parts: readonly string[]): readonly string[] =>
    parts.map((part) => `${start}.${part}`);
  return [
    ...options.flatMap(({ code, choosable }) => [
      ...each(`options.${code}`, ['name', 'in_text', 'trade', 'choice']),
      ...(choosable ? each(`options.${code}`, ['undo', 'weight_after', 'unknown', 'for_life']) : []),
    ]),
    ...outcomes.flatMap(({ code }) => each(`outcomes.${code}`, ['name', 'explained'])),
    ...cautions.map(({ id, basis }) => `cautions.${id}.${basis === 'page' ? 'statement' : 'ask'}`),
    ...cautions.flatMap(({ id, call_now: signs }) =>
      signs === undefined ? [] : [`cautions.${id}.choice`, ...each('aftercare.signs', signs)],
    ),
    ...metrics.map(({ code }) => `codes.metrics.${code}`),
    ...criteria.flatMap(({ id, by }) => (by === 'none' ? [] : `criteria.${id}`)),
    ...consentElements.map(({ id }) => `consent-elements.${id}`),
    // By these the pages are searched.
    ...consentElements.flatMap(({ where }) => (where ?? []).map(({ words }) => words)),
  ];
}

/** For each file of words that is ordered by codes of the evidence, the codes there are. */
function definedCodes({
  options,
  outcomes,
  cautions,
  criteria,
  consentElements,
}: Named): ReadonlyMap<string, ReadonlySet<string>> {
  return new Map([
    ['options', new Set(options.map(({ code }) => code))],
    ['outcomes', new Set(outcomes.map(({ code }) => code))],
    ['cautions', new Set(cautions.map(({ id }) => id))],
    ['consent-elements', new Set(consentElements.map(({ id }) => id))],
    ['criteria', new Set(criteria.filter(({ by }) => by !== 'none').map(({ id }) => id))],
  ]);
}

/** One finding a code, however many words it has. */
function surplus(words: Words, defined: ReadonlyMap<string, ReadonlySet<string>>): readonly Diagnostic[] {
  const seen = new Set<string>();
  return [...words.entries.values()].flatMap((entry) => {
    const [file = '', code = ''] = entry.key.split('.');
    const known = defined.get(file);
    const name = `${file}.${code}`;
    if (known === undefined || known.has(code) || seen.has(name)) return [];
    seen.add(name);
    return [
      faultAt(entry, {
        code: 'LOCALE_KEY_UNUSED',
        message: `the evidence has no ${code} for these words`,
        hint: 'Correct the code, or remove the words.',
      }),
    ];
  });
}
