import { runBatch } from '../batch/index.ts';
import type { BatchInput, Outcome } from '../batch/index.ts';
import type { Terminal } from './terminal.ts';

export interface Made {
  readonly outcomes: readonly Outcome[];
  /** Whether the user stopped it before the end. */
  readonly stopped: boolean;
}

/**
 * Makes packets and tells of each as it comes. The first Ctrl-C lets the packet under way be finished and stops;
 * the second ends at once.
 */
export async function makeEach(
  input: BatchInput,
  terminal: Terminal,
  tell: (outcome: Outcome) => void,
): Promise<Made> {
  const outcomes: Outcome[] = [];
  const interrupt = { came: false };
  const stop = (): void => {
    interrupt.came = true;
  };
  process.once('SIGINT', stop);
  for await (const event of runBatch(input)) {
    if (event.type === 'outcome') {
      outcomes.push(event.outcome);
      tell(event.outcome);
    } else {
      if (interrupt.came) break;
      terminal.status(`${event.caseReference}  ${event.language}  …`);
    }
  }
  process.removeListener('SIGINT', stop);
  terminal.status('');
  return { outcomes, stopped: interrupt.came };
}
