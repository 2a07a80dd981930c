import { main } from '../../src/cli/main.ts';
import { createTerminal } from '../../src/cli/terminal.ts';
import { createOverlay } from './overlay-workspace.ts';

export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export interface Desk {
  /** Runs a command of plainleaf as a person would, from its own folder. */
  readonly run: (...args: readonly string[]) => Promise<Ended>;
  /** What was written to a path; empty if nothing was. */
  readonly written: (path: string) => string;
  readonly put: (path: string, text: string) => Promise<void>;
}

/** This checkout with some files put over it; whatever a command writes stays in memory. */
export function openDesk(files: Readonly<Record<string, string>>): Desk {
  const { workspace, memory } = createOverlay(files);
  const run = async (...args: readonly string[]): Promise<Ended> => {
    const said = { out: '', err: '' };
    const stream = (name: 'out' | 'err') => ({
      write: (text: string | Uint8Array) => (said[name] += String(text)) !== '',
    });
    const terminal = createTerminal({ out: stream('out'), err: stream('err') });
    const code = await main(args, { workspace, terminal, root: '.' });
    return { code, ...said };
  };
  const written = (path: string): string => String(memory.files.get(path) ?? '');
  return { run, written, put: (path, text) => workspace.write(path, text) };
}
