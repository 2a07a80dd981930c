import { describe, expect, it } from 'vitest';

import { lintTemplate } from '../../../../src/compose/template/lint-template.ts';
import { parseTemplate } from '../../../../src/compose/template/parse-template.ts';
import type { ParsedTemplate } from '../../../../src/compose/template/parse-template.ts';
import { flag, group, list, markup, optional, text } from '../../../../src/compose/view/shape.ts';

const shape = group({
  name: text,
  shown: flag,
  lead: markup,
  maybe: optional(group({ inner: text })),
  rows: list(group({ label: text, words: list(markup) })),
});

function parsed(source: string, file = 'sample/main.hbs'): ParsedTemplate {
  const result = parseTemplate(source, file);
  if (!result.ok) throw new Error('the sample does not parse');
  return result.value;
}

function lint(source: string, partials: Readonly<Record<string, string>> = {}): readonly string[] {
  const parts = new Map(
    Object.entries(partials).map(([name, body]) => [name, parsed(body, `partials/${name}.hbs`)]),
  );
  const setting = { shape, partials: parts, hasWords: (key: string) => key !== 'common.absent' };
  return lintTemplate(parsed(source), setting).map(
    ({ code, span }) => `${String(span?.file)}:${String(span?.line)}:${String(span?.column)} ${code}`,
  );
}

