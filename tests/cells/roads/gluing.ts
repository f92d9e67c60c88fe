/** Second roads to steps of the cells on glue, clamps, fillets and resin. */
import { shop } from '../../checks/printed/shop';
import { INCH, MM, type Roads, type Setting } from './road';

const printed = (name: string): number => {
  const value = shop[name];
  if (value === undefined) throw new Error(`nothing is printed of ${name}`);
  return value;
};
const ofGlue = ({ word }: Setting, column: string) =>
  printed(`adhesives.adhesives.${word('glue')}.${column}`);
const isPaste = ({ is }: Setting) => is('glue', 'epoxy', 'polyurethane');

/** The timber that a joint is named after: `keelsonFrames`, `sideLogs`, `rubRails`. */
const timberOf = (of: Setting) => {
  const joint = of.word('joint');
  if (/^keelson|Keelson$/.test(joint)) return 'keelson';
  if (/^log|Logs$/.test(joint)) return 'log';
  return joint === 'rubRails' ? 'rail' : 'clamp';
};
/** How much of a timber's face a joint is glued on: across a frame its siding, at the log's foot its thickness, else its width. */
const widthOf = (of: Setting) => {
  const { n, word } = of;
  if (word('joint') === 'all') return n('allLength') > 0 ? n('allArea') / n('allLength') : 0;
  if (word('joint').endsWith('Frames')) return n('siding');
  return n(`${timberOf(of)}${word('joint') === 'bottomLogs' ? 'Thickness' : 'Width'}`);
};
const seats = ({ n }: Setting, each: number) => n('frames') * each + n('ends') * each;

