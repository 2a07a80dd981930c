/** A worker that is asked line by line, watched by the clock, and started anew when it hangs or dies. */
import { spawn } from 'node:child_process';
import type { ChildProcessByStdio } from 'node:child_process';
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';

export type Answer = { readonly [key: string]: unknown } | 'too-slow' | 'died';

export interface WarmWorker {
  readonly ask: (question: object, seconds: number) => Promise<Answer>;
  readonly stop: () => void;
}

/** Seconds in which all files of tests must be imported; without a mutant nothing hangs, and a busy machine takes long. */
const toImport = { withMutant: 240, without: 1200 };

/** A mutant given here is switched on from the first import, for what a module works out once. */
export async function startWorker(
  copy: string,
  files: readonly string[],
  mutant?: string,
): Promise<WarmWorker | Answer> {
  const child = spawn(
    process.execPath,
    ['--import', 'tsx', 'tests/tooling/mutation/worker.ts', copy, ...files],
    {
      cwd: copy,
      env: { ...process.env, TZ: 'UTC', ...(mutant === undefined ? {} : { MUTANT: mutant }) },
      stdio: ['pipe', 'pipe', 'inherit'],
    },
  );
  const wait = listen(child);
  const first = await wait(mutant === undefined ? toImport.without : toImport.withMutant);
  if (typeof first === 'string' || !('ready' in first)) {
    child.kill('SIGKILL');
    return first;
  }
  return {
    ask(question, seconds) {
      child.stdin.write(`${JSON.stringify(question)}\n`);
      return wait(seconds);
    },
    stop: () => void child.kill('SIGKILL'),
  };
}

/** One answer at a time: the next line, or what happened in its place. */
function listen(child: ChildProcessByStdio<Writable, Readable, null>): (seconds: number) => Promise<Answer> {
  let answer: ((line: Answer) => void) | undefined;
  let dead = false;
  createInterface({ input: child.stdout }).on('line', (line) => {
    if (line.startsWith('{')) answer?.(JSON.parse(line) as Answer);
  });
  child.stdin.on('error', () => undefined);
  child.on('exit', () => {
    dead = true;
    answer?.('died');
  });
  return async (seconds) => {
    if (dead) return 'died';
    let timer: NodeJS.Timeout | undefined;
    const line = await new Promise<Answer>((done) => {
      answer = done;
      timer = setTimeout(() => {
        done('too-slow');
      }, seconds * 1000);
    });
    clearTimeout(timer);
    if (line === 'too-slow') child.kill('SIGKILL');
    return line;
  };
}
