/** Second roads to steps of the cells on screws, and on plates behind butted panels. */
import { shop } from '../../checks/printed/shop';
import { INCH, MM, PSI, type Road, type Roads, type Setting } from './road';

const listed = (path: string): readonly number[] =>
  Object.entries(shop).flatMap(([name, value]) => (name.startsWith(`${path}.`) ? [value] : []));
const lengths = ({ is }: Setting) =>
  listed(`lengths-sold.screwLengths.${is('soldIn', 'inch') ? 'inch' : 'metric'}`);
const HAIR = 1e-6;

const drilled = ({ n }: Setting) => n('drilled') > 0;
/** A spacing of so many diameters drilled, or so many not: commentary to the National Design Specification, from memory. */
const american =
  (holes: number, none: number): Road =>
  (of) =>
    (drilled(of) ? holes : none) * of.n('diameter');
/** EN 1995-1-1, Table 8.2, from memory, the force along the grain; undrilled by the density, to 420 and to 500 kg/m3. */
const european =
  (holes: number, light: number | ((of: Setting) => number), heavy: number): Road =>
  (of) => {
    const undrilled = of.n('lowDensity') <= 420 ? (typeof light === 'number' ? light : light(of)) : heavy;
    if (!drilled(of) && of.n('lowDensity') > 500) return null;
    return (drilled(of) ? holes : undrilled) * of.n('diameter');
  };

const spacings: Readonly<Record<string, Road>> = {
  americanPitch: american(10, 15),
  americanRows: american(3, 5),
  americanEnd: american(10, 15),
  americanQuietEnd: american(5, 10),
  americanEdge: american(2.5, 2.5),
  europeanPitch: european(5, ({ n }) => (n('diameter') < 5 * MM ? 10 : 12), 15),
  europeanRows: european(3, 5, 7),
  europeanEnd: european(12, 15, 20),
  europeanQuietEnd: european(7, 10, 15),
  europeanEdge: european(3, 5, 7),
  // One board in twenty is lighter: 1.645 standard deviations of ten per cent each.
  lowDensity: ({ n }) => 0.8355 * n('density'),
};

const chosen: Readonly<Record<string, Road>> = {
  // Common practice: 6 mm takes No. 6, 9 mm No. 8, 12 mm No. 10.
  usualGauge: ({ n }) => {
    const gauge = ([6, 9, 12] as const).findIndex((thick) => Math.abs(n('topThickness') - thick * MM) < 1e-9);
    return gauge < 0 ? null : [6, 8, 10][gauge]!;
  },
  longestSold: (of) => Math.max(0, ...lengths(of).filter((length) => length <= of.n('longest') + HAIR)),
  // The shortest sold that is as long as asked, but none that comes out of the far face.
  lengthToBuy: (of) => {
    const asked = lengths(of).find((length) => length >= of.n('fullLength') - HAIR);
    const longest = of.n('longestSold');
    if (longest === 0) return null;
    return asked !== undefined && asked <= longest ? asked : longest;
  },
  pilotSideways: ({ n }) => (n('gravity') > 0.6 ? 1 : 0.875) * n('root'),
};

/** Closest and widest usual, with glue: common practice. */
const usual: Readonly<Record<string, Road>> = {
  usualLeast: ({ is }) => (is('soldIn', 'inch') ? 2.5 * INCH : 60 * MM),
  usualMost: ({ is }) => (is('soldIn', 'inch') ? 5 * INCH : 125 * MM),
};

const isNarrow = ({ is }: Setting) =>
  is('lands', 'narrow') || (is('lands', 'part') && is('into', 'chineLog') && is('skin', 'bottom'));
const easilySplit = [
  'douglasFirCoast',
  'douglasFirInterior',
  'sitkaSpruce',
  'whiteSpruce',
  'westernLarch',
  'whiteOak',
  'redOak',
];
const printedScrew =
  (column: string) =>
  ({ n }: Setting) =>
    shop[`screws.screws.gauge${n('gauge')}.${column}`] ?? null;

/** Frames and ends, of a boat's edge, that panels land on: the outermost of them carry one panel, the others two. */
const panelsOn = ({ hull, word }: Setting) =>
  hull.panels.filter(({ inner, outer }) => [inner.name, outer.name].includes(word('along')));

