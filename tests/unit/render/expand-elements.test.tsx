import { Path, Svg, Text, View } from '@react-pdf/renderer';
import { Component, memo } from 'react';
import type { ReactNode } from 'react';
import { describe, expect, it } from 'vitest';
import { expandElement } from '../../../src/render/expand-elements.ts';
import { textOf } from '../../../src/render/layout-node.ts';

function Pair({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <Text style={{ fontSize: 13 }}>{children}</Text>
      {[false, null, undefined, <Text key="b">two</Text>]}
    </>
  );
}

class Old extends Component {
  override render() {
    return <View />;
  }
}

const Remembered = memo(Pair);

describe('expandElement', () => {
  it('calls components, opens fragments and lists, and drops what React does not show', () => {
    const [view] = expandElement(
      <View style={{ width: 10 }} sem={{ tag: 'P' }}>
        <Pair>one {1}</Pair>
        {null}
      </View>,
    );
    expect(view?.children.map((child) => child.type)).toEqual(['TEXT', 'TEXT']);
    expect(view?.children.map(textOf)).toEqual(['one 1', 'two']);
    expect(view?.props).toEqual({ sem: { tag: 'P' } });
    expect(view?.style).toEqual({ width: 10 });
  });

  it('gives the same nodes as the reconciler of @react-pdf would need: type, style, props, children', () => {
    const [svg] = expandElement(
      <Svg width={10} height={20} viewBox="0 0 10 20">
        <Path d="M0 0L1 1" stroke="#000000" />
      </Svg>,
    );
    const path = {
      type: 'PATH',
      box: {},
      style: {},
      props: { d: 'M0 0L1 1', stroke: '#000000' },
      children: [],
    };
    expect(svg).toEqual({
      type: 'SVG',
      box: {},
      style: {},
      props: { width: 10, height: 20, viewBox: '0 0 10 20' },
      children: [path],
    });
  });

  it('lets no line feed through to the typesetter', () => {
    expect(expandElement(<Text>{'one\ntwo'}</Text>).map(textOf)).toEqual(['one two']);
  });

  it('refuses text outside a Text, and components that are not plain functions', () => {
    expect(() => expandElement(<View>text</View>)).toThrow(/directly in VIEW/);
    expect(() => expandElement('text')).toThrow(/put it into Lines/);
    expect(() => expandElement(<Old />)).toThrow(/plain function/);
    expect(() => expandElement(<Remembered>text</Remembered>)).toThrow(/plain function/);
  });
});
