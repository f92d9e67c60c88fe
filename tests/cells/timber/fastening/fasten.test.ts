import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fasten } from '../../../../src/cells/timber/fastening/fasten';
import { plainShown, write } from '../../../../src/measure';
import { tryCell } from '../../try-cell';
import { withTwoChines } from '../../odd-boats';
import { measured, testBoats, testDrawings } from '../../proofs';

const chine = {
  length: '4 m',
  pitch: '75 mm',
  topThickness: '9 mm',
  depth: '38 mm',
  face: '38 mm',
  gravity: '0.48',
};
const says = (entries: Readonly<Record<string, string>>) =>
  tryCell(fasten, entries)
    .warnings.map((warning) => warning.says)
    .join(' | ');

describe('fasten', () => {
  test('9 mm plywood on a chine log: No. 8, drilled 2.3 mm, counted to the end of both sides', () => {
    const tried = tryCell(fasten, chine);
    expect(tried.number('gauge')).toBe(8);
    expect(tried.number('pilot') * 1000).toBeCloseTo(0.7 * 3.327, 2);
    // 6 x 4.17 = 25 mm in the timber, 9 mm on top: 34 mm, sold as 35
    expect(tried.number('screwLength')).toBeCloseTo(0.035, 12);
    // 12 x 4.166 = 50 mm from each end; 3.9 m in spaces of 75 mm at most is 52 spaces
    expect(tried.number('endDistance')).toBeCloseTo(0.05, 4);
    expect(tried.number('perRow')).toBe(53);
    expect(tried.number('total')).toBe(106);
    expect(tried.number('toBuy')).toBe(117);
    expect(tried.number('boxes')).toBe(2);
  });

  test('the sizes of a No. 8 screw, 0.164 in thick, in millimetres', () => {
    const tried = tryCell(fasten, { ...chine, gauge: '8', screwLength: '35 mm' });
    const inMm = (key: string) => tried.number(key) * 1000;
    expect(inMm('head')).toBeCloseTo(0.332 * 25.4, 6);
    expect(inMm('wantedHold')).toBeCloseTo(6 * 0.164 * 25.4, 6);
    expect(inMm('fullLength')).toBeCloseTo(9 + 6 * 0.164 * 25.4, 6);
    expect(inMm('longest')).toBeCloseTo(9 + 38 - 3, 6);
    expect(tried.number('holdInDiameters')).toBeCloseTo(26 / (0.164 * 25.4), 6);
    expect(inMm('thread')).toBeCloseTo((2 / 3) * 35, 6);
    expect(inMm('shankHole')).toBeCloseTo(0.166 * 25.4, 6);
    // The wider of two codes: 10 D and 5 d along, 10 D and 12 d to an end, 2.5 D and 3 d to an edge.
    expect(inMm('leastPitch')).toBeCloseTo(10 * 0.164 * 25.4, 6);
    expect(inMm('leastEnd')).toBeCloseTo(12 * 0.164 * 25.4, 6);
    expect(inMm('leastEdge')).toBeCloseTo(3 * 0.164 * 25.4, 6);
  });

  test('in feet and inches screws come from inch lengths, and holes are called by their drills', () => {
    const feet = { ...plainShown, length: 'feet', fraction: 8 } as const;
    const tried = tryCell(fasten, chine, undefined, feet);
    expect(tryCell(fasten, {}, undefined, feet).number('pitch')).toBeCloseTo(3 * 0.0254, 12);
    expect(tried.words).toMatch(
      /That is \d+ screws for 2 edges, 1 row on each; with spares buy \d+, in \d+ box(es)? of 100/,
    );
    // 9 + 25 mm is 1.34 in: sold above it is 1 1/2 in
    expect(tried.number('screwLength') / 0.0254).toBeCloseTo(1.5, 9);
    expect(tried.words).toContain('No. 8 screws, 1 1/2 in long');
    // 0.7 x 0.131 in is 0.092 in; 0.164 + 0.002 in is 0.166 in
    expect(tried.words).toContain(
      'Holes: No. 43 drill (exactly 0.092 in) for the thread, 11/64 in (exactly 0.166 in) through the part screwed on',
    );
    const drawn = JSON.stringify(tried.drawing);
    expect(drawn).toContain('pilot No. 43 drill (exactly 0.092 in)');
    expect(drawn).toContain('"1 1/2 in"');
    // A countersink is set by a caliper: 0.083 in is no eighth.
    expect(tried.words).toContain('sink the head 0.098 in');
    expect(tryCell(fasten, chine).words).toContain(
      'Holes: 2.3 mm (exactly 2.33 mm) for the thread, 4.3 mm (exactly 4.22 mm) through',
    );
    expect(tryCell(fasten, { ...chine, screwLength: '30 mm' }, undefined, feet).words).toContain(
      'No. 8 screws, 30 mm long',
    );
  });

  test('a thin panel on a thin log in eighths of an inch gets a drill, and no mark of the tape', () => {
    const feet = { ...plainShown, length: 'feet', fraction: 8 } as const;
    const tried = tryCell(fasten, { ...chine, topThickness: '1/4 in', depth: '1 1/2 in' }, undefined, feet);
    const written = (key: 'pilot' | 'shankHole') =>
      write(tried.number(key), key === 'pilot' ? 'pilotDrill' : 'shankDrill', feet);
    // No. 6: 0.7 x 0.113 in and 0.138 + 0.002 in
    expect(written('pilot')).toMatchObject({ text: '5/64 in', remainder: 'exactly 0.079 in' });
    expect(written('shankHole')).toMatchObject({ text: '9/64 in', remainder: 'exactly 0.140 in' });
    expect(write(tried.number('pilot'), 'pilotDrill', plainShown).text).toBe('2.0 mm');
  });

  test('the screws laid out reach from end to end', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 150, max: 9000 }),
        fc.integer({ min: 20, max: 300 }),
        fc.integer({ min: 5, max: 70 }),
        (length, pitch, end) => {
          const tried = tryCell(fasten, {
            ...chine,
            length: `${length} mm`,
            pitch: `${pitch} mm`,
            endDistance: `${end} mm`,
          });
          const spaces = tried.number('perRow') - 1;
          expect(spaces * tried.number('evenPitch') + 2 * tried.number('endDistance')).toBeCloseTo(
            length / 1000,
            9,
          );
          // A thousandth of a space is forgiven.
          expect(tried.number('evenPitch')).toBeLessThanOrEqual((pitch / 1000) * 1.001);
        },
      ),
      { seed: 17, numRuns: 60 },
    );
  });

  test('an edge shorter than its two end distances takes one screw', () => {
    const tried = tryCell(fasten, { ...chine, length: '60 mm', endDistance: '50 mm' });
    expect(tried.number('perRow')).toBe(1);
    expect(tried.number('evenPitch')).toBe(0);
  });

  test('gauge and length follow what is screwed on, until they are typed over', () => {
    expect(tryCell(fasten, { ...chine, topThickness: '6 mm' }).number('gauge')).toBe(6);
    expect(tryCell(fasten, { ...chine, topThickness: '12 mm' }).number('gauge')).toBe(10);
    const typed = tryCell(fasten, { ...chine, gauge: '12', screwLength: '40 mm' });
    expect(typed.number('diameter') / 0.0254).toBeCloseTo(0.216, 9);
    expect(typed.number('hold')).toBeCloseTo(0.031, 12);
  });

  test('inch lengths where screws are sold in inches', () => {
    expect(tryCell(fasten, { ...chine, soldIn: 'inch' }).number('screwLength') / 0.0254).toBeCloseTo(1.5, 9);
  });

  test('in shallow timber the screw to buy stays inside it', () => {
    const tried = tryCell(fasten, { ...chine, depth: '19 mm' });
    expect(tried.number('screwLength')).toBeCloseTo(0.025, 12);
    expect(tried.number('behind')).toBeCloseTo(0.003, 12);
  });

  test('a gauge that is not sold is refused in a sentence', () => {
    expect(tryCell(fasten, { ...chine, gauge: '11' }).issues['diameter']).toContain(
      'no wood screw of gauge 11',
    );
  });

  test('oak is drilled wider than fir', () => {
    expect(
      tryCell(fasten, { ...chine, species: 'whiteOak', gravity: '0.68' }).number('pilot'),
    ).toBeGreaterThan(tryCell(fasten, chine).number('pilot'));
  });

  test('both published rules and the shop’s custom stand side by side, for No. 8', () => {
    const tried = tryCell(fasten, { ...chine, gauge: '8' });
    const inDiameters = (key: string) => tried.number(key) / (0.164 * 0.0254);
    const rules = (end: string) => [`american${end}`, `european${end}`].map(inDiameters);
    const close = (found: readonly number[], wanted: readonly number[]) =>
      wanted.forEach((value, i) => expect(found[i]).toBeCloseTo(value, 9));
    close(rules('Pitch'), [10, 5]);
    close(rules('Rows'), [3, 3]);
    close(rules('End'), [10, 12]);
    close(rules('QuietEnd'), [5, 7]);
    close(rules('Edge'), [2.5, 3]);
    expect(tried.number('pitch')).toBe(0.075);
    expect(tried.number('customLength')).toBeCloseTo(0.027, 12);
  });

  test('the countersink goes as deep as the cone of the head', () => {
    const tried = tryCell(fasten, { ...chine, gauge: '8' });
    const sink = ((0.332 - 0.164) * 25.4) / 2 / Math.tan((40.5 * Math.PI) / 180);
    expect(tried.number('sink') * 1000).toBeCloseTo(sink, 9);
  });

  describe('the splitting light', () => {
    const light = (entries: Readonly<Record<string, string>>) =>
      tryCell(fasten, { ...chine, gauge: '8', ...entries });
    test.each([
      ['green', 0, {}],
      // 12.5 mm keeps 3 d from the edge, 10.4 mm 2.5 d: between them one rule allows it.
      ['amber', 1, { face: '23 mm' }],
      ['red', 2, { face: '20 mm' }],
      // 12 d is 50 mm, 5 d 20.8 mm.
      ['amber', 1, { endDistance: '40 mm' }],
      ['red', 2, { endDistance: '20 mm' }],
      // 10 d is 41.7 mm, 5 d 20.8 mm.
      ['amber', 1, { pitch: '30 mm' }],
      ['red', 2, { pitch: '20 mm' }],
      // Undrilled, 38 mm is more than 7 d = 29 mm but asks 15 d of space and more of the end.
      [
        'amber',
        1,
        {
          holes: 'none',
          splits: 'usual',
          endDistance: '80 mm',
          gravity: '0.42',
          density: '403 kg/m3',
          face: '42 mm',
          pitch: '60 mm',
        },
      ],
      ['red', 2, { holes: 'none', depth: '19 mm' }],
      ['red', 2, { holes: 'none', splits: 'easily' }],
      // Douglas-fir splits easily without being asked: 14 d is 58 mm of depth.
      ['red', 2, { holes: 'none', species: 'douglasFirCoast', endDistance: '90 mm', face: '80 mm' }],
      [
        'red',
        2,
        { holes: 'none', density: '762 kg/m3', depth: '150 mm', face: '150 mm', endDistance: '500 mm' },
      ],
    ] as const)('is %s', (name, value, entries) => {
      const tried = light(entries);
      expect(tried.number('light')).toBe(value);
      expect(tried.words).toContain(`Splitting light ${name}`);
      expect(tried.drawing!.says).toContain(`Splitting light: ${name}`);
    });

    test('nearer, closer or undrilled it never turns for the better', () => {
      const mm = (min: number, max: number) => fc.integer({ min, max });
      fc.assert(
        fc.property(mm(10, 90), mm(5, 80), mm(15, 90), mm(1, 30), (pitch, end, face, less) => {
          const at = (p: number, e: number, f: number, holes = 'drilled') =>
            light({
              pitch: `${p} mm`,
              endDistance: `${e} mm`,
              face: `${f} mm`,
              length: '4000 mm',
              holes,
            }).number('light');
          const here = at(pitch, end, face);
          expect(at(pitch, Math.max(1, end - less), face)).toBeGreaterThanOrEqual(here);
          expect(at(pitch, end, Math.max(5, face - less))).toBeGreaterThanOrEqual(here);
          expect(at(pitch, end, face, 'none')).toBeGreaterThanOrEqual(here);
        }),
        { seed: 9, numRuns: 20 },
      );
    });
  });

  test('takes edge, skin, timber and wood from the boat', () => {
    const boat = {
      'bottom.thickness': '12 mm',
      'keelson.thickness': '30 mm',
      'keelson.width': '110 mm',
      'keelson.timber': 'whiteOak',
    };
    const tried = tryCell(fasten, { along: 'keel', skin: 'bottom', into: 'keelson', ...boat });
    expect(tried.number('topThickness')).toBeCloseTo(0.012, 12);
    expect(tried.number('depth')).toBeCloseTo(0.03, 12);
    expect(tried.number('face')).toBeCloseTo(0.11, 12);
    expect(tried.number('gravity')).toBeCloseTo(0.73, 12);
    expect(tried.number('length')).toBeGreaterThan(1);
  });

  test('a bottom lands on the narrow face of a chine log, a side on the wide one', () => {
    const log = { 'chineLog.thickness': '19 mm', 'chineLog.width': '38 mm', into: 'chineLog' };
    const on = (entries: Readonly<Record<string, string>>) => {
      const tried = tryCell(fasten, { ...log, ...entries });
      return ['face', 'depth'].map((key) => Math.round(tried.number(key) * 1000));
    };
    expect(on({ skin: 'side' })).toEqual([38, 19]);
    expect(on({ skin: 'bottom' })).toEqual([19, 38]);
    expect(on({ skin: 'bottom', lands: 'wide' })).toEqual([38, 19]);
    expect(on({ skin: 'side', lands: 'narrow' })).toEqual([19, 38]);
    // On a keelson the bottom lies flat.
    expect(
      on({ skin: 'bottom', into: 'keelson', 'keelson.thickness': '18 mm', 'keelson.width': '90 mm' }),
    ).toEqual([90, 18]);
  });

  test('the bottom of the ferry dory on her log: nearer to its edges than either rule allows', () => {
    const tried = tryCell(fasten, { skin: 'bottom' });
    // Half of 19 mm is 9.5; a No. 8 screw asks 2.5 x 4.17 = 10.4 and 3 x 4.17 = 12.5 mm.
    expect(tried.number('edgeDistance')).toBeCloseTo(0.0095, 12);
    expect(tried.number('screwLength')).toBeCloseTo(0.035, 12);
    expect(tried.number('light')).toBe(2);
  });

  describe('warnings', () => {
    test('none for a roomy joint', () => expect(says(chine)).toBe(''));
    test('out of the far face', () =>
      expect(says({ ...chine, screwLength: '50 mm' })).toContain('comes out of the far face'));
    test('point near the far face', () =>
      expect(says({ ...chine, screwLength: '45 mm' })).toContain('short of the far face'));
    test('too shallow to carry, which only a joint without glue asks of it', () => {
      expect(says({ ...chine, screwLength: '30 mm', held: 'dry' })).toContain(
        'Of a screw that carries 6 are asked',
      );
      expect(says({ ...chine, screwLength: '30 mm' })).toBe('');
    });
    test('far too shallow', () =>
      expect(says({ ...chine, screwLength: '20 mm' })).toContain('one and a half thicknesses'));
    test('near the edge', () => expect(says({ ...chine, face: '22 mm' })).toContain('is wanted'));
    test('too near the edge', () => expect(says({ ...chine, face: '15 mm' })).toContain('split it'));
    test('too near the end', () =>
      expect(says({ ...chine, endDistance: '20 mm' })).toContain('from the end'));
    test('too close together', () =>
      expect(says({ ...chine, pitch: '30 mm' })).toContain('in one line of grain'));
    test('wider than usual', () => expect(says({ ...chine, pitch: '150 mm' })).toContain('Wider than usual'));
    test('in inches not a millimetre', () => {
      const feet = { ...plainShown, length: 'feet', mass: 'lb' } as const;
      const entries = {
        pitch: '150 mm',
        rows: '2',
        face: '40 mm',
        holes: 'none',
        depth: '19 mm',
        endDistance: '20 mm',
      };
      const said = tryCell(fasten, { ...chine, ...entries }, undefined, feet).warnings.map((one) => one.says);
      expect(said.length).toBeGreaterThan(3);
      expect(said.join(' ')).toContain('screws stand 2 1/2 in to 5 in apart');
      expect(said.filter((says) => /\d (mm|kg)/.test(says))).toStrictEqual([]);
    });
    test('rows too near each other', () =>
      expect(says({ ...chine, rows: '2', rowGap: '8 mm', face: '60 mm' })).toContain('Rows 8 mm apart'));
    test('undrilled', () =>
      expect(says({ ...chine, holes: 'none', depth: '19 mm' })).toContain('Without a hole'));
    test('a head deeper than what it holds', () =>
      expect(says({ ...chine, topThickness: '2 mm', gauge: '14' })).toContain('pulls through'));
    test('two rows on a narrow face', () => expect(says({ ...chine, rows: '2' })).toContain('45 mm'));
  });

  test.each([
    ['keel', 'keelson', 'bottom'],
    ['chine', 'chineLog', 'side'],
    ['sheer', 'sheerClamp', 'side'],
  ])('along the %s the skin lands on the %s', (along, into, skin) => {
    const { all } = tryCell(fasten, { along });
    expect([all['into'], all['skin']]).toStrictEqual([into, skin]);
    const own = tryCell(fasten, { along, [`${into}.width`]: '61 mm', [`${skin}.thickness`]: '7 mm' });
    expect(own.number('width')).toBe(0.061);
    expect(own.number('topThickness')).toBe(0.007);
    // What is chosen otherwise stays so.
    expect(tryCell(fasten, { along, into: 'sheerClamp', skin: 'side' }).all).toMatchObject({
      into: 'sheerClamp',
      skin: 'side',
    });
  });

  test('between two chines each edge has its own panel', () => {
    const landed = (along: string) => {
      const { all } = tryCell(fasten, { along }, withTwoChines);
      return [all['into'], all['skin']];
    };
    expect(['keel', 'lowerChine', 'upperChine', 'sheer'].map(landed)).toStrictEqual([
      ['keelson', 'bottom'],
      ['chineLog', 'bilge'],
      ['chineLog', 'side'],
      ['sheerClamp', 'side'],
    ]);
  });

  testBoats(fasten);

  testDrawings(fasten, {
    'as it stands': {},
    'a roomy joint': chine,
    'two rows': { ...chine, rows: '2', face: '60 mm' },
    'one screw': { ...chine, length: '60 mm' },
    'two screws': { ...chine, length: '160 mm' },
    'through and out': { ...chine, screwLength: '80 mm' },
    'wide apart': { ...chine, pitch: '300 mm' },
    'heavy timber': { ...chine, depth: '150 mm', face: '150 mm', topThickness: '40 mm' },
  });

  test('the drawing carries the figures to scale', () => {
    const { drawing } = tryCell(fasten, chine);
    expect(measured(drawing, '75 mm')).toBeCloseTo(75, 0);
    expect(measured(drawing, '50 mm')).toBeCloseTo(50, 0);
    expect(measured(drawing, '35 mm')).toBeCloseTo(35, 6);
    expect(measured(drawing, '9 mm')).toBeCloseTo(9, 6);
    expect(measured(drawing, '19 mm')).toBeCloseTo(19, 6);
  });
});
