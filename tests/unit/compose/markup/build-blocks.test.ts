import { describe, expect, it } from 'vitest';

import { buildBlocks } from '../../../../src/compose/markup/build-blocks.ts';
import type { Paragraph } from '../../../../src/model/document.ts';
import { MarkupError } from '../../../../src/compose/markup/element.ts';

const file = 'sample/main.hbs';
const build = (markup: string): unknown => buildBlocks(markup, file)[0];
const origin = 'sample/main.hbs:1';

describe('building blocks from markup', () => {
  it('makes runs of text and figures, each with its style', () => {
    const words = build(
      '<p role="number" duty="caution"> <b>Now <fig cell="a/b/30d" records="r1 r2">24 out of 1,000</fig></b> in <lang code="en">English</lang> </p>',
    );
    expect(words).toEqual({
      type: 'paragraph',
      role: 'number',
      duty: 'caution',
      origin,
      inlines: [
        { type: 'text', value: 'Now ', bold: true },
        { type: 'figure', value: '24 out of 1,000', cell: 'a/b/30d', records: ['r1', 'r2'], bold: true },
        { type: 'text', value: ' in ' },
        { type: 'text', value: 'English', language: 'en' },
      ],
    });
  });

  it('joins neighbouring texts and leaves out empty attributes', () => {
    expect(build('<p role="" duty="">a <b></b>  b</p>')).toEqual({
      type: 'paragraph',
      role: 'body',
      origin,
      inlines: [{ type: 'text', value: 'a b' }],
    });
  });

  it('drops the space after a mark of Chinese, which brings its own white, also where the next run begins', () => {
    const values = (markup: string): readonly string[] =>
      (build(markup) as Paragraph).inlines.map(({ value }) => value);
    expect(values('<p><b>就用多少时间。</b> 您可以说</p>')).toEqual(['就用多少时间。', '您可以说']);
    expect(values('<p>“好转。” “I want.” 谁？ 谁</p>')).toEqual(['“好转。”“I want.” 谁？谁']);
    expect(values('<p><b>Take time.</b> You may</p>')).toEqual(['Take time.', ' You may']);
    expect(values('<p>시간이 필요합니다. <b>네.</b> 아니요</p>')).toEqual([
      '시간이 필요합니다. ',
      '네.',
      ' 아니요',
    ]);
  });

  it('ties sentences to the rows they stand on, and joins them only with their like', () => {
    const words = build(
      '<p>No. <stands on="undo:a">It is gone. <b>All</b> of it.</stands> <stands on="undo:a undo:b">So <lang code="es">es</lang>.</stands></p>',
    );
    const first = { statements: ['undo:a'] };
    const second = { statements: ['undo:a', 'undo:b'] };
    expect(words).toMatchObject({
      inlines: [
        { type: 'text', value: 'No. ' },
        { type: 'text', value: 'It is gone. ', ...first },
        { type: 'text', value: 'All', bold: true, ...first },
        { type: 'text', value: ' of it.', ...first },
        { type: 'text', value: ' ' },
        { type: 'text', value: 'So ', ...second },
        { type: 'text', value: 'es', language: 'es', ...second },
        { type: 'text', value: '.', ...second },
      ],
    });
    expect(words).not.toHaveProperty('inlines.0.statements');
    expect(build('<p><stands on="undo:a">x </stands><stands on="undo:a">y</stands></p>')).toMatchObject({
      inlines: [{ value: 'x y', statements: ['undo:a'] }],
    });
  });

  it('builds a strip with its axis and pictures', () => {
    const strip = build(`<strip layout="range">
      <axis min="60" max="130" today="114.5" label="You today"><scale unit="pounds"><tick at="68" label="150"/></scale></axis>
      <row name="Sleeve" tag=""><range average="93" low="82" high="" meaning="spread" alt="words"/><words><p>x</p></words></row>
      <row name="Shot"><unknown of="range" alt="not known"/></row></strip>`);
    expect(strip).toMatchObject({
      layout: 'range',
      axis: {
        min: 60,
        max: 130,
        today: { at: 114.5, label: 'You today' },
        top: { unit: 'pounds', ticks: [{ at: 68, label: '150' }] },
      },
      rows: [
        {
          name: 'Sleeve',
          picture: { type: 'range', average: 93, low: 82, meaning: 'spread', alt: 'words' },
          words: [{}],
        },
        { name: 'Shot', picture: { type: 'unknown', of: 'range' }, words: [] },
      ],
    });
    expect(strip).not.toHaveProperty('rows.0.tag');
    expect(strip).not.toHaveProperty('rows.0.picture.high');
  });

  it('takes a name with its language, and a plain one as an attribute or a child', () => {
    const strip = build(`<strip layout="text"><row><name><lang code="en">Soft food</lang></name></row>
      <row><name>Puré</name></row><row name="Normal"/></strip>`);
    expect(strip).toMatchObject({
      rows: [
        { name: [{ type: 'text', value: 'Soft food', language: 'en' }] },
        { name: 'Puré' },
        { name: 'Normal' },
      ],
    });
    expect(() => build('<strip layout="text"><row tag="t"/></strip>')).toThrow('name of <row> is empty');
  });

  it('builds every other block', () => {
    const kinds = buildBlocks(
      `<cover clinic="C" date="D" question="Q" addressee="A"><lead>l</lead></cover><heading level="2">h</heading>
       <topic question="T"><intro><p>i</p></intro><p>x</p></topic>
       <table layout="choices"><column label=""/><column label="Leak"/><table-row><cell><p>S</p></cell><cell></cell></table-row><table-row group="g"/></table>
       <callout kind="study" heading="h"><p>x</p></callout>
       <panel><lead>l</lead><body><p>b</p></body><side heading="s"><p>i</p></side><closing></closing></panel>
       <key heading="h"><mark kind="had">m</mark></key><matters blanks="2"><column label="A"/><p>s</p></matters>
       <ticks heading="t"><item>i</item></ticks><list ordered="true"><step><p>s</p></step></list><write-in lines="2"><p>q</p></write-in>
       <facts><fact label="l" value="v"/></facts>
       <line-board><weight-line name="n" min="1" max="2" today="2" label="t" alt="a"><point months="12" at="1" label="1" cell="c" records="r s"/></weight-line></line-board>`,
      file,
    );
    expect(kinds.map(({ type }) => type)).toEqual([
      'cover',
      'heading',
      'topic',
      'table',
      'callout',
      'panel',
      'key',
      'matters',
      'ticks',
      'list',
      'write-in',
      'facts',
      'line-board',
    ]);
    expect(kinds[2]).toMatchObject({ intro: [{}], blocks: [{ type: 'paragraph' }] });
  });

  it('takes a box to write in without a question, and a column without a head', () => {
    expect(build('<write-in lines="4" box="true"></write-in>')).toEqual({
      type: 'write-in',
      box: true,
      lines: 4,
      origin,
    });
    expect(
      build('<table layout="dense"><column label=""/><table-row><cell><p>S</p></cell></table-row></table>'),
    ).toMatchObject({ columns: [{ label: '' }], rows: [{ cells: [[{}]] }] });
  });

  it.each([
    ['<risk-table/>', '<risk-table> may not stand'],
    ['<p colour="red">x</p>', 'no attribute colour'],
    ['<topic/>', 'lacks question'],
    ['<topic question="">x</topic>', 'text stands directly'],
    ['<topic question=""/>', 'question of <topic> is empty'],
    ['<strip layout="people"><p>x</p></strip>', '<p> may not stand in <strip>'],
    ['<strip layout="circle"/>', 'is not one of'],
    ['<p role="huge">x</p>', 'is not one of'],
    ['<p></p>', '<p> says nothing'],
    ['<p><fig cell="a" records="r"></fig></p>', '<fig> says nothing'],
    ['<p><stands on="">x</stands></p>', 'on of <stands> is empty'],
    ['<p><stands>x</stands></p>', '<stands> lacks on'],
    ['<p><fig cell="a" records="r"><b>1</b></fig></p>', '<fig> may hold text only'],
    [
      '<strip layout="people"><row name="x"><people of="100" filled="99" may="5" half="false" alt="a"/></row></strip>',
      'do not fit',
    ],
    [
      '<strip layout="people"><row name="x"><people of="100" filled="1.5" may="0" half="false" alt="a"/></row></strip>',
      'do not fit',
    ],
    [
      '<strip layout="people"><row name="x"><people of="100" filled="" may="0" half="false" alt="a"/></row></strip>',
      'filled of <people> is empty',
    ],
    [
      '<strip layout="people"><row name="x"><people of="100" filled="1" may="0" half="false" alt=""/></row></strip>',
      'alt of <people> is empty',
    ],
    [
      '<strip layout="people"><row name="x"><unknown of="100" alt="a"/><unknown of="100" alt="a"/></row></strip>',
      'a second <unknown>',
    ],
    ['<table layout="choices"><column label=""/><table-row/></table>', 'another number of cells'],
    ['<panel><body></body></panel>', 'lacks its <lead>'],
    ['<document></document>', 'may not stand in <document>'],
    ['<constructor/>', 'may not stand in <document>'],
    ['<heading level="2"></heading>', '<heading> says nothing'],
    ['<ticks heading="t"><item> </item></ticks>', '<item> says nothing'],
    ['<cover clinic="C" date="D" question="Q" addressee="A"></cover>', '<cover> lacks its <lead>'],
    ['<write-in lines="many"/>', 'lines of <write-in> is not a number'],
    [
      '<strip layout="range"><axis min="60" max="130" today="114" label="You"></axis></strip>',
      '<axis> takes one or two <scale>',
    ],
    [
      `<strip layout="range"><axis min="60" max="130" today="114" label="You">${'<scale unit="kg"></scale>'.repeat(3)}</axis></strip>`,
      '<axis> takes one or two <scale>',
    ],
  ])('refuses %s', (markup, reason) => {
    expect(() => buildBlocks(markup, file)).toThrow(MarkupError);
    expect(() => buildBlocks(markup, file)).toThrow(reason);
  });
});
