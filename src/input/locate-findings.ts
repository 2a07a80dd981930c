import { comparePositions } from '../diagnostics/compare-positions.ts';
import type { Diagnostic, SourceSpan } from '../diagnostics/diagnostic.ts';
import { mask } from '../diagnostics/redact.ts';
import { writePath } from './describe-value.ts';
import { pathKey } from './finding.ts';
import type { Finding, Path } from './finding.ts';
import type { LineIndex } from './line-index.ts';
import type { Place, Range, Tree } from './read-tree.ts';

export interface Located {
  readonly lines: LineIndex;
  readonly tree: Tree;
  /** Words that may stand in a path; any other key may be part of free words. */
  readonly vocabulary: ReadonlySet<string>;
}

/**
 * Gives each finding its place: the value, the key, or for something absent the nearest parent that is there. Says one
 * thing a place, and nothing about what an alias stands for. Sorted by position.
 */
export function locateFindings(findings: readonly Finding[], located: Located): Diagnostic[] {
  const said = new Set<string>();
  const diagnostics: Diagnostic[] = [];
  for (const finding of findings) {
    const identity = pathKey([finding.at === 'key' ? 'key' : 'value', ...finding.path]);
    if (said.has(identity) || isOpaque(finding.path, located.tree)) continue;
    if (finding.severity !== 'warning') said.add(identity);
    diagnostics.push(locateOne(finding, located));
  }
  return diagnostics.sort(comparePositions);
}

function locateOne(finding: Finding, located: Located): Diagnostic {
  const { code, message, hint, path, at } = finding;
  const related = finding.related?.map((other) => ({
    message: other.message,
    span: spanOf(other.path, 'value', located),
  }));
  return {
    code,
    severity: finding.severity ?? 'error',
    message,
    hint,
    span: spanOf(path, at ?? 'value', located),
    ...(path.length === 0 ? {} : { path: showPath(path, isShown(finding, located.vocabulary)) }),
    ...(related === undefined ? {} : { related }),
  };
}

/** The place of a path, or of its nearest parent that stands in the file. */
export function spanOf(
  path: Path,
  at: NonNullable<Finding['at']>,
  { lines, tree }: Pick<Located, 'lines' | 'tree'>,
): SourceSpan {
  for (let length = path.length; length > 0; length--) {
    const place = tree.places.get(pathKey(path.slice(0, length)));
    if (place === undefined) continue;
    const [start, end] = rangeOf(place, at === 'key' || length < path.length ? 'key' : 'value');
    return lines.span(start, end);
  }
  const start = tree.places.get(pathKey([]))?.value[0] ?? 0;
  return lines.span(start, start);
}

function rangeOf({ key, value }: Place, at: 'key' | 'value'): Range {
  const isEmpty = value[0] === value[1];
  return key !== undefined && (at === 'key' || isEmpty) ? key : value;
}

function isOpaque(path: Path, tree: Tree): boolean {
  return tree.opaque.some((hidden) => hidden.every((part, index) => part === path[index]));
}

function isShown(
  { path, isNear }: Finding,
  vocabulary: ReadonlySet<string>,
): (key: string, index: number) => boolean {
  return (key, index) => vocabulary.has(key) || (isNear === true && index === path.length - 1);
}

/** A path in words; keys that may not be shown are masked. */
function showPath(path: Path, isKeyShown: (key: string, index: number) => boolean): string {
  return writePath(
    path.map((part, index) => (typeof part === 'number' || isKeyShown(part, index) ? part : mask)),
  );
}
