import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { MarkupError } from '../../../../src/compose/markup/element.ts';
import { escapeText, plainText, unescapeText } from '../../../../src/compose/markup/escape-text.ts';
import { parseMarkup } from '../../../../src/compose/markup/parse-markup.ts';

const file = 'sample/main.hbs';

describe('parsing markup', () => {
  it('reads elements, attributes, text and character references', () => {
    const [topic] = parseMarkup(
      '<topic question="A &amp; B" origin="x/main.hbs:7"><p>1 &lt; 2 &#x3D;</p></topic>',
      file,
    );
    expect(topic).toEqual({
      type: 'element',
      name: 'topic',
      attributes: { question: 'A & B' },
      origin: 'x/main.hbs:7',
      children: [
        {
          type: 'element',
          name: 'p',
          attributes: {},
          origin: 'x/main.hbs:7',
          children: [{ type: 'text', value: '1 < 2 =' }],
        },
      ],
    });
  });

  it('turns line feeds and control characters into a space, and keeps no-break spaces', () => {
    const [p] = parseMarkup('<p>one\n\t two\u0000three\u00a0four</p>', file);
    expect(p).toMatchObject({ children: [{ value: 'one two three\u00a0four' }] });
  });

  it.each([
    ['<p>open', 'is not closed'],
    ['<p></b>', 'closes nothing'],
    ['</p>', 'closes nothing'],
    ['<p>a & b</p>', 'bare &'],
    ['<p>&nbsp;</p>', 'bare &'],
    ['<topic question="a & b"></topic>', 'question of <topic> holds a bare &'],
    ['<p role=body></p>', 'not well-formed'],
    ['<p role="a" role="b"></p>', 'twice'],
    ['<p role="<b>x</b>"></p>', 'not well-formed'],
    ['<!-- a --><p>x</p>', 'not well-formed'],
    ['<P>x</P>', 'not well-formed'],
  ])('refuses %s', (markup, reason) => {
    expect(() => parseMarkup(markup, file)).toThrow(MarkupError);
    expect(() => parseMarkup(markup, file)).toThrow(reason);
  });

  it('never says what a text holds', () => {
    const secret = 'Ilsa Marchetti';
    let message = '';
    try {
      parseMarkup(`<p>${secret} & <`, file);
    } catch (error) {
      message = String(error);
    }
    expect(message).toContain('<p>');
    expect(message).not.toContain(secret);
  });

  it('gives back any text that was escaped, as one text, whatever it holds', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (text) => {
        const [p] = parseMarkup(`<p>${escapeText(text)}</p>`, file);
        const children = p?.type === 'element' ? p.children : [];
        expect(children.length).toBeLessThanOrEqual(1);
        expect(unescapeText(escapeText(text))).toBe(text);
      }),
    );
  });

  it('takes only the five named references and numbers', () => {
    expect(unescapeText('&amp;&lt;&gt;&quot;&apos;&#39;&#x27;')).toBe("&<>\"'''");
    expect(unescapeText('&copy;')).toBeNull();
    expect(unescapeText('&constructor;')).toBeNull();
    expect(unescapeText('&#0;')).toBeNull();
    expect(unescapeText('&#x110000;')).toBeNull();
  });

  it('takes the bold marks out of words', () => {
    expect(plainText('<b>Yes.</b> A &amp; B')).toBe('Yes. A & B');
  });
});
