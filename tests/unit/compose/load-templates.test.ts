import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

import { loadTemplates } from '../../../src/compose/index.ts';
import { documentKinds } from '../../../src/model/codes.ts';
import { realLocale } from '../../helpers/compose-inputs.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

const folder = join(import.meta.dirname, '../../../templates');

function templateFiles(): Record<string, string> {
  const files: Record<string, string> = {};
  for (const name of readdirSync(folder)) {
    for (const file of readdirSync(join(folder, name))) {
      files[`templates/${name}/${file}`] = readFileSync(join(folder, name, file), 'utf8');
    }
  }
  return files;
}

async function load(changes: Readonly<Record<string, string>>): ReturnType<typeof loadTemplates> {
  return loadTemplates(createMemoryWorkspace({ ...templateFiles(), ...changes }), 'templates');
}

describe('loading templates', () => {
  it.each(['en', 'es'])('finds no fault in the templates with the words of %s', async (tag) => {
    const locale = await realLocale(tag);
    const loaded = await loadTemplates(
      createMemoryWorkspace(templateFiles()),
      'templates',
      locale.translator.has,
    );
    expect(loaded).toMatchObject({ ok: true });
    const documents = loaded.ok ? [...loaded.value.documents.values()] : [];
    expect(documents.length).toBe(documentKinds.length);
    const keys = documents.flatMap(({ title, header, required }) => [title, header, ...required]);
    expect(keys.filter((key) => !locale.translator.has(key))).toEqual([]);
  });

  it('gives another digest for another text', async () => {
    const [one, two] = await Promise.all([
      load({}),
      load({ 'templates/partials/line.hbs': '<p>{{say words}}</p>' }),
    ]);
    expect(one.ok && two.ok && one.value.digest !== two.value.digest).toBe(true);
    expect(one.ok ? one.value.digest : '').toMatch(/^[0-9a-f]{64}$/);
  });

  it('reports every fault of every file', async () => {
    const loaded = await load({
      'templates/comparison/main.hbs': '<p>{{absent}}</p>\n<p>{{{date}}}</p>',
      'templates/questions/main.hbs': '{{#if date}}',
      'templates/sources/kind.yaml': 'title: sources.title\naudience: nobody\n',
      'templates/clinician-sheet/kind.yaml': 'a: [',
    });
    const found = loaded.ok
      ? []
      : loaded.diagnostics.map(({ code, span }) => `${String(span?.file)} ${code}`);
    expect(found).toEqual([
      'comparison/main.hbs TEMPLATE_UNKNOWN_PATH',
      'comparison/main.hbs TEMPLATE_RAW_OUTPUT',
      'questions/main.hbs TEMPLATE_SYNTAX',
      'sources/kind.yaml TEMPLATE_SYNTAX',
      'clinician-sheet/kind.yaml TEMPLATE_SYNTAX',
    ]);
  });

  it('reports a partial that is broken, where it is broken and where it is then missing', async () => {
    const loaded = await load({ 'templates/partials/axis.hbs': '<axis>\n{{#each scales}}' });
    const found = loaded.ok
      ? []
      : loaded.diagnostics.map(({ code, span }) => `${String(span?.file)} ${code}`);
    expect(found).toEqual(['partials/axis.hbs TEMPLATE_SYNTAX', 'comparison/main.hbs TEMPLATE_UNKNOWN_PATH']);
  });

  it('passes over files that are no templates', async () => {
    const loaded = await load({
      'templates/README.md': 'Notes.',
      'templates/comparison/notes.txt': 'Notes.',
    });
    const plain = await load({});
    expect(loaded.ok && plain.ok && loaded.value.digest === plain.value.digest).toBe(true);
  });

  it('names what is wrong in a description of a kind', async () => {
    const loaded = await load({
      'templates/sources/kind.yaml':
        'title: sources.title\nheader: ""\naudience: patient\ncolour: red\nheader_on_first_page: true\nrequired: []\n',
    });
    expect(loaded.ok ? '' : loaded.diagnostics[0]?.message).toContain('colour, header');
  });

  it('fails when a kind has no template', async () => {
    const files = templateFiles();
    delete files['templates/questions/main.hbs'];
    const loaded = await loadTemplates(createMemoryWorkspace(files), 'templates');
    expect(loaded.ok ? [] : loaded.diagnostics.map(({ span }) => span?.file)).toEqual(['questions/main.hbs']);
  });
});
