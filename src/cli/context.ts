import type { Workspace } from '../io/workspace.ts';
import type { Terminal } from './terminal.ts';

/** What a command works with. */
export interface Context {
  readonly workspace: Workspace;
  readonly terminal: Terminal;
  /** Folder of plainleaf itself. */
  readonly root: string;
}

/** A command as it was called, its options checked. */
export interface Call {
  readonly files: readonly string[];
  /** Options that were given: their text, true for a switch, all texts of one that may be given again. */
  readonly options: ReadonlyMap<string, OptionValue>;
}

export type OptionValue = string | true | readonly string[];

/** Runs a command and says with which code the process ends. */
export type Run = (call: Call, context: Context) => Promise<number>;

/** Text of an option; undefined when it was not given. */
export function textOption(call: Call, name: string): string | undefined {
  const value = call.options.get(name);
  return typeof value === 'string' ? value : undefined;
}

/** Texts of an option that may be given again, in order; empty when it was not given. */
export function textsOfOption(call: Call, name: string): readonly string[] {
  const value = call.options.get(name);
  return typeof value === 'object' ? value : [];
}
