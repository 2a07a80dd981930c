import { describe, expect, it } from 'vitest';
import {
  columns,
  fromEnd,
  fromStart,
  palette,
  rowDirection,
  tableGapOf,
  themeOf,
} from '../../../src/render/theme.ts';
import { clinicianTree, comparisonTree } from '../../helpers/sample-documents.ts';

// Relative luminance and contrast: W3C, Web Content Accessibility Guidelines 2.2, glossary; read 2026-11.

function luminance(hex: string): number {
  const channel = (start: number): number => {
    const value = parseInt(hex.slice(start, start + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

function contrast(one: string, other: string): number {
  const [light = 1, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

describe('the palette', () => {
  it('is measured with the formula that gives the published worked ratios', () => {
    // W3C accessibility conformance testing rule afw4f7, passed examples.
    expect(contrast('#333333', '#FFFFFF')).toBeCloseTo(12.6, 1);
    expect(contrast('#0000EE', '#FFFFFF')).toBeCloseTo(9.4, 1);
  });

  it('gives text the highest contrast there is, on white and on pale', () => {
    expect(contrast(palette.ink, palette.white)).toBe(21);
    expect(contrast(palette.ink, palette.pale)).toBeGreaterThan(19);
    expect(contrast(palette.white, palette.ink)).toBe(21);
  });

  it('keeps lines and outlined shapes above 3 to 1, as WCAG asks of graphics', () => {
    expect(contrast(palette.line, palette.white)).toBeGreaterThanOrEqual(7);
    expect(contrast(palette.leaf, palette.white)).toBeGreaterThanOrEqual(9);
    expect(contrast(palette.mid, palette.white)).toBeGreaterThanOrEqual(3);
  });

  it('tells had from not by 8 to 1 or more, in grey as in colour', () => {
    expect(contrast(palette.ink, palette.light)).toBeGreaterThanOrEqual(8);
  });
});

describe('the grid', () => {
  it('adds up to 492 in every kind of row', () => {
    const { name, nameGap, picture, pictureGap, words, field } = columns;
    expect(name + nameGap + picture + pictureGap + words).toBe(492);
    expect(name + nameGap + field).toBe(492);
    expect(themeOf(comparisonTree).width).toBe(492);
  });

  it('parts the columns of a table further where letters fill their squares', () => {
    for (const language of ['zh-Hans', 'ko', 'hi'])
      expect(tableGapOf(language)).toBeGreaterThan(tableGapOf('en'));
    expect(['ar', 'ru', 'vi'].map(tableGapOf)).toEqual([8, 8, 8]);
  });

  it('keeps the floor of 12 points on patient pages, and is small only for clinicians', () => {
    for (const role of Object.values(themeOf(comparisonTree).type))
      expect(role.size).toBeGreaterThanOrEqual(12);
    expect(themeOf({ ...comparisonTree, kind: 'sources' }).type.body.size).toBe(13);
    expect(themeOf(clinicianTree).type.body).toMatchObject({ size: 8.5, lineHeight: 11 });
    expect(themeOf(clinicianTree).width).toBe(532);
  });

  it('turns over in right to left', () => {
    expect(rowDirection('rtl')).toBe('row-reverse');
    expect(fromStart('rtl', 5)).toEqual({ right: 5 });
    expect(fromEnd('rtl', 5)).toEqual({ left: 5 });
    expect(fromStart('ltr', 5)).toEqual({ left: 5 });
  });
});
