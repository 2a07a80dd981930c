import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';

import { exitCodes } from '../diagnostics/codes.ts';
import { describeFault } from '../diagnostics/describe-fault.ts';
import { formatDiagnostics } from '../diagnostics/format.ts';
import { describeProgram } from '../installation.ts';
import { createNodeWorkspace } from '../io/node-workspace.ts';
import type { Context } from './context.ts';
import { commandHelp, generalHelp } from './help.ts';
import { parseCall } from './parse-call.ts';
import { createTerminal } from './terminal.ts';

/** Runs one command of plainleaf on this machine and says with which code the process ends. */
export async function main(args: readonly string[], given?: Context): Promise<number> {
  const context = given ?? thisMachine();
  const { terminal } = context;
  try {
    const request = parseCall(args);
    switch (request.ask) {
      case 'help':
        terminal.out(request.command === undefined ? generalHelp() : commandHelp(request.command));
        return 0;
      case 'version':
        terminal.out((await describeProgram(context.workspace, context.root)).version);
        return 0;
      case 'nothing':
        terminal.err(`plainleaf: ${request.why}.\nRun plainleaf --help.`);
        return exitCodes.usage;
      case 'run': {
        const { run } = await request.command.load();
        return await run(request.call, context);
      }
    }
  } catch (error) {
    terminal.err(formatDiagnostics([describeFault(error)]));
    return exitCodes.internal;
  }
}

function thisMachine(): Context {
  // A reader that has seen enough (plainleaf … | head) closes the pipe; that is no fault.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    throw error;
  });
  return {
    workspace: createNodeWorkspace(),
    terminal: createTerminal({ out: process.stdout, err: process.stderr }),
    // Relative where it can be, for messages that name a file.
    root: relative(process.cwd(), fileURLToPath(new URL('../..', import.meta.url))) || '.',
  };
}
