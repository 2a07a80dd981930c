import { beforeAll, describe, expect, it } from 'vitest';

import { parseTemplate } from '../../../../src/compose/template/parse-template.ts';
import { compileTemplate } from '../../../../src/compose/template/run-template.ts';
import { InternalError } from '../../../../src/diagnostics/diagnostic.ts';
import type { Translator } from '../../../../src/model/locale.ts';
import { realLocale } from '../../../helpers/compose-inputs.ts';

let translator: Translator;
beforeAll(async () => {
  ({ translator } = await realLocale('en'));
});

function run(source: string, view: object): string {
  const parsed = parseTemplate(source, 'sample/main.hbs');
  if (!parsed.ok) throw new Error('the sample does not parse');
  return compileTemplate(parsed.value, new Map())(view, translator);
}

describe('running a template', () => {
  it('writes at every element of a block, but not at those of a line, where it stands in the file', () => {
    expect(run('<p>\n<b>{{name}}</b></p>\n<list></list>', { name: 'A & B' })).toBe(
      '<p origin="sample/main.hbs:1">\n<b>A &amp; B</b></p>\n<list origin="sample/main.hbs:3"></list>',
    );
  });

  it('prints words with their variables escaped, quotation marks too, and markup of the view model as it is', () => {
    const view = { name: '"A" & <b>', words: { markup: '<b>Yes.</b>' } };
    expect(run("{{t 'comparison.cover.for' name=name}}{{say words}}", view)).toBe(
      'For &quot;A&quot; &amp; &lt;b&gt;<b>Yes.</b>',
    );
  });

  it('never goes on with what is not there or not of its kind, whatever the lint has passed', () => {
    expect(() => run('{{absent}}', {})).toThrow(/absent/);
    expect(() => run('{{t name}}', { name: 4 })).toThrow(InternalError);
    expect(() => run('{{say name}}', { name: 'plain text' })).toThrow(InternalError);
    expect(() => run('{{say name}}', { name: { markup: 4 } })).toThrow(InternalError);
    expect(() => run('{{say name}}', { name: null })).toThrow(InternalError);
  });
});
