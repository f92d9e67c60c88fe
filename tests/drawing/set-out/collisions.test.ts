import { describe, expect, test } from 'vitest';
import {
  collisions,
  drawing,
  setOut,
  textSlab,
  type Placed,
  type PlacedText,
  type Sheet,
} from '../../../src/drawing';
import { strokesOf } from '../../../src/drawing/set-out/collisions';

const blank = setOut(drawing({ title: 't', says: 's', shapes: [] }), {
  width: 300,
  bar: false,
  caption: false,
});
const sheet = (...marks: Placed[]): Sheet => ({ ...blank, width: 300, height: 200, marks });

const text = (x: number, y: number, more: Partial<PlacedText> = {}): PlacedText => ({
  kind: 'text',
  of: 0,
  x,
  y,
  lines: ['144 mm'],
  size: 13,
  anchor: 'middle',
  turn: 0,
  className: 'dim-text',
  ...more,
});
const stroke = (d: string, of: number): Placed => ({ kind: 'path', of, d, className: 'pen-dimension' });

const found = (...marks: Placed[]): string[] => collisions(sheet(...marks)).map((c) => c.what);

describe('collisions', () => {
  test('finds a text on a text', () => {
    expect(found(text(100, 100), text(110, 105, { of: 1 }))).toEqual(['text on text']);
    expect(found(text(100, 100), text(100, 120, { of: 1 }))).toEqual([]);
  });

  test('finds it for turned texts, by their turned place', () => {
    expect(found(text(100, 100, { turn: -90 }), text(95, 75, { of: 1 }))).toEqual(['text on text']);
    expect(found(text(100, 100, { turn: -90 }), text(160, 100, { of: 1 }))).toEqual([]);
  });

  test('finds a line of another shape through a text, not its own', () => {
    expect(found(text(100, 100), stroke('M50 97L150 97', 1))).toEqual(['line through text']);
    expect(found(text(100, 100), stroke('M50 97L150 97', 0))).toEqual([]);
    expect(found(text(100, 100), stroke('M50 150L150 150', 1))).toEqual([]);
  });

  test('finds a text that leaves the sheet on any side', () => {
    for (const off of [text(5, 100), text(295, 100), text(100, 5), text(100, 199)]) {
      expect(found(off)).toEqual(['text off the sheet']);
    }
  });

  test('heeds anchor and number of lines', () => {
    expect(found(text(5, 100, { anchor: 'start' }))).toEqual([]);
    expect(found(text(295, 100, { anchor: 'end' }))).toEqual([]);
    expect(found(text(100, 100), text(100, 84, { of: 1 }))).toEqual([]);
    expect(found(text(100, 100), text(100, 84, { of: 1, lines: ['144', 'mm'] }))).toEqual(['text on text']);
  });

  test('passes over texts without lines', () => {
    expect(found(text(100, 100, { lines: [] }), text(100, 100))).toEqual([]);
    expect(textSlab(text(0, 0, { lines: [] }))).toBeNull();
  });
});

test('strokes of path data close where they began', () => {
  expect(strokesOf('M1 2L3 4L-5 6.5ZM0 0L1 1')).toEqual([
    [1, 2, 3, 4],
    [3, 4, -5, 6.5],
    [-5, 6.5, 1, 2],
    [0, 0, 1, 1],
  ]);
});
