import { describe, expect, test } from 'vitest';
import {
  kindOf,
  kinds,
  plain,
  plainShown,
  sameDimension,
  sayDimension,
  type Shown,
  shownUnit,
} from '../../src/measure';
import { unitOf } from '../../src/measure/units';

const feet: Shown = { ...plainShown, length: 'feet', mass: 'lb' };

describe('kinds', () => {
  test.each(kinds)('$id is kept and written in units of its own dimension', (kind) => {
    const money = kind.dimension[5] !== 0;
    for (const ladder of [kind.metric, kind.customary]) {
      for (const symbol of [ladder.entry, ...ladder.rungs.map(([unit]) => unit)]) {
        // Money has no sign of its own: a price is written as so much per metre.
        const unit = symbol === '' ? plain : unitOf(money ? `money${symbol}` : symbol)?.dimension;
        const meant = money && symbol === '' ? plain : kind.dimension;
        expect({ symbol, fits: unit && sameDimension(unit, meant) }).toStrictEqual({ symbol, fits: true });
      }
    }
  });
  test.each(kinds)('$id: the rungs rise, and entries stand in one of them', ({ metric, customary }) => {
    for (const ladder of [metric, customary]) {
      const sizes = ladder.rungs.map(([symbol]) => {
        const unit = unitOf(symbol);
        return unit ? Number(unit.factor.top) / Number(unit.factor.bottom) : 1;
      });
      expect(sizes).toStrictEqual(sizes.toSorted((a, b) => a - b));
      expect(ladder.rungs.map(([unit]) => unit)).toContain(ladder.entry);
      expect(ladder.rungs[0]?.[1]).toBe(0);
    }
  });
  test('every noun has its article', () => {
    for (const { noun } of kinds) expect(noun).toMatch(/^an? [a-z ]+$/);
  });
  test('a dimension is called by the first of its kinds', () => {
    expect(sayDimension(kindOf('sectionModulus').dimension)).toBe('a volume');
    expect(sayDimension(kindOf('film').dimension)).toBe('a length');
  });
  test('an id from elsewhere is a fault of ours', () => {
    expect(() => kindOf('weight' as never)).toThrow('unknown kind: weight');
  });
});

describe('the builder’s choice', () => {
  test('of length decides for areas and volumes, of mass for forces and stresses', () => {
    const mixed: Shown = { ...plainShown, length: 'feet', mass: 'kg' };
    expect([shownUnit('length', mixed), shownUnit('area', mixed), shownUnit('stress', mixed)]).toStrictEqual([
      'in',
      'ft²',
      'MPa',
    ]);
    expect([shownUnit('length', feet), shownUnit('volume', feet), shownUnit('force', feet)]).toStrictEqual([
      'in',
      'gal',
      'lbf',
    ]);
    expect([shownUnit('length', plainShown), shownUnit('temperature', plainShown)]).toStrictEqual([
      'mm',
      '°C',
    ]);
  });
  test('is without effect on plain numbers, angles and time', () => {
    for (const kind of ['number', 'count', 'slope', 'ratio', 'share', 'angle', 'time', 'money'] as const) {
      expect(shownUnit(kind, feet)).toBe(shownUnit(kind, plainShown));
    }
  });
});
