import { loadTemplates } from './compose/index.ts';
import type { Templates } from './compose/index.ts';
import { success } from './diagnostics/diagnostic.ts';
import type { Result } from './diagnostics/diagnostic.ts';
import { failAll } from './diagnostics/fail-all.ts';
import { loadEvidence } from './evidence/index.ts';
import { describeProgram, placesIn } from './installation.ts';
import type { Program } from './installation.ts';
import { canonicalJson, sha256 } from './io/digest.ts';
import type { Workspace } from './io/workspace.ts';
import { openLocales } from './localize/index.ts';
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
  readonly program: Program;
}

/**
 * Opens evidence, templates and words of the plainleaf in a folder. Fails with everything that is wrong with them.
 *
 * @param root folder that holds package.json, src, templates and locales
 */
export async function prepare(workspace: Workspace, root: string): Promise<Result<Prepared>> {
  const places = placesIn(root);
  const evidence = await loadEvidence(workspace, {
    folder: places.evidence,
    cache: places.cache,
    digester: { sha256, canonicalJson },
  });
  const locales = await openLocales(workspace, places.locales);
  const base = locales.ok ? locales.value.get('en') : undefined;
  const templates = await loadTemplates(workspace, places.templates, base?.translator.has);
  if (!evidence.ok || !locales.ok || !templates.ok) {
    return failAll([evidence, locales, templates]);
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
function knownCodes(evidence: EvidenceBase, languages: readonly string[]): KnownCodes {
  return {
    options: evidence.options,
    outcomes: evidence.outcomes.map(({ code }) => code),
    languages,
    records: evidence.records.map(({ id }) => id),
    cautions: evidence.cautions.map(({ id }) => id),
  };
}