export const gluing: Roads = {
  clamps: {
    jointRadius: (of) => of.n(`${timberOf(of)}Radius`),
    usualPressure: ({ n }) => {
      const [least, most] = [n('leastPressure'), n('mostPressure')];
      if (n('mostGap') >= MM) return least + (most - least) / 2;
      return n('gravity') < 0.55 ? least : most;
    },
    usualPitch: ({ n, is }) =>
      printed(
        `adhesives.clampPitch${is('measures', 'inch') ? 'Inch' : ''}.${n('places') <= 1 && n('radius') / n('ply') < n('tightness') ? 'tight' : 'straight'}`,
      ),
    // The last whole mark that is no more.
    saidPitch: ({ n, is }) => {
      const mark = is('measures', 'inch') ? INCH / 4 : 5 * MM;
      if (n('evenPitch') < 3 * mark) return n('evenPitch');
      let marks = 3;
      while ((marks + 1) * mark <= n('evenPitch') + mark / 1000) marks += 1;
      return marks * mark;
    },
    allClamps: ({ n }) => n('clamps') * n('pieces'),
    atPlace: ({ n }) => n('clamps') / n('places'),
    forceEach: ({ n }) => (n('clamps') > 0 ? n('force') / n('clamps') : 0),
    // Doubled for each ten kelvin below 20 °C.
    slower: ({ n }) => Math.exp((Math.LN2 * (20 - (n('shop') - 273.15))) / 10),
    pace: ({ n }) => n('spreading') + n('each') / n('evenPitch'),
    goesByClamps: ({ n }) => {
      let goes = 0;
      while (goes * Math.max(1, n('inHand')) < n('clamps')) goes += 1;
      return goes;
    },
    goesByTime: ({ n }) => {
      // As many open times as hold all of the setting, and one less does not.
      const goes = Math.round(n('goesByTime'));
      const hair = 1e-9 * n('setting');
      return n('setting') <= goes * n('open') + hair && n('setting') > (goes - 1) * n('open') - hair
        ? goes
        : 0;
    },
  },
  glue: {
    places: ({ n, word }) => (word('joint').endsWith('Frames') ? Math.max(1, n('frames') + n('ends')) : 1),
    laid: (of) => {
      const { n, is } = of;
      if (is('glue', 'polyurethane')) return n('beads') * n('length') * Math.PI * (n('bead') / 2) ** 2;
      return n('area') * (is('glue', 'epoxy') ? n('film') : n('spread') / n('density'));
    },
    slower: ({ n }) => Math.exp((Math.LN2 * (20 - (n('shop') - 273.15))) / 10),
    each: ({ n }) => n('length') / n('pieces'),
    keelsonSeats: (of) => seats(of, of.n('keelsonWidth')),
    logSeats: (of) => of.n('logPieces') * (seats(of, of.n('logThickness')) + seats(of, of.n('logWidth'))),
    clampSeats: (of) =>
      of.n('clampPieces') * (seats(of, of.n('clampThickness')) + seats(of, of.n('clampWidth'))),
    // Each run is a line of its own; a log is glued to bottom and side.
    allLength: ({ n }) =>
      ['keelsonSeats', 'logSeats', 'clampSeats', 'keelsonRun', 'logRun', 'logRun', 'clampRun', 'railRun']
        .map(n)
        .reduce((total, each) => total + each, 0),
    allArea: ({ n }) =>
      n('siding') * (n('keelsonSeats') + n('logSeats') + n('clampSeats')) +
      n('logRun') * (n('logThickness') + n('logWidth')) +
      (['keelson', 'clamp', 'rail'] as const).reduce(
        (sum, part) => sum + n(`${part}Run`) * n(`${part}Width`),
        0,
      ),
    jointWidth: widthOf,
    // A layer is half the timber; a panel lies over what it is glued to; a rail over the side.
    above: (of) => {
      const joint = of.word('joint');
      if (joint === 'all') return 0;
      if (joint.startsWith('bottom')) return of.n('bottomThickness');
      if (joint.startsWith('side')) return of.n('sideThickness');
      return of.n(`${timberOf(of)}Thickness`) / (joint.endsWith('Layers') ? 2 : 1);
    },
    pieceLength: ({ n }) => n('jointLength') / n('pieces'),
    usualBeads: ({ n }) => {
      let beads = 0;
      while (beads * 40 * MM < n('width') - 1e-12) beads += 1;
      return beads;
    },
    usualFilm: ({ word }) => printed(`glue-lines.glueLines.${word('glue')}`),
    usualSpread: (of) =>
      isPaste(of)
        ? of.n('density') * of.n('film')
        : (ofGlue(of, 'leastSpread') + ofGlue(of, 'mostSpread')) / 2,
    cartridge: () => 0.3e-3,
    // As much in the round bead as in the flat film.
    beadNeeded: ({ n, is }) =>
      is('glue', 'polyurethane')
        ? 2 * Math.sqrt((n('width') * n('film')) / Math.max(1, n('beads')) / Math.PI)
        : 0,
    inLines: ({ n }) => n('film') * n('area'),
    squeezedOut: ({ n }) => (n('total') > 0 ? Math.max(0, (n('total') - n('inLines')) / n('total')) : 0),
    pasteYield: ({ n }) =>
      (1 / n('epoxyDensity') + n('fillerShare') / n('fillerDensity')) * n('epoxyDensity'),
    glueMass: ({ n, is }) => n('volume') * (is('glue', 'epoxy') ? n('epoxyDensity') : n('density')),
  },
  fillet: {
    thinner: ({ n }) =>
      n('lowerThickness') < n('upperThickness') ? n('lowerThickness') : n('upperThickness'),
    usualRadius: ({ n, is }) =>
      Math.max(
        is('measures', 'inch') ? (3 / 8) * INCH : printed('paste.filletRadius'),
        printed('paste.radiusToPanel') * n('thinner'),
      ),
    toBuy: ({ n }) => n('paste') / n('pasteYield'),
  },
  resin: {
    bottomBoth: ({ n }) => n('bottomArea') + n('bottomArea'),
    restBoth: ({ n }) =>
      n('bilgeArea') +
      n('sideArea') +
      n('sideArea') +
      n('bilgeArea') +
      n('transomArea') +
      n('bowArea') +
      n('flatArea'),
    onHull: ({ n }) =>
      [2, 2, 2, 1, 1].reduce(
        (sum, times, i) =>
          sum + times * n(['bottomArea', 'bilgeArea', 'sideArea', 'transomArea', 'bowArea'][i]!),
        0,
      ),
    usualShare: ({ word }) => printed(`glass.layups.${word('layup')}.glassShare`),
    skinThickness: ({ n }) => {
      const layers = n('bottomLayers') > n('sideLayers') ? n('bottomLayers') : n('sideLayers');
      return layers > 0 ? n('plyThickness') * layers + n('fillFilm') * n('fillCoats') : 0;
    },
  },
  batch: {
    slower: ({ n }) => Math.exp((Math.LN2 * (n('labelAt') - n('air'))) / 10),
    lifeAt25: ({ n }) => n('labelLife') * Math.exp((Math.LN2 * (n('labelAt') - 273.15 - 25)) / 10),
    heating: ({ n }) => Math.exp((Math.LN2 * (n('air') - 273.15 - 25)) / 10),
    cupful: ({ n, is }) => {
      const small = is('hardener', 'fast') || n('air') > 27 + 273.15;
      return printed(`pots.potful${is('measures', 'inch') ? 'Ounces' : ''}.${small ? 'hotCup' : 'cup'}`);
    },
    trayful: ({ n, is }) => {
      const small = is('hardener', 'fast') || n('air') > 27 + 273.15;
      return printed(`pots.potful${is('measures', 'inch') ? 'Ounces' : ''}.${small ? 'hotTray' : 'tray'}`);
    },
    usualPace: ({ word }) => printed(`pots.spreading.${word('work')}.pace`),
    // As many square metres, or metres, as there are paces in it.
    spreading: ({ n, is }) => {
      const goes = is('work', 'fillets') ? n('runs') : n('covers');
      return goes * n('pace');
    },
    volume: ({ n }) => n('batch') / n('epoxyDensity'),
    depth: ({ n, is }) =>
      n('volume') /
      (is('pot', 'tray') ? n('trayLength') * n('trayWidth') : Math.PI * (n('cupWidth') / 2) ** 2),
  },
};
