import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { KnownCodes, KnownOption } from '../../src/model/known-codes.ts';

const data = new URL('../../src/evidence/data/', import.meta.url);

function readCodes(name: string): readonly { code: string; id: string }[] {
  return parse(readFileSync(new URL(name, data), 'utf8')) as { code: string; id: string }[];
}

/** The codes of the shipped evidence, with the two languages that the tests use. */
export function readKnownCodes(): KnownCodes {
  return {
    options: readCodes('options.yaml') as unknown as KnownOption[],
    outcomes: readCodes('outcomes.yaml').map(({ code }) => code),
    languages: ['en', 'es'],
    cautions: readCodes('cautions.yaml').map(({ id }) => id),
  };
}

/** The day on which the tests make their packets. */
export const testDay = '2026-11-25';
