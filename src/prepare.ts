import { loadTemplates } from './compose/index.ts';
import type { Templates } from './compose/index.ts';
import { failure, success } from './diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from './diagnostics/diagnostic.ts';
import { loadEvidence } from './evidence/index.ts';
import { canonicalJson, sha256 } from './io/digest.ts';
import type { Workspace } from './io/workspace.ts';
import { listLanguages, openLocale } from './localize/index.ts';
import type { EvidenceBase } from './model/evidence.ts';
import type { KnownCodes } from './model/known-codes.ts';
import type { Locale } from './model/locale.ts';
import { digestFonts, loadFonts } from './render/index.ts';

/** What all packets of a run share; opened once, never changed. */
export interface Prepared {
  readonly evidence: EvidenceBase;
  readonly templates: Templates;
  /** By language tag. */
  readonly locales: ReadonlyMap<string, Locale>;
  readonly known: KnownCodes;
  /** SHA-256 of the font files. */
  readonly fonts: string;
  readonly program: { readonly version: string; readonly lock: string };
}

/**
 * Opens evidence, templates and words of the plainleaf in a folder. Fails with everything that is wrong with them.
 *
 * @param root folder that holds package.json, src, templates and locales
 */
export async function prepare(workspace: Workspace, root: string): Promise<Result<Prepared>> {
  const evidence = await loadEvidence(workspace, {
    folder: `${root}/src/evidence/data`,
    cache: `${root}/node_modules/.cache/plainleaf`,
    digester: { sha256, canonicalJson },
  });
  const locales = await openLocales(workspace, `${root}/locales`);
  const base = locales.ok ? locales.value.get('en') : undefined;
  const templates = await loadTemplates(workspace, `${root}/templates`, base?.translator.has);
  if (!evidence.ok || !locales.ok || !templates.ok) {
    return failure([evidence, locales, templates].flatMap((result) => (result.ok ? [] : result.diagnostics)));
  }
  await loadFonts();
  return success({
    evidence: evidence.value,
    templates: templates.value,
    locales: locales.value,
    known: knownCodes(evidence.value, [...locales.value.keys()]),
    fonts: digestFonts(),
    program: await describeProgram(workspace, root),
  });
}

/** What a case or a clinic profile may name. */
export function knownCodes(evidence: EvidenceBase, languages: readonly string[]): KnownCodes {
  return {
    options: evidence.options,
    outcomes: evidence.outcomes.map(({ code }) => code),
    languages,
    records: evidence.records.map(({ id }) => id),
    cautions: evidence.cautions.map(({ id }) => id),
  };
}

async function openLocales(
  workspace: Workspace,
  folder: string,
): Promise<Result<ReadonlyMap<string, Locale>>> {
  const tags = await listLanguages(workspace, folder);
  const opened = await Promise.all(tags.map((tag) => openLocale(workspace, folder, tag)));
  const faults: readonly Diagnostic[] = opened.flatMap((locale) => (locale.ok ? [] : locale.diagnostics));
  if (faults.length > 0) return failure(faults);
  return success(new Map(opened.flatMap((locale) => (locale.ok ? [[locale.value.tag, locale.value]] : []))));
}

/** The version, and a digest of the exact packages it runs on. */
async function describeProgram(workspace: Workspace, root: string): Promise<Prepared['program']> {
  const manifest: unknown = JSON.parse(await workspace.readText(`${root}/package.json`));
  const version: unknown =
    typeof manifest === 'object' && manifest !== null && 'version' in manifest ? manifest.version : '';
  return { version: String(version), lock: sha256(await workspace.readBytes(`${root}/package-lock.json`)) };
}
