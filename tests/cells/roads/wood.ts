/** Second roads to steps of the cells on long timbers: bent, laminated, joined, bought. */
import { laidBoard } from '../../../src/boat/joinery/laid-board';
import { curvatureAt } from '../../../src/kernel';
import { shop } from '../../checks/printed/shop';
import { type Roads, type Setting } from './road';

const printed = (name: string): number => {
  const value = shop[name];
  if (value === undefined) throw new Error(`nothing is printed of ${name}`);
  return value;
};

/** Clamps on a bend: closer where it is tight. */
const usualPitch = ({ n, is }: Setting, layer: string) =>
  printed(
    `adhesives.clampPitch${is('measures', 'inch') ? 'Inch' : ''}.${n('radius') / n(layer) < n('tightness') ? 'tight' : 'straight'}`,
  );

/** One over the chance in round numbers: to one figure, to two from a hundred on, at most a hundred thousand. */
const isRound = (count: number, chance: number): boolean =>
  count === 100_000
    ? chance <= 1 / 95_000
    : Math.abs(count * chance - 1) <= 0.06 || Math.abs(count - 1 / chance) <= 0.5;
const boardsFor =
  (key: string, chance: string) =>
  ({ n }: Setting) =>
    isRound(n(key), n(chance)) ? n(key) : 1 / n(chance);

/** Price by volume of one board, as it is quoted. */
const priceOf =
  (
    section: (of: Setting) => number,
    [each, long, byLength, byVolume]: readonly [string, string, string, string],
  ) =>
  (of: Setting) => {
    const { n, is } = of;
    if (is('quoted', 'each') && n(long) > 0) return n(each) / section(of) / n(long);
    return is('quoted', 'length') ? n(byLength) / section(of) : n(byVolume);
  };

/** The tightest place of an edge, by looking closely at all of it. */
function tightestOf({ hull, word }: Setting): number {
  const { batten } = hull.edge(word('along'));
  const [first, last] = [batten.knots[0]!, batten.knots.at(-1)!];
  const bends = Array.from({ length: 20_001 }, (_, i) =>
    curvatureAt(batten, first + ((last - first) * i) / 20_000),
  );
  return Math.max(...bends.map(({ magnitude }) => magnitude));
}

/** Joints to port, and of both sides: one fewer than the pieces of each. */
const portJoints = ({ n }: Setting) => n('piecesPort') - 1;
const allJoints = (of: Setting) => portJoints(of) + Math.max(0, of.n('piecesStarboard') - 1);
const hasJoint = (of: Setting) => of.n('joint') <= allJoints(of);

/** Every joint of both sides, as the cell shows it when it is looked at; null where they are very many. */
function jointsOf(of: Setting): readonly Setting[] | null {
  const count = allJoints(of);
  return count > 12 ? null : Array.from({ length: count }, (_, i) => of.rerun({ joint: i + 1 }));
}
const ofJoints = (work: (joints: readonly Setting[], setting: Setting) => number) => (setting: Setting) => {
  const joints = jointsOf(setting);
  return joints ? work(joints, setting) : null;
};
const sectionPriced = ({ n }: Setting) => n('boardWidth') * n('boardThickness');
/** Which section the piece in hand is of, by its name. */
const sectionOfPiece = (of: Setting, size: 'Thickness' | 'Width') => {
  const name = of.word('name');
  if (name === 'none') return 0;
  const found = (
    [
      ['keelson', 'keelson'],
      ['chine log', 'log'],
      ['sheer clamp', 'clamp'],
      ['rub rail', 'rail'],
    ] as const
  ).find(([said]) => name.toLowerCase().includes(said));
  return of.n(`${found?.[1] ?? 'other'}${size}`);
};
const cuts = ({ n, rerun }: Setting) =>
  n('pieces') > 40 ? null : Array.from({ length: n('pieces') }, (_, i) => rerun({ piece: i + 1 }));

