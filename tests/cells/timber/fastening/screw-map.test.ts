import { describe, expect, test } from 'vitest';
import { buildHull, lists, offsetsOf, starters, type Table } from '../../../../src/boat';

import { screwMap } from '../../../../src/cells/timber/fastening/screw-map';
import { plainShown, write } from '../../../../src/measure';
import { provesItsDrawing, testDrawings } from '../../proofs';
import { withoutChines, withTwoChines } from '../../odd-boats';
import { tryCell } from '../../try-cell';
import { onHandAlone } from '../../alone';

const says = (entries: Readonly<Record<string, string>>) =>
  tryCell(screwMap, entries)
    .warnings.map((warning) => warning.says)
    .join(' | ');

const boats: readonly (readonly [string, Table])[] = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['two chines', withTwoChines],
  ['no chine', withoutChines],
];
const joints = ['plate', 'skin', 'keelson'] as const;

/** A screw's row of the table. */
const row = (tried: ReturnType<typeof tryCell>, i: number, key: string) => tried.inRow(`screw${i}`, key);

describe('screwMap', () => {
  test('a gusset’s screws: as many rows in the table as stand, readings in whole millimetres where moved', () => {
    const tried = tryCell(screwMap);
    const placed = tried.number('placed');
    expect(placed).toBeGreaterThan(3);
    expect(tried.number('asked')).toBe(placed + tried.number('dropped'));
    expect(tried.rows).toHaveLength(placed);
    const moved = Array.from({ length: placed }, (_, i) => i + 1).filter(
      (i) => row(tried, i, 'movedBy') !== 0,
    );
    expect(moved).toHaveLength(tried.number('moved'));
    for (const i of moved) {
      for (const key of ['along', 'inward']) {
        const inMm = Number(row(tried, i, key)) * 1000;
        expect(inMm).toBeCloseTo(Math.round(inMm), 6);
      }
    }
  });

  test('least wood is that of the screw with the least, and never less than asked', () => {
    const tried = tryCell(screwMap, { screwClear: '15 mm' });
    const wood = Array.from({ length: tried.number('placed') }, (_, i) => Number(row(tried, i + 1, 'wood')));
    expect(tried.number('leastWood')).toBe(Math.min(...wood));
    expect(tried.number('leastWood')).toBeGreaterThanOrEqual(0.015 - 1e-9);
  });

  test('plates on both faces take their screws by turns, and name the face', () => {
    const tried = tryCell(screwMap);
    const faces = [1, 2, 3, 4].map((i) => row(tried, i, 'face'));
    expect(new Set(faces)).toStrictEqual(new Set(['after face', 'forward face']));
    expect(faces[0]).toBe(faces[2]);
    const single = tryCell(screwMap, { faces: 'one' });
    expect(row(single, 2, 'face')).toBe(row(single, 1, 'face'));
  });

  test('a rule that asks more never has more screws in a row', () => {
    const asked = (rule: string) => tryCell(screwMap, { rule, pitch: '20 mm', rows: '1' }).number('asked');
    expect(asked('both')).toBeLessThanOrEqual(Math.min(asked('european'), asked('american')));
    expect(asked('american')).toBeLessThan(asked('european'));
  });

  test('rules come out in diameters of a No. 8 screw', () => {
    const inDiameters = (rule: string, ends: string) => {
      const tried = tryCell(screwMap, { rule, ends, gauge: '8' });
      return ['ruleAlong', 'ruleAcross', 'ruleEnd', 'ruleEdge'].map((key) =>
        Number((tried.number(key) / (0.164 * 0.0254)).toFixed(9)),
      );
    };
    expect(inDiameters('american', 'quiet')).toStrictEqual([10, 3, 5, 2.5]);
    expect(inDiameters('american', 'pulled')).toStrictEqual([10, 3, 10, 2.5]);
    expect(inDiameters('european', 'quiet')).toStrictEqual([5, 3, 7, 3]);
    expect(inDiameters('both', 'pulled')).toStrictEqual([10, 3, 12, 3]);
  });

  test('what is screwed on gives thickness, gauge and length', () => {
    const inMm = (fastened: string, key: string) => tryCell(screwMap, { fastened }).number(key) * 1000;
    expect(inMm('plate', 'topThickness')).toBeCloseTo(9, 9);
    expect(inMm('skin', 'topThickness')).toBeCloseTo(6, 9);
    expect(inMm('keelson', 'topThickness')).toBeCloseTo(18, 9);
    // 9 mm of plate on 19 mm of frame: 25 mm is the longest that stays 3 mm inside.
    expect(inMm('plate', 'screwLength')).toBeCloseTo(25, 9);
  });

  test('a row of holes far from the middle costs more stiffness than one hole in the middle', () => {
    const tried = tryCell(screwMap, { gauge: '8' });
    const [hole, depth, off] = [tried.number('pilot'), tried.number('moulded'), tried.number('offMiddle')];
    expect(off).toBeGreaterThan(0);
    // Strip by strip: the second moment of what the hole leaves.
    const steps = 20_000;
    let left = 0;
    for (let i = 0; i < steps; i++) {
      const z = ((i + 0.5) / steps - 0.5) * depth;
      if (Math.abs(z - off) > hole / 2) left += z * z * (depth / steps);
    }
    expect(tried.number('stiffnessLeft')).toBeCloseTo(left / (depth ** 3 / 12), 3);
  });

  test('a hole bored in from the edge takes its strip, as deep as the screw stands', () => {
    const tried = tryCell(screwMap, { fastened: 'skin', gauge: '8', screwLength: '30 mm' });
    const [hole, depth, siding] = [tried.number('pilot'), tried.number('moulded'), tried.number('siding')];
    const steps = 20_000;
    let left = 0;
    for (let i = 0; i < steps; i++) {
      const z = ((i + 0.5) / steps - 0.5) * depth;
      const width = depth / 2 - z < tried.number('hold') ? siding - hole : siding;
      left += width * z * z * (depth / steps);
    }
    expect(tried.number('stiffnessLeft')).toBeCloseTo(left / ((siding * depth ** 3) / 12), 3);
  });

  describe.each(boats)('%s', (_, table) => {
    const { frames, chines, panels } = lists(table);
    test('lays out every joint of every frame, or says in a sentence why there is none', () => {
      for (const { id: frame } of frames) {
        for (const fastened of joints) {
          const tried = tryCell(screwMap, { frame, fastened }, table);
          const issues = Object.values(tried.issues);
          const refused = fastened === 'plate' && chines.length === 0;
          expect(issues.every((said) => said.includes('no gussets'))).toBe(true);
          expect(issues.length > 0).toBe(refused);
          expect(tried.drawing === undefined).toBe(refused);
        }
      }
    });

    test('along each panel’s member, drawn without texts on each other', () => {
      for (const { id: member } of panels)
        provesItsDrawing(tryCell(screwMap, { fastened: 'skin', member }, table).drawing);
      expect(panels.length).toBeGreaterThan(0);
    });
  });

  describe('warnings', () => {
    test('a frame too thin for screws in its edge', () =>
      expect(says({ fastened: 'skin', siding: '15 mm', gauge: '10' })).toContain('on either side'));
    test('no room for some', () =>
      expect(says({ moulded: '60 mm', screwClear: '25 mm' })).toContain(
        'Fewer than half of the screws find a place',
      ));
    test('no room for any', () => expect(says({ gussetLeg: '40 mm' })).toContain('no row at all'));
    test('too near the saw', () =>
      expect(says({ screwClear: '5 mm' })).toContain('a blade set a little over'));
    test('a screw that is not there', () =>
      expect(says({ screw: '99' })).toContain('This joint has fewer screws'));
  });

  testDrawings(screwMap, {
    'as it stands': {},
    'three rows': { rows: '3', pitch: '25 mm' },
    'a large gusset': { gussetLeg: '300 mm', rows: '3' },
    'through the skin': { fastened: 'skin' },
    'close in the skin': { fastened: 'skin', pitch: '30 mm' },
    'through the keelson': { fastened: 'keelson' },
    'some without a place': { moulded: '60 mm', screwClear: '20 mm' },
  });

  test('gives one full-size pattern of the joint, with the reading of each screw; none without screws', () => {
    const hull = buildHull(offsetsOf(starters[0]!.table));
    const patterns = (entries: Readonly<Record<string, string>>) => {
      const { all } = tryCell(screwMap, entries, starters[0]!.table);
      const values = all as Readonly<Record<string, number | string>>;
      const on = onHandAlone(screwMap, values, hull, (value, kind) => write(value, kind, plainShown).text);
      return screwMap.patterns!.draw(values, on);
    };
    const [pattern, ...others] = patterns({});
    expect(others).toStrictEqual([]);
    const texts = pattern!.shapes.flatMap((shape) => (shape.shape === 'label' ? [shape.text] : []));
    expect(texts).toContainEqual(expect.stringMatching(/^1: [\d.]+ mm, [\d.]+ mm in$/));
    expect(patterns({ gussetLeg: '40 mm' })).toStrictEqual([]);
  });
});
