import { isClinicProfile, readSource } from '../../batch/index.ts';
import type { Outcome } from '../../batch/index.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { checkEvidence } from '../../evidence/index.ts';
import { placesIn } from '../../installation.ts';
import { readClinic } from '../../input/index.ts';
import { lintEvidenceWords, lintLocales } from '../../localize/index.ts';
import type { Prepared } from '../../prepare.ts';
import { countOf } from '../align-columns.ts';
import type { Call, Context } from '../context.ts';
import { textOption } from '../context.ts';
import { makeEach } from '../make-each.ts';
import { dayOf } from '../day-of.ts';
import { openPrepared } from '../open-prepared.ts';
import { printDiagnostics } from '../print-diagnostics.ts';
import { exitCodeOf } from '../report-outcomes.ts';

interface Checked {
  readonly what: string;
  readonly diagnostics: readonly Diagnostic[];
}

/** plainleaf check FILE… */
export async function run(call: Call, context: Context): Promise<number> {
  const prepared = await openPrepared(context);
  if (typeof prepared === 'number') return prepared;
  const { workspace, root, terminal } = context;
  const places = placesIn(root);
  const checked: Checked[] = [
    {
      what: `evidence ${prepared.evidence.version}`,
      diagnostics: await checkEvidence(workspace, places.evidence),
    },
    {
      what: `words of ${[...prepared.locales.keys()].join(', ')}`,
      diagnostics: withoutRepeats([
        ...(await lintLocales(workspace, places.locales)),
        ...(await lintEvidenceWords(workspace, places.locales, prepared.evidence)),
      ]),
    },
  ];
  for (const file of call.files) checked.push(await checkFile(file, call, { ...context, prepared }));
  const all = checked.flatMap(({ diagnostics }) => diagnostics);
  if (call.options.has('json')) {
    terminal.out(JSON.stringify({ checked }, null, 2));
  } else {
    for (const { what, diagnostics } of checked) terminal.out(`${what.padEnd(40)}  ${verdict(diagnostics)}`);
    if (all.length > 0) terminal.err('');
    await printDiagnostics(context, all, all.length);
  }
  return exitCodeOf(all);
}

async function checkFile(
  file: string,
  call: Call,
  context: Context & { readonly prepared: Prepared },
): Promise<Checked> {
  const { workspace, prepared } = context;
  const date = dayOf(call, context);
  const source = await readSource(workspace, file);
  if (!source.ok) return { what: file, diagnostics: source.diagnostics };
  if (isClinicProfile(source.value.text)) {
    const read = readClinic(source.value.text, file, { ...prepared.known, today: date });
    return { what: file, diagnostics: read.ok ? read.warnings : read.diagnostics };
  }
  const input = { workspace, prepared, files: [file], clinic: textOption(call, 'clinic'), date };
  const { outcomes } = await makeEach(input, context.terminal, () => undefined);
  return { what: file, diagnostics: outcomes.flatMap(saidOf) };
}

/** A text that only one language lacks is found by both lints of the words. */
function withoutRepeats(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const names = diagnostics.map(({ code, path, span }) => [code, path, span?.file].join(' '));
  return diagnostics.filter(
    ({ code }, index) => code !== 'LOCALE_KEY_MISSING' || names.indexOf(names[index] ?? '') === index,
  );
}

function saidOf(outcome: Outcome): readonly Diagnostic[] {
  return outcome.made ? outcome.warnings : outcome.diagnostics;
}

function verdict(diagnostics: readonly Diagnostic[]): string {
  const errors = diagnostics.filter(({ severity }) => severity === 'error').length;
  const warnings = diagnostics.length - errors;
  const counts = [
    errors === 0 ? '' : countOf(errors, 'error'),
    warnings === 0 ? '' : countOf(warnings, 'warning'),
  ];
  return counts.filter((count) => count !== '').join(', ') || 'in order';
}
