import { exitCodes } from '../../diagnostics/codes.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { placesIn } from '../../installation.ts';
import { openLanguages } from '../../localize/index.ts';
import type { Call, Context } from '../context.ts';
import { textOption } from '../context.ts';
import { dayOf } from '../day-of.ts';
import { exportLanguage } from '../export-language.ts';
import { importLanguage } from '../import-language.ts';
import { openLedger } from '../languages-desk.ts';
import type { LanguagesCall, Ledger } from '../languages-desk.ts';
import { openPrepared } from '../open-prepared.ts';
import { printDiagnostics } from '../print-diagnostics.ts';
import { exitCodeOf } from '../report-outcomes.ts';
import { stateOfLanguage } from '../review-state.ts';
import { showLanguages } from '../show-languages.ts';
import { signLanguage } from '../sign-language.ts';

type Work = (call: LanguagesCall) => Promise<number | readonly Diagnostic[]>;

const works: ReadonlyMap<string, { readonly work: Work; readonly takes: number }> = new Map([
  ['list', { work: list, takes: 0 }],
  ['export', { work: exportLanguage, takes: 1 }],
  ['import', { work: importLanguage, takes: 1 }],
  ['sign', { work: signLanguage, takes: 1 }],
]);

/** plainleaf languages list | export TAG | import FILE | sign TAG */
export async function run(call: Call, context: Context): Promise<number> {
  const [what = '', ...more] = call.files;
  const chosen = works.get(what);
  if (chosen?.takes !== more.length) {
    context.terminal.err('plainleaf: languages takes list, export TAG, import FILE or sign TAG');
    return exitCodes.usage;
  }
  const languages = await openLanguages(context.workspace, placesIn(context.root).locales);
  if (!languages.ok) return refuse(context, languages.diagnostics);
  const ledger = await ledgerOf(call, context);
  if (typeof ledger === 'number') return ledger;
  const done = await chosen.work({
    call,
    context,
    languages: languages.value,
    ledger,
    subject: more[0] ?? '',
  });
  return typeof done === 'number' ? done : refuse(context, done);
}

async function refuse(context: Context, diagnostics: readonly Diagnostic[]): Promise<number> {
  await printDiagnostics(context, diagnostics);
  return exitCodeOf(diagnostics);
}

/** Without a clinic profile nothing is reviewed. */
async function ledgerOf(call: Call, context: Context): Promise<Ledger | number> {
  const file = textOption(call, 'clinic');
  if (file === undefined) return { reviews: [], records: new Map(), texts: [] };
  const prepared = await openPrepared(context);
  if (typeof prepared === 'number') return prepared;
  const opened = await openLedger(context, { file, known: prepared.known, today: dayOf(call, context) });
  return opened.ok ? opened.value : refuse(context, opened.diagnostics);
}

async function list({ call, context, languages, ledger }: LanguagesCall): Promise<number> {
  const only = textOption(call, 'language');
  const tags = [...languages.names.keys()].filter((tag) => only === undefined || tag === only);
  if (tags.length === 0) {
    context.terminal.err(`plainleaf: there is no language ${only ?? ''}`);
    return Promise.resolve(exitCodes.usage);
  }
  const states = tags.map((tag) => stateOfLanguage(languages, ledger, tag));
  context.terminal.out(
    call.options.has('json')
      ? JSON.stringify({ languages: states }, null, 2)
      : showLanguages(states, { each: only !== undefined, ledger: call.options.has('clinic') }),
  );
  return Promise.resolve(0);
}
