import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';
import { digestDataFiles, tryToReadFiles } from './data-files.ts';
import type { DataFile, Digester } from './data-files.ts';
import { parseDataFile } from './parse-data-file.ts';

/** Entries of one list that only one of two releases has, or that differ. Sorted ids or codes. */
export interface ListDifference {
  /** The file, or for a folder of files its name, below the data folder without ending: `records`, `options`. */
  readonly list: string;
  readonly added: readonly string[];
  readonly changed: readonly string[];
  readonly withdrawn: readonly string[];
}

/** What a data folder calls itself, and the digest of its files. */
export interface ReleaseMark {
  readonly version: string;
  readonly date: string;
  readonly digest: string;
}

export interface EvidenceDifference {
  readonly before: ReleaseMark;
  readonly after: ReleaseMark;
  /** Only lists in which something differs. */
  readonly lists: readonly ListDifference[];
}

/**
 * What differs between two data folders, entry by entry. It looks at the YAML alone and at no schema, so that a release
 * from before a change of the format can be compared too. Fails on a folder or a file that cannot be read.
 */
export async function diffEvidence(
  workspace: Workspace,
  folders: { readonly before: string; readonly after: string },
  digester: Digester,
): Promise<Result<EvidenceDifference>> {
  const before = await openFolder(workspace, folders.before, digester);
  const after = await openFolder(workspace, folders.after, digester);
  if (!before.ok) return before;
  if (!after.ok) return after;
  const names = [...new Set([...before.value.lists.keys(), ...after.value.lists.keys()])].sort(byText);
  const lists = names
    .map((list) => differ(list, before.value.lists.get(list), after.value.lists.get(list)))
    .filter(({ added, changed, withdrawn }) => added.length + changed.length + withdrawn.length > 0);
  return success({ before: before.value.mark, after: after.value.mark, lists });
}

/** Spelling of each entry by its id. */
type Entries = ReadonlyMap<string, string>;

interface Folder {
  readonly mark: ReleaseMark;
  readonly lists: ReadonlyMap<string, Entries>;
}

async function openFolder(workspace: Workspace, folder: string, digester: Digester): Promise<Result<Folder>> {
  const files = await tryToReadFiles(workspace, folder);
  if (!files.ok) return files;
  const parsed = files.value.map((file) => ({
    file,
    parsed: parseDataFile(`${folder}/${file.path}`, file.text),
  }));
  const problems: readonly Diagnostic[] = parsed.flatMap((one) => one.parsed.problems);
  if (problems.length > 0) return failure(problems);
  const lists = new Map<string, Map<string, string>>();
  for (const {
    file,
    parsed: { content },
  } of parsed) {
    const list = listOf(file);
    const known = lists.get(list) ?? new Map<string, string>();
    for (const [id, entry] of entriesOf(content)) known.set(id, digester.canonicalJson(entry));
    lists.set(list, known);
  }
  const release = parsed.find(({ file }) => file.path === 'release.yaml');
  if (release === undefined) return failure([noRelease(folder)]);
  lists.delete('release');
  const mark = { ...markOf(release.parsed.content), digest: digestDataFiles(files.value, digester) };
  return success({ mark, lists });
}

function noRelease(folder: string): Diagnostic {
  const message = `the folder ${folder} holds no release.yaml, so it is no release of the evidence`;
  return { code: 'FILE_NOT_FOUND', severity: 'error', message, hint: 'Check the path.' };
}

/** `records/sleeve.yaml` is of the list `records`, `options.yaml` of the list `options`. */
function listOf({ path }: DataFile): string {
  return path.split('/')[0]?.replace(/\.yaml$/, '') ?? path;
}

/** Entries of a list by what names them; of a mapping its keys. */
function entriesOf(content: unknown): readonly (readonly [id: string, entry: unknown])[] {
  if (Array.isArray(content)) return content.map((entry: unknown) => [nameOf(entry), entry]);
  return isMapping(content) ? Object.entries(content) : [];
}

function nameOf(entry: unknown): string {
  if (!isMapping(entry)) return String(entry);
  const { id, code, option, record, check } = entry;
  const name = id ?? code ?? option ?? record;
  return [name, check].filter((part) => typeof part === 'string').join(' ');
}

function markOf(release: unknown): Omit<ReleaseMark, 'digest'> {
  const { version, date } = isMapping(release) ? release : {};
  const text = (value: unknown): string => (typeof value === 'string' ? value : 'not stated');
  return { version: text(version), date: text(date) };
}

function isMapping(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function differ(list: string, before: Entries = new Map(), after: Entries = new Map()): ListDifference {
  const those = (entries: Entries, keep: (id: string) => boolean): readonly string[] =>
    [...entries.keys()].filter(keep).sort(byText);
  return {
    list,
    added: those(after, (id) => !before.has(id)),
    changed: those(after, (id) => before.has(id) && before.get(id) !== after.get(id)),
    withdrawn: those(before, (id) => !after.has(id)),
  };
}

function byText(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}
