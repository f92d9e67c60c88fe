/** Long timbers against the skin: closed forms of boards held at three points, and of a vee. */
import { faceOnSkin, underStick } from '../../src/boat/joinery/face-on-skin';
import type { Vec3 } from '../../src/kernel';
import { hullThrough, veePrism } from '../boat/shapes';
import type { Check } from './check';

/** Stations 1 m apart; keel and chine as high as given, the sides plumb. */
const level = (keel: readonly number[], chine: readonly number[]) =>
  hullThrough({
    keel: keel.map((z, i): Vec3 => [i, 0, z]),
    chine: chine.map((z, i): Vec3 => [i, 0.5, z]),
    sheer: chine.map((z, i): Vec3 => [i, 0.5, z + 0.5]),
  });
const RISE = 0.02;
const ROCKER = [RISE, 0, RISE];
const BOARD =
  'bending of a board on three supports, ends free: h (3x - x³) / 2; fair through them is the parabola';

export const rows: readonly Check[] = [
  {
    id: 'D9',
    cell: 'fairing',
    what: 'most that a keelson with free ends lacks of a rockered bottom fair through three frames, a third of the bay on',
    input: 'frames 1 m apart, rise 20 mm: 2 h / 27',
    expected: [1.4815],
    unit: 'mm',
    tolerance: 0.005,
    source: BOARD,
    known: 'closed form',
    obtain: () => {
      const hull = level(ROCKER, ROCKER);
      return [-1000 * faceOnSkin(hull.edge('keel'), hull.panel('bottom'), 0.045, 'free').at(1 / 3).line];
    },
  },
  {
    id: 'D10',
    cell: 'fairing',
    what: 'most that a straight stick shows between that keelson and a straight chine',
    input: 'frames 1 m apart, rise 20 mm: h √3 / 9',
    expected: [3.849],
    unit: 'mm',
    tolerance: 0.02,
    source: BOARD,
    known: 'closed form',
    obtain: () => [
      1000 * Math.max(...underStick(level(ROCKER, [0, 0, 0]), 'free').map(({ proud }) => proud)),
    ],
  },
  {
    id: 'D11',
    cell: 'fairing',
    what: 'how far the edges of a keelson 90 mm wide stand proud of a bottom that rises 15 degrees',
    input: '45 sin 15°',
    expected: [11.647],
    unit: 'mm',
    tolerance: 0.001,
    source: 'geometry of the section',
    known: 'closed form',
    obtain: () => {
      const hull = hullThrough(veePrism(4, 0.8, Math.PI / 12, 0.4, 0.2));
      return [1000 * faceOnSkin(hull.edge('keel'), hull.panel('bottom'), 0.045, 'free').at(1.3).far];
    },
  },
];
