import { diagnosticCatalogue, exitCodes } from '../diagnostics/codes.ts';
import type { Stage } from '../diagnostics/codes.ts';
import { alignColumns } from './align-columns.ts';
import { commands } from './commands.ts';
import type { CommandSpec, OptionSpec } from './commands.ts';

/** What an exit code means to whoever called. */
const meanings: Readonly<Record<Stage, string>> = {
  usage: 'the command was called wrongly, or a file cannot be read or written',
  case: 'a case or a clinic profile has to be corrected',
  evidence: 'the evidence has to be corrected',
  words: 'the words of a language or a template have to be corrected',
  render: 'the pages cannot be set',
  verify: 'the finished file did not come back whole and was withheld',
  batch: 'some packets of a batch were not made',
  internal: 'plainleaf itself is at fault',
};

export function generalHelp(): string {
  return [
    'plainleaf: from a case file to a printed, translated, verified packet that helps a person choose',
    '',
    'Usage: plainleaf COMMAND …',
    '',
    ...alignColumns(
      commands.map((command) => [`${command.name} ${command.arguments}`, command.summary]),
      '  ',
    ),
    '',
    ...alignColumns(
      [
        ['plainleaf COMMAND --help', 'options of a command'],
        ['plainleaf --version', 'version'],
      ],
      '  ',
    ),
    '',
    ...exitCodeHelp(),
  ].join('\n');
}

export function commandHelp(command: CommandSpec): string {
  const options: readonly OptionSpec[] = [...command.options, { name: 'help', about: 'this help' }];
  const rows = options.map(({ name, value, about }) => [
    `--${name}${value === undefined ? '' : ` ${value}`}`,
    about,
  ]);
  return [
    `Usage: plainleaf ${command.name} ${command.arguments} [options]`,
    '',
    `${command.summary.charAt(0).toUpperCase()}${command.summary.slice(1)}.`,
    ...command.about,
    '',
    'Options',
    ...alignColumns(rows, '  '),
    '',
    ...exitCodeHelp(),
  ].join('\n');
}

function exitCodeHelp(): readonly string[] {
  const used = new Set(Object.values(diagnosticCatalogue).map(({ stage }): Stage => stage));
  const rows = (Object.keys(meanings) as Stage[])
    .filter((stage) => used.has(stage))
    .map((stage) => [String(exitCodes[stage]), meanings[stage]]);
  return ['Exit codes', ...alignColumns([['0', 'all is well'], ...rows], '  ')];
}
