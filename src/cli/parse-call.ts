import { parseArgs } from 'node:util';
import type { ParseArgsConfig } from 'node:util';

import { isRealDate } from '../model/scalars.ts';
import { commands } from './commands.ts';
import type { CommandSpec } from './commands.ts';
import type { Call, OptionValue } from './context.ts';

/** What the words after `plainleaf` ask for. */
export type Request =
  | { readonly ask: 'help'; readonly command?: CommandSpec }
  | { readonly ask: 'version' }
  | { readonly ask: 'run'; readonly command: CommandSpec; readonly call: Call }
  | { readonly ask: 'nothing'; readonly why: string };

/** Reads the command line. Every command has its own options; any other is refused with the reason. */
export function parseCall(args: readonly string[]): Request {
  const [first, ...rest] = args;
  if (first === undefined || first === '--help' || first === '-h' || first === 'help') return { ask: 'help' };
  if (first === '--version' || first === '-v') return { ask: 'version' };
  const command = commands.find(({ name }) => name === first);
  if (command === undefined) {
    return {
      ask: 'nothing',
      why: `${first} is not a command; there are ${commands.map(({ name }) => name).join(', ')}`,
    };
  }
  return parseCommand(command, rest);
}

function parseCommand(command: CommandSpec, args: readonly string[]): Request {
  const options: NonNullable<ParseArgsConfig['options']> = { help: { type: 'boolean', short: 'h' } };
  for (const { name, value, repeats } of command.options)
    options[name] = { type: value === undefined ? 'boolean' : 'string', multiple: repeats === true };
  try {
    const { positionals, values } = parseArgs({
      args: joinSigned(command, args),
      options,
      allowPositionals: true,
      strict: true,
    });
    if (values['help'] === true) return { ask: 'help', command };
    const call = { files: positionals, options: new Map(Object.entries(values).flatMap(keepGiven)) };
    const why = findFault(command, call);
    return why === undefined ? { ask: 'run', command, call } : { ask: 'nothing', why };
  } catch (error) {
    return {
      ask: 'nothing',
      why: error instanceof Error ? firstSentence(error.message) : 'the options cannot be read',
    };
  }
}

/** A value may start with a minus (--what-if -sleeve); joined by an equals sign it is not taken for an option. */
function joinSigned({ options }: CommandSpec, args: readonly string[]): string[] {
  const repeating = options.flatMap(({ name, repeats }) => (repeats === true ? [`--${name}`] : []));
  return args.flatMap((word, index) => {
    const before = args[index - 1] ?? '';
    if (repeating.includes(before) && isSigned(word)) return [`${before}=${word}`];
    return repeating.includes(word) && isSigned(args[index + 1] ?? '') ? [] : [word];
  });
}

function isSigned(word: string): boolean {
  return /^-[^-]/.test(word);
}

function keepGiven([name, value]: [string, unknown]): [string, OptionValue][] {
  if (typeof value === 'string' || value === true) return [[name, value]];
  return Array.isArray(value) ? [[name, value.filter((text) => typeof text === 'string')]] : [];
}

function findFault(command: CommandSpec, { files, options }: Call): string | undefined {
  const [fewest, most] = command.count;
  if (files.length < fewest || files.length > most) return `${command.name} takes ${command.arguments}`;
  for (const name of ['date', 'by']) {
    const day = options.get(name);
    if (typeof day === 'string' && !isRealDate(day))
      return `--${name} ${day} is not a day written year-month-day`;
  }
  return undefined;
}

/** Node's own reason, without its advice on quoting. */
function firstSentence(message: string): string {
  return message.split('. ')[0] ?? message;
}
