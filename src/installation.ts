import { join } from 'node:path';

import { sha256 } from './io/digest.ts';
import type { Workspace } from './io/workspace.ts';

/** Where things are in a folder of plainleaf. */
export interface Places {
  readonly evidence: string;
  /** For copies of the evidence that are quick to read; may be deleted at any time. */
  readonly cache: string;
  readonly locales: string;
  readonly templates: string;
}

/** @param root folder that holds package.json, src, templates and locales */
export function placesIn(root: string): Places {
  return {
    evidence: join(root, 'src/evidence/data'),
    cache: join(root, 'node_modules/.cache/plainleaf'),
    locales: join(root, 'locales'),
    templates: join(root, 'templates'),
  };
}

/** The version of plainleaf, and a digest (SHA-256) of the list of exact packages it runs on. */
export interface Program {
  readonly version: string;
  readonly lock: string;
}

export async function describeProgram(workspace: Workspace, root: string): Promise<Program> {
  const manifest: unknown = JSON.parse(await workspace.readText(join(root, 'package.json')));
  const known = typeof manifest === 'object' && manifest !== null && 'version' in manifest;
  return {
    version: known ? String(manifest.version) : 'unknown',
    lock: sha256(await workspace.readBytes(join(root, 'package-lock.json'))),
  };
}
