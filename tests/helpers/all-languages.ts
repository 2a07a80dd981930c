import { existsSync, readdirSync } from 'node:fs';

/** Tags of all languages, sorted: one that is added is among them. */
export const allLanguages: readonly string[] = readdirSync('locales')
  .filter((name) => existsSync(`locales/${name}/locale.yaml`))
  .sort((a, b) => a.localeCompare(b));
