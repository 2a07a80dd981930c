import type { DiagnosticCode } from '../diagnostics/codes.ts';

/** Where something stands in the data, for example ['decision', 'options', 2]. */
export type Path = readonly (string | number)[];

/** A thing that is wrong, placed in the data; `locateFindings` gives it its line and column. */
export interface Finding {
  readonly code: DiagnosticCode;
  readonly severity?: 'error' | 'warning';
  readonly path: Path;
  /** `value` unless said otherwise; `absent`: nothing stands there, so its nearest parent is pointed at. */
  readonly at?: 'value' | 'key' | 'absent';
  /** The last key of the path is a misspelling of one that is known, so it may be shown. */
  readonly isNear?: boolean;
  readonly message: string;
  readonly hint: string;
  readonly related?: readonly { readonly path: Path; readonly message: string }[];
}

export function pathKey(path: Path): string {
  return JSON.stringify(path);
}
