import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starter, starters } from '../../../src/boat';
import { faceOnSkin, underStick } from '../../../src/boat/joinery/face-on-skin';
import { stemBevel } from '../../../src/cells/frames/stem-bevel';
import { fairing } from '../../../src/cells/skin/fairing';
import { testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const launch = starter('vee-launch')!;
const says = (entries: Record<string, string>, table = launch) =>
  tryCell(fairing, entries, table)
    .warnings.map((one) => one.says)
    .join(' ');

describe('fairing', () => {
  test('a keelson under a vee bottom stands out with its edges, most where the deadrise is steepest', () => {
    const hull = buildHull(offsetsOf(launch));
    const tried = tryCell(fairing, { width: '90 mm' }, launch);
    const { edge, panel } = { edge: hull.edge('keel'), panel: hull.panel('bottom') };
    const { places } = faceOnSkin(edge, panel, 0.045, 'free');
    const most = Math.max(...places.map(({ line, far }) => Math.max(line, far)));
    expect(tried.number('reach')).toBeCloseTo(0.045, 12);
    const highest = places.find(({ far }) => Math.abs(far - most) < 1e-9)!;
    expect(tried.number('rises')).toBeCloseTo(highest.far - highest.line, 9);
    expect(tried.number('most')).toBeCloseTo(most, 9);
    expect(tried.number('lacks')).toBeCloseTo(-Math.min(...places.map(({ line }) => line)), 9);
    expect(tried.number('timberLength')).toBeCloseTo(edge.length, 12);
    expect([tried.number('isKeelson'), tried.number('faces'), tried.number('hasChine')]).toStrictEqual([
      1, 1, 1,
    ]);
    expect(tried.all['panel']).toBe('bottom');
    // The mark looked at is where it stands out most, until another is typed.
    expect(tried.number('at')).toBeCloseTo(tried.number('mostAt'), 12);
    expect(tried.number('off')).toBeCloseTo(tried.number('most'), 9);
    // Twice as wide, its edges stand out twice as far.
    const [narrow, wide] = ['60 mm', '120 mm'].map((width) => tryCell(fairing, { width, at: '2 m' }, launch));
    expect(
      (wide!.number('far') - wide!.number('line')) / (narrow!.number('far') - narrow!.number('line')),
    ).toBeCloseTo(2, 9);
  });

  test('on a flat bottom the keelson’s edges lie as its middle does, and what it lacks is shimmed', () => {
    const tried = tryCell(fairing, {}, starter('ferry-dory')!);
    const there = tryCell(fairing, { at: `${tried.number('lacksAt') * 1000} mm` }, starter('ferry-dory')!);
    expect(there.number('shim')).toBeCloseTo(tried.number('lacks'), 6);
    // Keel and chine bend all but alike there: within a tenth of a millimetre.
    expect(Math.abs(there.number('line') + tried.number('lacks'))).toBeLessThan(1e-4);
    expect(Math.abs(there.number('far') - there.number('line'))).toBeLessThan(1e-4);
    expect(there.number('off')).toBe(0);
  });

  test('held fast at its ends a board goes as the skin does', () => {
    const tried = tryCell(fairing, { ends: 'fast' }, starter('ferry-dory')!);
    expect(tried.number('line')).toBe(0);
    expect(Math.max(tried.number('most'), tried.number('lacks'))).toBeLessThan(1e-4);
    expect(tried.words).toContain('no more than a shaving');
  });

  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'keelson and chine of the %s differ by what a stick shows',
    (_, table) => {
      const hull = buildHull(offsetsOf(table));
      const tried = tryCell(fairing, {}, table);
      const places = underStick(hull, 'free');
      const most = Math.max(...places.map(({ proud }) => Math.abs(proud)));
      expect(Math.abs(tried.number('differ'))).toBeCloseTo(most, 6);
      const after = hull.stations.findIndex(({ name }) => name === tried.all['differFrom']);
      expect(hull.stations[after + 1]!.name).toBe(tried.all['differTo']);
    },
  );

  test('a log lies on the bottom by its thickness and on the side by its width', () => {
    const way = (face: string) =>
      tryCell(fairing, { timber: 'chineLog', face, thickness: '20 mm', width: '50 mm' });
    expect([way('below').number('reach'), way('below').all['panel']]).toStrictEqual([0.02, 'bottom']);
    expect([way('above').number('reach'), way('above').all['panel']]).toStrictEqual([0.05, 'side']);
    expect(way('above').number('faces')).toBe(2);
    expect(tryCell(fairing, { timber: 'sheerClamp', width: '50 mm' }).number('reach')).toBe(0.05);
  });

  test.each(starters)(
    'on the stem of $id goes by what the bevel of the stem says at each height',
    ({ table }) => {
      const hull = buildHull(offsetsOf(table));
      const tried = tryCell(fairing, { landing: '40 mm' }, table);
      const told = tryCell(stemBevel, {}, table);
      const hasStem = hull.fore.role === 'stem';
      expect(tried.number('hasStem')).toBe(hasStem ? 1 : 0);
      const bevels = hasStem ? told.rows.map(({ id }) => Number(told.inRow(id, 'bevel'))) : [0];
      const ups = hasStem ? told.rows.map(({ id }) => Number(told.inRow(id, 'height'))) : [0];
      const [foot, head] = [bevels[0]!, bevels.at(-1)!];
      const offs = bevels.map(
        (bevel, i) => 0.04 * Math.sin(foot + ((head - foot) * i) / Math.max(1, bevels.length - 1) - bevel),
      );
      const [proud, lack] = [Math.max(...offs), Math.min(...offs)];
      expect(tried.number('stemMost')).toBeCloseTo(Math.max(0, proud), 6);
      expect(tried.number('stemLacks')).toBeCloseTo(Math.max(0, -lack), 6);
      expect([proud < 1e-6, ups[offs.indexOf(proud)]!.toFixed(6)]).toContainEqual(
        proud < 1e-6 ? true : tried.number('stemMostUp').toFixed(6),
      );
      expect([lack > -1e-6, ups[offs.indexOf(lack)]!.toFixed(6)]).toContainEqual(
        lack > -1e-6 ? true : tried.number('stemLacksUp').toFixed(6),
      );
    },
  );

  test('a stem is read by rows up from its foot: flush at both ends, and off by the bevel between them', () => {
    const tried = tryCell(fairing, { timber: 'stem', landing: '40 mm', interval: '50 mm' }, launch);
    const bevels = tryCell(stemBevel, {}, launch);
    const told = bevels.rows.map(({ id }) => ({
      up: Number(bevels.inRow(id, 'height')),
      bevel: Number(bevels.inRow(id, 'bevel')),
    }));
    const [foot, head] = [told[0]!, told.at(-1)!];
    expect(tried.number('timberLength')).toBeCloseTo(head.up, 9);
    expect([tried.number('faces'), tried.number('isKeelson'), tried.number('reach')]).toStrictEqual([
      1, 0, 0.04,
    ]);
    expect(tried.rows.map(({ value }) => value)).toHaveLength(Math.ceil(head.up / 0.05) + 1);
    for (const end of ['first', 'last']) expect(tried.inRow(end, 'far')).toBeCloseTo(0, 12);
    for (const { up, bevel } of told) {
      const even = foot.bevel + ((head.bevel - foot.bevel) * up) / head.up;
      const there = tryCell(fairing, { timber: 'stem', landing: '40 mm', at: `${up * 1000} mm` }, launch);
      expect(there.number('far')).toBeCloseTo(0.04 * Math.sin(even - bevel), 7);
      expect(there.number('line')).toBe(0);
    }
    expect(tried.number('most')).toBeGreaterThanOrEqual(tried.number('stemMost') - 1e-9);
    expect(tried.number('lacks')).toBeGreaterThanOrEqual(tried.number('stemLacks') - 1e-9);
    expect(tried.words).toMatch(/up from its foot|no more than a shaving/);
    expect(tryCell(fairing, { timber: 'stem' }, starter('creek-punt')!).issues['most']).toMatch(/no stem/);
  });

  test('lists a mark every so far, both ends with them', () => {
    const tried = tryCell(fairing, { interval: '1 m' });
    const length = tried.number('timberLength');
    expect(tried.rows.map(({ value }) => value)).toStrictEqual([0, 1, 2, 3, 4, expect.closeTo(length, 12)]);
    expect(tried.number('listed')).toBe(100);
    expect(tried.inRow('mark2', 'line')).toBeCloseTo(tryCell(fairing, { at: '2 m' }).number('line'), 12);
  });

  test('speaks up beyond the gap that the glue bridges, and beyond the timber’s end', () => {
    expect(says({ mostGap: '20 mm' })).toContain('Left proud by');
    expect(says({ mostGap: '6 mm' })).toContain('Glue a shim on');
    expect(says({ mostGap: '7 mm', width: '10 mm' })).toBe('');
    expect(says({ at: '9 m' })).toContain('only');
    expect(tryCell(fairing, { at: '9 m' }, launch).number('onTimber')).toBe(0);
    expect(says({ interval: '30 mm' })).toContain('A hundred marks');
  });

  describe('drawing', () => {
    testDrawings(fairing, {
      'as the boat stands': {},
      'the log on the side': { timber: 'chineLog', face: 'above' },
      'a clamp': { timber: 'sheerClamp' },
      'nothing off': { ends: 'fast' },
      'a stem': { timber: 'stem' },
    });
  });
});