describe('the lint of templates', () => {
  it('accepts what the view model has', () => {
    const template = `{{! note }}<p>{{name}}</p>{{#if maybe}}<p>{{maybe.inner}}</p>{{else}}<p>{{t 'a.b' x=name}}</p>{{/if}}
      {{#each rows}}<p>{{label}}{{@index}}{{../name}}{{@root.name}}</p>{{#each words}}<p>{{say this}}</p>{{/each}}{{/each}}
      {{#unless shown}}<p>{{say lead}}</p>{{/unless}}`;
    expect(lint(template)).toEqual([]);
  });

  it.each([
    ['<p>\n  {{nmae}}</p>', 'sample/main.hbs:2:5 TEMPLATE_UNKNOWN_PATH'],
    ['{{#if absent}}x{{/if}}', 'sample/main.hbs:1:7 TEMPLATE_UNKNOWN_PATH'],
    ['{{#each rows}}<p>{{name}}</p>{{/each}}', 'sample/main.hbs:1:20 TEMPLATE_UNKNOWN_PATH'],
    ['{{#each name}}x{{/each}}', 'sample/main.hbs:1:9 TEMPLATE_UNKNOWN_PATH'],
    ["<p>{{t 'a.b' x=absent}}</p>", 'sample/main.hbs:1:16 TEMPLATE_UNKNOWN_PATH'],
    ['<p>{{t name}}</p>', 'sample/main.hbs:1:4 TEMPLATE_UNKNOWN_PATH'],
    ["<p>{{t 'common.absent'}}</p>", 'sample/main.hbs:1:4 LOCALE_KEY_MISSING'],
    ['<p>{{{name}}}</p>', 'sample/main.hbs:1:4 TEMPLATE_RAW_OUTPUT'],
    ['<p>{{& name}}</p>', 'sample/main.hbs:1:4 TEMPLATE_RAW_OUTPUT'],
    ['<p>{{lead}}</p>', 'sample/main.hbs:1:6 TEMPLATE_UNKNOWN_PATH'],
    ['<p>{{say name}}</p>', 'sample/main.hbs:1:10 TEMPLATE_UNKNOWN_PATH'],
    ['<p>{{say lead name}}</p>', 'sample/main.hbs:1:4 TEMPLATE_UNKNOWN_PATH'],
    ['<p>{{shout name}}</p>', 'sample/main.hbs:1:4 TEMPLATE_UNKNOWN_PATH'],
    ['<p>{{rows.length}}</p>', 'sample/main.hbs:1:6 TEMPLATE_UNKNOWN_PATH'],
    ['<p>{{constructor}}</p>', 'sample/main.hbs:1:6 TEMPLATE_UNKNOWN_PATH'],
    ['{{#with maybe}}x{{/with}}', 'sample/main.hbs:1:1 TEMPLATE_UNKNOWN_PATH'],
    ['{{> missing}}', 'sample/main.hbs:1:1 TEMPLATE_UNKNOWN_PATH'],
    ['<p>ok</p>\n<script>x</script>', 'sample/main.hbs:2:1 TEMPLATE_UNKNOWN_BLOCK'],
    ['{{name}}<B>x</B>', 'sample/main.hbs:1:9 TEMPLATE_UNKNOWN_BLOCK'],
    ['{{#> layout}}x{{/layout}}', 'sample/main.hbs:1:1 TEMPLATE_SYNTAX'],
    ["<p>{{'shout' name}}</p>", 'sample/main.hbs:1:4 TEMPLATE_UNKNOWN_PATH'],
    ['{{#if true}}x{{/if}}', 'sample/main.hbs:1:7 TEMPLATE_UNKNOWN_PATH'],
    ['{{#if name shown}}x{{/if}}', 'sample/main.hbs:1:1 TEMPLATE_UNKNOWN_PATH'],
    ['{{#each 4}}x{{/each}}', 'sample/main.hbs:1:9 TEMPLATE_UNKNOWN_PATH'],
    ['<p>{{@key}}</p>', 'sample/main.hbs:1:6 TEMPLATE_UNKNOWN_PATH'],
    ['<p>{{@index.x}}</p>', 'sample/main.hbs:1:6 TEMPLATE_UNKNOWN_PATH'],
    ['<p>{{../name}}</p>', 'sample/main.hbs:1:6 TEMPLATE_UNKNOWN_PATH'],
    ['<p>{{@root.absent}}</p>', 'sample/main.hbs:1:6 TEMPLATE_UNKNOWN_PATH'],
    ['<p>{{name.inner}}</p>', 'sample/main.hbs:1:6 TEMPLATE_UNKNOWN_PATH'],
    ['{{> (lookup . "x")}}', 'sample/main.hbs:1:1 TEMPLATE_UNKNOWN_PATH'],
    ["<p>{{t 'a.b' x=lead}}</p>", 'sample/main.hbs:1:16 TEMPLATE_UNKNOWN_PATH'],
  ])('finds what is wrong in %s', (template, finding) => {
    expect(lint(template)).toEqual([finding]);
  });

  it('checks a partial where it is called, and says its own place', () => {
    const partial = { row: '<p>{{label}}</p>\n<p>{{name}}</p>' };
    expect(lint('{{#each rows}}{{> row}}{{/each}}', partial)).toEqual([
      'partials/row.hbs:2:6 TEMPLATE_UNKNOWN_PATH',
    ]);
    expect(lint('{{> row maybe}}', { row: '<p>{{inner}}</p>' })).toEqual([]);
    expect(lint('{{#each rows}}{{> row}}{{/each}}', { row: '{{../name}}' })).toEqual([
      'partials/row.hbs:1:3 TEMPLATE_UNKNOWN_PATH',
    ]);
  });

  it('takes a text in quotes for a variable of words, and flags of a loop', () => {
    expect(lint("<p>{{t 'a.b' x='1'}}</p>")).toEqual([]);
    expect(
      lint(
        '{{#each rows}}{{#if @first}}<p>{{label}}</p>{{/if}}{{#unless @last}}<p>{{label}}</p>{{/unless}}{{/each}}',
      ),
    ).toEqual([]);
  });

  it('says once what a partial has wrong, however often it is called, and nothing of one given what is not there', () => {
    expect(lint('{{> row}}{{> row}}', { row: '{{absent}}' })).toEqual([
      'partials/row.hbs:1:3 TEMPLATE_UNKNOWN_PATH',
    ]);
    expect(lint('{{> row absent}}', { row: '{{alsoAbsent}}' })).toEqual([
      'sample/main.hbs:1:9 TEMPLATE_UNKNOWN_PATH',
    ]);
    expect(lint('{{> row name=name}}', { row: '{{name}}' })).toEqual([
      'sample/main.hbs:1:1 TEMPLATE_UNKNOWN_PATH',
    ]);
  });

  it('refuses a partial that calls itself', () => {
    expect(lint('{{> row}}', { row: '{{> row}}' })).toEqual(['partials/row.hbs:1:1 TEMPLATE_SYNTAX']);
  });

  it('says where a template cannot be parsed', () => {
    const result = parseTemplate('<p>\n{{#if name}}\n</p>', 'sample/main.hbs');
    expect(result).toMatchObject({
      ok: false,
      diagnostics: [{ code: 'TEMPLATE_SYNTAX', span: { file: 'sample/main.hbs' } }],
    });
  });
});
