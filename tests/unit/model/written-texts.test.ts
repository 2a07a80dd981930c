import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

import { fieldsOfRole } from '../../../src/input/read-fields.ts';
import { walkSchema } from '../../../src/input/walk-schema.ts';
import { ProtocolSchema } from '../../../src/model/clinic-protocol.ts';
import { writtenTexts } from '../../../src/model/written-texts.ts';

const { protocol: written } = parse(readFileSync('examples/clinic.yaml', 'utf8')) as { protocol: unknown };
const protocol = ProtocolSchema.parse(written);
const compared = ['stay', 'time_off', 'visits', 'for_life'];

/** Every text that the schema of a protocol knows for an option, whatever its key. */
function textsBySchema(option: string): readonly string[] {
  return fieldsOfRole(walkSchema(ProtocolSchema, protocol), 'local-text')
    .map(({ path }) => path)
    .filter(([topic, of]) => of === option && !compared.includes(String(topic)))
    .map((path) => path.join('.'));
}

describe('the texts that a clinic wrote on the time afterwards', () => {
  it.each(Object.keys(protocol.diet))('are all there for %s, each at its path', (option) => {
    const own = writtenTexts(protocol, option).filter(({ path }) => path[1] === option);
    expect(own.length).toBeGreaterThan(5);
    expect(own.map(({ path }) => path.join('.')).sort()).toEqual([...textsBySchema(option)].sort());
    for (const { path, text } of own) {
      const found = path.reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], protocol);
      expect(found).toBe(text);
    }
  });

  it('stand under the option that another is the same as', () => {
    const [[same, like] = ['', '']] = Object.entries(protocol.same_as);
    expect(like).not.toBe('');
    expect(writtenTexts(protocol, same).map(({ path }) => path[1])).toContain(like);
  });
});