/** The fewest even spaces that are no wider than the pitch. */
function spacesIn(length: number, pitch: number): number {
  let spaces = 1;
  while (length / spaces > pitch + 1e-9) spaces += 1;
  return spaces;
}

export const fastening: Roads = {
  butt: {
    half: ({ n }) => n('plateLength') - n('plateLength') / 2,
    usualPlate: ({ n, is }) => {
      const [shortest, point] = is('soldIn', 'inch') ? [INCH / 2, INCH / 8] : [12 * MM, 3 * MM];
      const keeps = is('kind', 'block') ? shortest + point - n('thickness') : 0;
      return keeps > n('thickness') ? keeps : n('thickness');
    },
    // The least whole number of plies that is enough; a thousandth of one is forgiven.
    pliesNeeded: ({ n }) => {
      let plies = 1;
      while (plies < n('pliesExact') - 0.001) plies += 1;
      return plies;
    },
    recess: () => MM,
    stack: ({ n }) => n('plyThickness') * n('plies'),
    usualLength: ({ n, is }) => {
      const [rule, printed] = [n('byRule'), n('printedLength')];
      if (is('kind', 'plate')) return rule > printed ? rule : printed;
      // Nine tenths of what is printed, to the next centimetre or half inch.
      const [least, to] = is('soldIn', 'inch') ? [6 * INCH, INCH / 2] : [0.15, 0.01];
      if (is('kind', 'block')) return Math.max(rule, least, to * Math.ceil((0.9 * printed) / to - 0.001));
      return is('kind', 'strap')
        ? Math.max(rule, n('firstPly') + n('stepDown') * n('plies') - n('stepDown'))
        : 0;
    },
    rowGap: ({ n }) => n('half') - n('rowIn') - n('rowIn'),
    reachIn: ({ n }) => (n('longestScrew') > n('thickness') ? n('longestScrew') - n('thickness') : 0),
    bayThere: ({ n }) => n('bay'),
  },
  fasten: {
    ...spacings,
    ...chosen,
    ...usual,
    onNarrow: (of) => Number(isNarrow(of)),
    usualDepth: (of) => of.n(isNarrow(of) ? 'width' : 'thickness'),
    usualFace: (of) => of.n(isNarrow(of) ? 'thickness' : 'width'),
    twoRows: ({ is }) => (is('soldIn', 'inch') ? (7 / 4) * INCH : 45 * MM),
    heaviest: () => 500,
    leastRowGap: ({ n }) => (n('americanRows') > n('europeanRows') ? n('americanRows') : n('europeanRows')),
    firstToLast: ({ n }) => Math.max(0, n('length') - n('endDistance') - n('endDistance')),
    splitsEasily: (of) =>
      Number(of.is('splits', 'easily') || (of.is('splits', 'species') && of.is('species', ...easilySplit))),
    // EN 1995-1-1, eq. 8.18 and 8.19, from memory: the larger of 7 d and (13 d - 30) rho / 400, in mm; double where it splits.
    undrilledFrom: ({ n }) => {
      const d = n('diameter') / MM;
      const thick = Math.max(7 * d, ((13 * d - 30) * n('lowDensity')) / 400);
      return (n('splitsEasily') > 0 ? 2 : 1) * thick * MM;
    },
    mustDrill: ({ n }) => Number(n('undrilledFrom') > n('depth') || n('lowDensity') > 500),
    beyondAny: (of) => Number(breaks(of, Math.min) || (of.n('mustDrill') > 0 && !drilled(of))),
    beyondOne: (of) =>
      Number(breaks(of, Math.max) || (of.n('rows') > 1 && of.n('rowGap') < of.n('leastRowGap'))),
  },
  screwCount: {
    length: ({ hull, word }) => hull.edge(word('along')).length,
    // Across every frame on either side, as many spaces as keep the pitch.
    inFrames: ({ hull, is, n }) => {
      const panels = [...hull.panels.entries()].filter(([, { name }]) => is('skin', 'none', name));
      const girths = hull.frames.flatMap(({ section }) =>
        panels.map(([i]) =>
          Math.hypot(section[i + 1]![0] - section[i]![0], section[i + 1]![1] - section[i]![1]),
        ),
      );
      if (girths.some((girth) => girth <= 2 * n('end'))) return null;
      const screws = girths.map((girth) => spacesIn(girth - 2 * n('end'), n('framePitch')) + 1);
      return 2 * screws.reduce((total, each) => total + each, 0);
    },
    ...usual,
    lines: (of) => 2 * panelsOn(of).filter(({ name }) => of.is('skin', 'none', name)).length,
    // As many spaces as keep the pitch, between a screw at each end.
    perLine: ({ n }) => {
      const between = n('length') - 2 * n('end');
      return between > 0 ? spacesIn(between, n('pitch')) + 1 : null;
    },
    onEdge: ({ n }) => n('lines') * n('perLine') * n('rows'),
  },
  screwStrength: {
    // National Design Specification (2018), Appendix I: thicker wire yields at less, in thousands of psi.
    usualYield: ({ n }) => {
      const at = [0.142, 0.177, 0.236].filter((inches) => n('diameter') > inches * INCH).length;
      return [100, 90, 80, 70][at]! * 1000 * PSI;
    },
    // Table 12.3.1B: KD for a bearing diameter to a quarter inch.
    usualReduction: ({ n }) => (n('diameter') <= 0.17 * INCH ? 2.2 : 0.5 + n('diameter') / (0.1 * INCH)),
    // 12.2: pounds to an inch of thread, G the gravity and D the diameter in inches.
    perLength: ({ n, word }) => {
      const [gravity, inches] = [n('mainGravity'), n('diameter') / INCH];
      const pounds: Readonly<Record<string, number>> = {
        screw: 2850 * gravity * gravity * inches,
        ringNail: 1800 * gravity * gravity * inches,
        smoothNail: 1380 * gravity ** 2.5 * inches,
        lag: 1800 * gravity ** 1.5 * inches ** 0.75,
      };
      return (pounds[word('fastener')]! * PSI * INCH * INCH) / INCH;
    },
    planes: ({ is }) => (is('shear', 'single') ? 1 : 2),
    bearing: ({ n, is }) => n(is('fastener', 'screw') ? 'rootDiameter' : 'diameter'),
    embedRatio: ({ n }) => n('mainEmbed') / n('sideEmbed'),
    k3: ({ n }) => {
      const [re, span] = [n('embedRatio'), n('sideLength') / n('bearing')];
      const bending = (n('yieldStress') * (4 / 3 + (2 / 3) * re)) / (n('mainEmbed') * span ** 2);
      return Math.sqrt(2 / re + 2 + bending) - 1;
    },
    screwTilts: ({ n }) => (n('k1') * n('sideCrushes')) / n('planes'),
    bendsInSide: ({ n }) => (n('k2') * n('mainCrushes')) / (1 + 2 * n('embedRatio')),
    wetPull: ({ is }) => {
      if (is('service', 'dry') || is('fastener', 'ringNail')) return 1;
      return is('fastener', 'smoothNail') ? 1 / 4 : 7 / 10;
    },
    wetPush: ({ is }) => (is('service', 'wet') ? 7 / 10 : 1),
    endGrain: ({ is }) => {
      if (is('grain', 'side')) return 1;
      return is('fastener', 'lag') ? 3 / 4 : 0;
    },
    lengthRatio: ({ n }) => n('mainLength') / n('sideLength'),
    k1: ({ n }) => {
      const [re, rt] = [n('embedRatio'), n('lengthRatio')];
      const root = Math.sqrt(re) * Math.sqrt(1 + 2 * re * (rt ** 2 + rt + 1) + (re * rt) ** 2);
      return [(root - re - re * rt) / (re + 1), 1e-6];
    },
    // The largest root of a square: (k2 + 1)^2 is twice the bearing's share and the screw's own bending.
    k2: ({ n }) => {
      const [re, span] = [n('embedRatio'), n('mainLength') / n('bearing')];
      const bending = (n('yieldStress') * (2 / 3 + (4 / 3) * re)) / (n('mainEmbed') * span ** 2);
      return [Math.sqrt(2 + 2 * re + bending) - 1, 1e-9];
    },
    mainCrushes: ({ n }) => (n('mainEmbed') * n('mainLength') * n('bearing')) / n('reduction'),
    sideCrushes: ({ n }) => (n('planes') * n('sideEmbed') * n('sideLength') * n('bearing')) / n('reduction'),
    inDiameters: ({ n }) => n('mainLength') / n('diameter'),
    thinEnough: ({ n }) => n('mainLength') / 6,
    // Wood Handbook, Table 8-4: hardwoods from 0.33 to 0.74, softwoods from 0.29 to 0.52.
    inTable: ({ n }) => {
      const [from, to] = n('hardwood') > 0 ? [0.33, 0.74] : [0.29, 0.52];
      return Number(n('dryGravity') >= from && n('dryGravity') <= to);
    },
    // EN 1995-1-1, eq. 8.16: 0.082 (1 - 0.01 d) rho, d in mm.
    europeanEmbed: ({ n }) => 0.082e6 * 0.8355 * n('density') * (1 - 10 * n('diameter')),
  },
  screwMap: {
    // By custom unless the boat's frames stand otherwise.
    stands: ({ hull, is, word }) => {
      if (!is('side', 'custom')) return word('side');
      return hull.station(word('frame')).index < hull.widest.index ? 'aft' : 'forward';
    },
    depth: ({ n, is }) => {
      if (is('fastened', 'plate')) return n('siding');
      const left = n('moulded') - (is('fastened', 'keelson') ? n('keelsonThickness') : 0);
      return left > 5 * MM ? left : 5 * MM;
    },
    // ASME B18.6.1: sixty thousandths of an inch, and thirteen to the gauge.
    diameter: ({ n }) => (60 + 13 * n('gauge')) * 0.001 * INCH,
    ...spacings,
    ...chosen,
    skinThickness: ({ n, is }) =>
      n(
        is('member', 'bottom')
          ? 'bottomThickness'
          : is('member', 'side')
            ? 'sideThickness'
            : 'bilgeThickness',
      ),
    root: printedScrew('root'),
    head: printedScrew('head'),
    // A flat head's cone, 81 degrees wide, down to the shank.
    sink: ({ n }) => (n('head') - n('diameter')) / 2 / Math.tan((40.5 / 180) * Math.PI),
    wantedHold: ({ n }) => n('diameter') / (1 / 6),
    fullLength: ({ n }) => n('wantedHold') + n('topThickness'),
    customLength: ({ n }) => n('topThickness') * 3,
    longest: ({ n }) => n('depth') + n('topThickness') - 3 * MM,
    holdInDiameters: ({ n }) => n('hold') / n('diameter'),
    behind: ({ n }) => n('depth') - n('hold'),
    shankHole: ({ n }) => n('diameter') + 0.002 * INCH,
    drilled: () => 1,
    leastClear: () => 10 * MM,
    customPitch: ({ is }) => (is('soldIn', 'inch') ? 1.5 * INCH : 40 * MM),
    faceWood: ({ n, is }) => (is('fastened', 'plate') ? n('ruleEdge') : n('siding') - n('siding') / 2),
    into: ({ n, is, hull, word }) => {
      if (n('screw') > n('placed')) return 'none';
      if (is('fastened', 'skin')) return hull.panel(word('member')).label;
      return is('fastened', 'keelson') ? hull.panels[0]!.label : null;
    },
    datum: ({ is, hull, word }) => {
      if (is('fastened', 'keelson')) return 'the centreline';
      if (is('fastened', 'plate') && is('chine', 'none')) return null;
      return `the ${is('fastened', 'plate') ? hull.edge(word('chine')).label : hull.panel(word('member')).outer.label}`;
    },
  },
};

/** Whether the screws stand nearer than the two codes have it, by the laxer or the stricter of each pair. */
function breaks({ n }: Setting, of: (american: number, european: number) => number): boolean {
  const kept = (is: number, what: string) => is >= of(n(`american${what}`), n(`european${what}`));
  return (
    !kept(n('edgeDistance'), 'Edge') ||
    !kept(n('endDistance'), 'QuietEnd') ||
    (n('perRow') > 1 && !kept(n('evenPitch'), 'Pitch'))
  );
}