/** A square in another value: by its constant, its first and its second power. */
const square =
  (key: string, [constant, first, second]: readonly [number, number, number]) =>
  ({ n }: Setting) =>
    constant + n(key) * (first + n(key) * second);

/** Thickness of each layer. */
const layersOf = ({ n, is }: Setting) =>
  is('layup', 'alike')
    ? Array.from({ length: n('plies') }, () => n('thickness') / n('plies'))
    : ['layer1', 'layer2', 'layer3', 'layer4'].map(n);
const momentOf = ({ n }: Setting, thick: number) => (n('width') / 12) * thick ** 3;

export const wood: Roads = {
  bend: {
    // Between green, at the fibre point, and 12 per cent.
    dried: ({ n }) => (Math.min(n('moisture'), n('fibrePoint')) - 0.12) / (0.12 - n('fibrePoint')),
    moistStiffness: ({ n }) => Math.exp(Math.log(n('modulusGain')) * n('dried')),
    moistStrength: ({ n }) => Math.exp(Math.log(n('ruptureGain')) * n('dried')),
    secondMoment: ({ n }) => n('width') * n('thickness') * (n('thickness') / Math.sqrt(12)) ** 2,
    // A board as much thicker as it may be is bent to just that share.
    chanceAllowed: ({ n, rerun }) => {
      const times = n('allowed') / n('share');
      return times > 0.1 && times < 10 ? rerun({ thickness: n('thickness') * times }).n('chance') : null;
    },
    oneIn: boardsFor('oneIn', 'chance'),
    curveOff: ({ n }) => {
      const turn = Math.min(n('loose') / n('radius'), 1.5);
      return 2 * n('radius') * Math.sin(turn / 2) ** 2;
    },
    // E. C. Peck, Agriculture Handbook 125 (1957), from memory: the outer face stretches by 1 to 2 per cent.
    steamedRadius: ({ n }) => (100 / 3) * n('thickness'),
  },
  holding: {
    stiffness: ({ n }) => n('edgeStiffness') * (n('thickness') / n('width')) ** 2,
    pull: ({ hull, n, is, word }) => {
      const pushes = laidBoard(hull, word('along')).pushes(is('ends', 'fast') ? 'fast' : 'free');
      return n('stiffness') * pushes[hull.station(word('station')).index]!.flat;
    },
    edgeStiffness: ({ n }) => (n('modulus') * (n('thickness') * n('width')) * n('width') ** 2) / 12,
    spare: ({ hull, word }) => {
      const off = laidBoard(hull, word('along')).seen.onFace.map(([, y]) => y);
      return Math.max(...off) - Math.min(...off);
    },
    wideBoard: ({ n }) => n('spare') + n('width'),
    cornerStrain: ({ n, hull, word }) =>
      Math.max(
        ...laidBoard(hull, word('along')).places.map(
          ({ bend }) =>
            Math.abs((bend.flat * n('thickness')) / 2) + Math.abs((bend.edgewise * n('width')) / 2),
        ),
      ),
    cornerShare: ({ n }) => n('cornerStrain') / (n('rupture') / n('modulus')),
    wholeBend: (of) => [tightestOf(of), 1e-4],
    wholeShare: ({ n }) => ((n('thickness') / 2) * n('wholeBend') * n('modulus')) / n('rupture'),
    shareHere: ({ n }) => ((n('thickness') / 2) * n('bendHere') * n('modulus')) / n('rupture'),
  },
  laminate: {
    evenPly: ({ n }) => n('thickness') / n('plies'),
    whole: (of) => layersOf(of).reduce((total, layer) => total + layer, 0),
    looseMoment: (of) => layersOf(of).reduce((total, layer) => total + momentOf(of, layer), 0),
    gluedMoment: (of) => momentOf(of, of.n('whole')),
    besideLayers: ({ word }) =>
      ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'].indexOf(word('beside')) + 1,
    besidePly: ({ n }) => n('whole') / n('besideLayers'),
    // Each layer is sawn and planed; a board in one is bought as it is.
    besideBought: ({ n }) =>
      n('length') *
      n('width') *
      (n('besideLayers') > 1 ? n('besideLayers') * (n('besidePly') + n('kerf') + n('planing')) : n('whole')),
    solidStress: ({ n }) => n('solidShare') * n('rupture'),
    thickestCustom: ({ n }) => n('radius') / n('layerRatio'),
    oneIn: boardsFor('oneIn', 'chanceAny'),
    solidOneIn: boardsFor('solidOneIn', 'solidChance'),
    usualLine: ({ word }) => printed(`glue-lines.glueLines.${word('glue')}`),
    usualSpread: ({ n, is, word }) =>
      is('glue', 'epoxy', 'polyurethane')
        ? n('line') * n('density')
        : (printed(`adhesives.adhesives.${word('glue')}.leastSpread`) +
            printed(`adhesives.adhesives.${word('glue')}.mostSpread`)) /
          2,
    usualPressure: ({ is, word }) => {
      const least = printed(`adhesives.adhesives.${word('glue')}.leastPressure`);
      const most = printed(`adhesives.adhesives.${word('glue')}.mostPressure`);
      return is('glue', 'epoxy', 'polyurethane') ? (least + most) / 2 : least;
    },
    laid: ({ n, is }) =>
      n('glueArea') * (is('glue', 'epoxy', 'polyurethane') ? n('line') : n('spread') / n('density')),
    total: ({ n }) => n('laid') + n('waste') * n('laid'),
    pasteYield: ({ n }) =>
      (1 / n('epoxyDensity') + n('fillerShare') / n('fillerDensity')) * n('epoxyDensity'),
    thickened: ({ n, is }) => (is('glue', 'epoxy') ? n('total') / n('pasteYield') : 0),
    toBuy: ({ n }) => n('volume'),
    usualPitch: (of) => usualPitch(of, 'ply'),
    boardSection: sectionPriced,
    paid: priceOf(sectionPriced, ['each', 'boardSold', 'perLength', 'price']),
    glueCost: ({ n }) => n('gluePrice') * n('glueMass'),
    solidBought: ({ n }) => n('length') * n('width') * n('whole'),
    besidePitch: (of) => (of.n('pitch') === of.n('usualPitch') ? usualPitch(of, 'besidePly') : of.n('pitch')),
  },
  scarf: {
    usualBoards: ({ n }) => n('more') + n('boardsNeeded'),
  },
  joints: {
    // The share of the hardest bend is the tightest radius over the radius here.
    radius: ({ n }) => (n('share') > 0 && n('radius') < 999 ? n('tightest') / n('share') : null),
    apart: (of) => {
      const joints = jointsOf(of);
      if (!joints || !hasJoint(of)) return null;
      const toPort = (each: Setting) => each.n('joint') <= portJoints(of);
      const others = joints.filter((each) => toPort(each) !== toPort(of));
      return Math.min(of.n('length'), ...others.map(({ n }) => Math.abs(n('at') - of.n('at'))));
    },
    // Boards laid one after another, each a taper back on the last, until the end is reached.
    mostPieces: ({ n }) => {
      const gain = n('boardLength') - n('taper');
      if (gain <= 0) return 1 + n('more');
      let pieces = 1;
      for (let reached = n('boardLength') + 0.001 * gain; reached < n('length') + n('trim'); reached += gain)
        pieces += 1;
      return pieces + n('more');
    },
    piecesMost: ({ n }) => [n('piecesPort'), n('piecesStarboard')].toSorted((a, b) => b - a)[0]!,
    inHardBend: ofJoints((all) => all.filter(({ word }) => word('verdict').includes('hard bend')).length),
    onFrames: ofJoints((all) => all.filter(({ word }) => /frame/.test(word('verdict'))).length),
    worstShare: ofJoints((all) => Math.max(0, ...all.map(({ n }) => n('share')))),
    leastClear: ofJoints((all, { n }) => Math.min(n('length'), ...all.map((joint) => joint.n('clear')))),
    tightest: (of) => [Math.min(1000, 1 / tightestOf(of)), 1e-4],
    bendRatio: ({ n }) => n('tightest') / n('thickness'),
    verdict: (of) => (hasJoint(of) ? null : 'no such joint'),
  },
  boards: {
    // Nothing has been searched for: only a plan without waste is proved.
    proved: ({ n }) => {
      // Joints cost the same in both; where the wood next to them is lost in rounding nothing can be told.
      if (n('leastCost') - n('joints') * n('jointPrice') < 1e-6 * n('leastCost')) return null;
      return n('cost') <= n('leastCost') * (1 + 1e-9) ? 'yes' : 'not yet';
    },
    // The list goes board by board: each piece on the last one's board or the next.
    board: ({ n, rerun }) => {
      const at = n('piece');
      if (at > n('pieces')) return 0;
      if (at === 1) return 1;
      if (at === n('pieces')) return n('boards');
      return (
        [0, 1]
          .map((more) => rerun({ piece: at - 1 }).n('board') + more)
          .find((board) => board === n('board')) ?? 0
      );
    },
    boardSection: sectionPriced,
    paidB: priceOf(sectionPriced, ['eachB', 'stockB', 'perLengthB', 'priceB']),
    paidC: priceOf(sectionPriced, ['eachC', 'stockC', 'perLengthC', 'priceC']),
    paidD: priceOf(sectionPriced, ['eachD', 'stockD', 'perLengthD', 'priceD']),
    // Nothing has been searched for here: the plan by the rule of the shop is the one that is bought.
    shopCost: ({ n }) => n('cost'),
    leastCost: ({ n }) => {
      const prices = ['A', 'B', 'C', 'D']
        .filter((board) => n(`stock${board}`) > 0)
        .map((board) => n(`paid${board}`));
      // Pieces are told to a tenth of a millimetre.
      return [n('needed') * Math.min(...prices) + n('joints') * n('jointPrice'), 1e-6];
    },
    needed: (of) =>
      cuts(of)?.reduce(
        (total, { n }) => total + n('length') * n('sectionThickness') * n('sectionWidth'),
        0,
      ) ?? null,
    wasted: ({ n }) => (n('bought') - n('needed')) / n('bought'),
    // By its place from aft: `2 of 3` has a neighbour either way.
    scarfed: ({ word }) => {
      const [, place = '1', of = '1'] = /(\d+) of (\d+)$/.exec(word('name')) ?? [];
      if (place === '1') return of === '1' ? 'neither end' : 'its fore end';
      return place === of ? 'its after end' : 'both ends';
    },
    sectionThickness: (of) => sectionOfPiece(of, 'Thickness'),
    sectionWidth: (of) => sectionOfPiece(of, 'Width'),
  },
  moisture: {
    // W. T. Simpson, FPL-RN-0268 (1998), as the Wood Handbook, eq. 4-5, prints it for degrees Celsius.
    celsius: ({ n }) => n('air') - 273.15,
    siteMass: square('celsius', [349, 1.29, 0.0135]),
    dissolved: square('celsius', [0.805, 7.36e-4, -2.73e-6]),
    firstBound: square('celsius', [6.27, -9.38e-3, -3.03e-4]),
    secondBound: square('celsius', [1.91, 4.07e-2, -2.93e-4]),
    wetness: ({ n }) => n('humidity') * n('dissolved'),
    // Above fibre saturation wood does not move.
    difference: ({ n }) => Math.min(0.3, n('later')) - Math.min(0.3, n('now')),
    inPlane: ({ n }) => n('difference') / 50,
    // Wood Handbook, ch. 4, from memory: volume shrinks in step with what is lost below 30 per cent, 26.5 Gb in all.
    gravityNow: ({ n }) => {
      const lost = n('now') < 0.3 ? (0.3 - n('now')) / 0.3 : 0;
      return 1 / (1 / n('gravityGreen') - 0.265 * lost);
    },
    widthLater: ({ n }) => n('width') + n('change'),
  },
};
