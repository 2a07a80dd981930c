import type { BatchSummary, Failure, LanguageCount, OpenGroup, UnwrittenIn } from '../batch/index.ts';
import { alignColumns, countOf } from './align-columns.ts';
import { englishName } from './language-names.ts';
import { sayOpenGroup } from './say-open-group.ts';

/** Texts of clinic and cases that are listed; enough to begin with. */
const mostTexts = 10;

/** How each language stands, then what keeps packets from being final, each said once with what to do next. */
export function showSummary({ languages, open, notMade }: BatchSummary): string {
  const words = open.filter(({ code }) => code === 'words' || code === 'words_changed');
  const texts = open.flatMap((group) => group.texts ?? []);
  const others = open.filter((group) => !words.includes(group) && group.code !== 'free_text');
  return [
    ...(languages.length === 0 ? [] : [countTable(languages, words)]),
    ...(words.length === 0 ? [] : [['Words', ...mergeAlike(words).flatMap(showWords)]]),
    ...(texts.length === 0 ? [] : [showTexts(texts)]),
    ...(others.length === 0 ? [] : [['Other points', ...others.flatMap(showOther)]]),
    ...(notMade.length === 0 ? [] : [['Not made', ...showFailures(notMade)]]),
  ]
    .map((part) => part.join('\n'))
    .join('\n\n');
}

function countTable(languages: readonly LanguageCount[], words: readonly OpenGroup[]): readonly string[] {
  const columns = ['final', 'draft', 'example', 'notMade'] as const;
  const shown = columns.filter(
    (column) => column === 'final' || languages.some((language) => language[column] > 0),
  );
  const heads = { final: 'final', draft: 'draft', example: 'example', notMade: 'not made' };
  const right = (text: string): string => text.padStart(8);
  return alignColumns([
    ['', '', ...shown.map((column) => right(heads[column])), 'words'],
    ...languages.map((count) => [
      count.language,
      englishName(count.language),
      ...shown.map((column) => right(String(count[column]))),
      stateOf(count, words),
    ]),
  ]);
}

/** How the words of the packets that were made stand. */
function stateOf({ language, final, draft, example }: LanguageCount, words: readonly OpenGroup[]): string {
  const all = final + draft + example;
  if (all === 0) return '';
  const open = words.filter(({ languages }) => languages.includes(language));
  if (open.length === 0) return 'reviewed';
  return open
    .map(({ code, packets }) => {
      const some = packets < all ? ` (${String(packets)} of ${countOf(all, 'packet')})` : '';
      return `${code === 'words' ? 'not reviewed' : 'changed since review'}${some}`;
    })
    .join(', ');
}

interface Merged {
  readonly group: OpenGroup;
  readonly tags: readonly string[];
}

/** Languages of which the same is to be said are named together. */
function mergeAlike(words: readonly OpenGroup[]): readonly Merged[] {
  const merged = new Map<string, Merged>();
  for (const group of words) {
    const { what, next } = sayOpenGroup(group, 'TAG');
    const said = [what, ...next].join('\n');
    const tags = merged.get(said)?.tags ?? [];
    merged.set(said, { group, tags: [...tags, ...group.languages] });
  }
  return [...merged.values()];
}

function showWords({ group, tags }: Merged): readonly string[] {
  const { what, next } = tags.length === 1 ? sayOpenGroup(group) : sayOpenGroup(group, 'TAG');
  return [`  ${tags.join(', ')}: ${what}`, ...next.map((step) => `    ${step}`)];
}

function showTexts(texts: readonly UnwrittenIn[]): readonly string[] {
  const rows = texts
    .slice(0, mostTexts)
    .map(({ file, line, field, languages }) => [
      `${file}:${String(line)}`,
      field,
      `not in ${languages.join(', ')}`,
    ]);
  const left = texts.length - rows.length;
  return [
    'Texts of the clinic and of cases that are not written in a language of their packets',
    ...alignColumns(rows, '  '),
    ...(left === 0 ? [] : [`  … and ${countOf(left, 'more text')}; --json has all of them`]),
  ];
}

function showOther(group: OpenGroup): readonly string[] {
  const { what, next } = sayOpenGroup(group);
  return [`  ${countOf(group.cases.length, 'case')}: ${what}`, ...next.map((step) => `    ${step}`)];
}

function showFailures(failures: readonly Failure[]): readonly string[] {
  const rows = failures.map(({ file, line, case: reference, language, codes }) => [
    reference ?? '',
    language ?? 'all languages',
    line === undefined ? file : `${file}:${String(line)}`,
    codes.join(', '),
  ]);
  return alignColumns(rows, '  ');
}
