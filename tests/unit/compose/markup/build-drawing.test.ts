import { describe, expect, it } from 'vitest';

import { buildBlocks } from '../../../../src/compose/markup/build-blocks.ts';
import { MarkupError } from '../../../../src/compose/markup/element.ts';

const file = 'sample/main.hbs';
const origin = 'sample/main.hbs:1';
const build = (markup: string): unknown => buildBlocks(markup, file)[0];
const view = (inside: string, attributes = ''): string =>
  `<view heading="After" alt="A tube." height="100" ${attributes}>${inside}</view>`;
const pointer = (side: string): string => `<pointer words="a tube" side="${side}" x="10" y="20"/>`;

describe('building a drawing', () => {
  it('keeps layers, outlines, the way of food and labels as they come, and leaves out what is empty', () => {
    const markup = view(
      `<layer look="way"><outline path="M 0 0 L 10 5.5" width="11"/><outline path="M 0 0 C 1 1 2 2 3 3 Z" width=""/></layer>${pointer('left')}`,
      'food="M 0 0 L 0 9"',
    );
    expect(build(`<drawing>${markup}${view('')}</drawing>`)).toEqual({
      type: 'drawing',
      views: [
        {
          heading: 'After',
          alt: 'A tube.',
          height: 100,
          layers: [
            {
              look: 'way',
              outlines: [{ path: 'M 0 0 L 10 5.5', width: 11 }, { path: 'M 0 0 C 1 1 2 2 3 3 Z' }],
            },
          ],
          food: 'M 0 0 L 0 9',
          labels: [{ text: 'a tube', side: 'left', x: 10, y: 20 }],
          origin,
        },
        { heading: 'After', alt: 'A tube.', height: 100, layers: [], labels: [], origin },
      ],
      origin,
    });
  });

  it.each([
    ['no view', '', '<drawing> takes one or two <view>'],
    ['three views', view('').repeat(3), '<drawing> takes one or two <view>'],
    [
      'words at four sides, which no page is wide enough for',
      view(pointer('left') + pointer('right')).repeat(2),
      '<drawing> has words at more than 3 sides',
    ],
    [
      'a look that nobody draws',
      view('<layer look="red"></layer>'),
      'look of <layer> is not one of way, bypassed',
    ],
    [
      'a path with a command that is not drawn',
      view('<layer look="cut"><outline path="M 0 0 A 1 1 0 0 1 2 2"/></layer>'),
      '<outline> has a path that cannot be drawn',
    ],
    ['a way of food that is no path', view('', 'food="down"'), '<view> has a path that cannot be drawn'],
    [
      'a label that points beside the body',
      view('<pointer words="a" side="left" x="145" y="20"/>'),
      '<pointer> points outside its <view>',
    ],
    [
      'a label that points below the body',
      view('<pointer words="a" side="left" x="5" y="101"/>'),
      '<pointer> points outside its <view>',
    ],
    [
      'a body without height',
      '<view heading="A" alt="B" height="0"></view>',
      'height of <view> is not over 0',
    ],
  ])('refuses %s', (_, inside, message) => {
    const built = (): unknown => build(`<drawing>${inside}</drawing>`);
    expect(built).toThrow(MarkupError);
    expect(built).toThrow(message);
  });
});
