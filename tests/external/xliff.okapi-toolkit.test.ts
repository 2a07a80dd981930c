// The Okapi XLIFF Toolkit 1.47.0 (okapi-lib-xliff2 on Maven Central; LGPL), which holds the OASIS schemas of XLIFF 2.0 and
// its modules: it reads with VALIDATION_MAXIMAL. Codes and states: XLIFF Version 2.0, OASIS Standard, 5 August 2014.
import { describe, expect, it } from 'vitest';

import { createNodeWorkspace } from '../../src/io/node-workspace.ts';
import { openLanguages } from '../../src/localize/index.ts';
import { checkReturned, readXliff, writeXliff } from '../../src/xliff/index.ts';
import { demand } from '../helpers/example-packets.ts';
import { throughToolkit, toolkitAvailable } from '../helpers/xliff-toolkit.ts';

const languages = demand(await openLanguages(createNodeWorkspace(), 'locales'));
const unitsOf = (tag: string) => languages.unitsOf(tag, (key) => key.startsWith('consent.'));
const fileOf = (tag: string): string =>
  writeXliff({ sourceLanguage: 'en', language: tag, units: unitsOf(tag) });

describe.skipIf(!toolkitAvailable())('files for translators, read and written by another toolkit', () => {
  it.each(['es', 'ar', 'zh-Hans', 'ru'])(
    'of %s pass its checks and come back with every text as it was',
    (tag) => {
      const units = unitsOf(tag);
      const { written, counted } = throughToolkit(fileOf(tag));
      expect(counted).toBe(`${String(units.length)} units, ${String(units.length)} targets`);
      const back = demand(readXliff(written, 'back.xlf'));
      expect(back.language).toBe(tag);
      expect(back.units.map(({ key, source, target }) => ({ key, source, target }))).toEqual(
        units.map(({ key, source, target }) => ({ key, source, target })),
      );
      expect(checkReturned(back.units, units)).toEqual([]);
    },
  );

  it('of a language that is not there yet hold no target', () => {
    const units = unitsOf('de');
    const { written, counted } = throughToolkit(fileOf('de'));
    expect(counted).toBe(`${String(units.length)} units, 0 targets`);
    expect(demand(readXliff(written, 'back.xlf')).units.every(({ target }) => target === null)).toBe(true);
  });

  it('are refused by it where two codes of a text have one id', () => {
    const broken = fileOf('es').replace(
      /<ph id="(\w+)"([^>]*)>([^<]*)<ph id="\w+"/,
      '<ph id="$1"$2>$3<ph id="$1"',
    );
    expect(broken).not.toBe(fileOf('es'));
    expect(() => throughToolkit(broken)).toThrow();
  });
});
