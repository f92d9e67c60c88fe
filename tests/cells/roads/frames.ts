/** Second roads to steps of the cells on frames and their setting up. */
import type { Hull } from '../../../src/boat';
import { cross, derivativeAt, dot, lengthTo, pointAt, unit, type Vec3 } from '../../../src/kernel';
import { DEGREE, INCH, MM, type Roads, type Setting } from './road';

const middleOf = (...three: readonly number[]) => three.toSorted((a, b) => a - b)[1]!;
const least = (...all: readonly number[]) => all.toSorted((a, b) => a - b)[0]!;
/** The same number however its sign stands. */
const either =
  (key: string) =>
  ({ n }: Setting) =>
    Math.sqrt(n(key) ** 2);

const panelAt = ({ hull, word }: Setting) => hull.panel(word('member'));
const frameAt = ({ hull, word }: Setting) => hull.station(word('frame'));
const skinAt = ({ n, is }: Setting) =>
  n(is('member', 'bottom') ? 'bottomThickness' : is('member', 'side') ? 'sideThickness' : 'bilgeThickness');
const everyMember = ({ hull, rerun }: Setting) => hull.panels.map(({ name }) => rerun({ member: name }));
const everyStation = ({ hull, rerun }: Setting) => hull.stations.map(({ name }) => rerun({ station: name }));
const sum = (all: readonly number[]) => all.reduce((total, each) => total + each, 0);

/** Which way a member runs on the frame's face, from its inner corner. */
const runOf = ({ n }: Setting) =>
  Math.atan2(n('headHeight') - n('footHeight'), n('headHalfBreadth') - n('footHalfBreadth'));

/** A timber of a width laid on a panel along an edge: how long the cut across it is in the plane of the frame. */
function cutAcross(hull: Hull, at: number, edge: string, panel: string, width: number): number {
  const normal = hull.stations[at]!.normal(edge, panel);
  const square = unit(cross(hull.edge(edge).directions[at]!, normal));
  const inPlane: Vec3 = unit(cross([1, 0, 0], normal));
  return width / Math.abs(dot(square, inPlane));
}

/** Both sheer marks, both ends: what a step is on the aftmost station with breadth and on the foremost of all. */
const sheerCorner = (setting: Setting) => {
  const all = everyStation(setting);
  return { aft: all.find(({ n }) => n('sheerOut') > 1e-9)!, fore: all.at(-1)! };
};

/** At a mark of the log: up and outboard, square to it, and the skins' normals. */
function seenAlong({ hull, n, is, word }: Setting) {
  const edge = hull.edge(word('chine'));
  const along = Math.min(edge.length, Math.max(0, is('end', 'aft') ? n('at') : edge.length - n('at')));
  let [from, to] = [edge.batten.knots[0]!, edge.batten.knots.at(-1)!];
  for (let i = 0; i < 60; i += 1) {
    const middle = (from + to) / 2;
    if (lengthTo(edge.batten, middle) < along) from = middle;
    else to = middle;
  }
  if (along >= edge.length) from = edge.batten.knots.at(-1)!;
  const forward = unit(derivativeAt(edge.batten, from, 1));
  const outboard = unit(cross([0, 0, 1], forward));
  const square = (normal: Vec3) => unit(cross(cross(forward, normal), forward));
  const [below, above] = [hull.panels[edge.index - 1]!, hull.panels[edge.index]!].map((panel) =>
    square(panel.normalOn(edge, from)),
  ) as [Vec3, Vec3];
  return { up: cross(forward, outboard), outboard, below, above };
}

/** The line in which a side that leans out and a raked end meet: square to what stands square on both; back, out, up. */
function cornerLine({ n }: Setting): Vec3 {
  const [lean, rake, turn] = [n('lean'), n('rake'), n('turn')];
  const side: Vec3 = [-Math.sin(turn) * Math.cos(lean), Math.cos(turn) * Math.cos(lean), -Math.sin(lean)];
  const end: Vec3 = [Math.cos(rake), 0, -Math.sin(rake)];
  const line = cross(end, side);
  return line[2] < 0 ? [-line[0], -line[1], -line[2]] : line;
}

export const frames: Roads = {
  framePattern: {
    leans: ({ hull, word }) => {
      const { index } = hull.station(word('frame'));
      const forward = hull.offsets.points.map((line) => line[index]![0]!);
      return Math.max(...forward) - Math.min(...forward);
    },
    // By the heights a millimetre of batten before and after.
    keelSlope: ({ hull, word }) => {
      const { index } = hull.station(word('frame'));
      const { batten } = hull.edges[0]!;
      const [back, on] = [-0.001, 0.001].map((by) => pointAt(batten, batten.knots[index]! + by)) as [
        Vec3,
        Vec3,
      ];
      return [Math.atan((on[2] - back[2]) / (on[0] - back[0])), 1e-4];
    },
    skinThickness: (of) => (of.hull.offsets.offsetsTo === 'inside of skin' ? 0 : skinAt(of)),
    // The skin's normal leans aft where the hull widens forward; a frame that leans is another matter.
    headBevel: (of) => {
      if (of.n('leans') > 1e-6) return null;
      const panel = panelAt(of);
      return -Math.asin(frameAt(of).normal(panel.outer.name, panel.name)[0]);
    },
    // A mitre halves the turn from one member to the next.
    headCut: (of) => {
      const { panels } = of.hull;
      const next = panels[panels.indexOf(panelAt(of)) + 1];
      if (!next || !of.is('joint', 'mitre')) return null;
      return (runOf(of.rerun({ member: next.name })) - runOf(of)) / 2;
    },
    standsOff: (of) => frameAt(of).crown(of.word('member')),
    proud: (of) => {
      const opens = of.is('stands', 'forward') ? 1 : -1;
      const out = everyMember(of).flatMap(({ n }) =>
        [n('footBevel'), n('headBevel')].map((bevel) => opens * bevel),
      );
      return of.n('siding') * Math.tan(Math.max(0, ...out));
    },
    markHeight: ({ n }) => middleOf(n('levelLine'), n('keelHeight'), n('sheerHeight')),
    slotCorner: ({ n }) => least(n('holeDiameter') / 2, n('slotWidth') / 2, n('slotDepth')),
    logAlong: ({ n, hull, word }) => {
      if (hull.panels.length !== 2) return hull.panels.length < 2 ? 0 : null;
      const side = hull.panels.at(-1)!;
      return cutAcross(hull, hull.station(word('frame')).index, side.inner.name, side.name, n('logWidth'));
    },
    clampAlong: ({ n, hull, word }) => {
      const side = hull.panels.at(-1)!;
      return cutAcross(hull, hull.station(word('frame')).index, side.outer.name, side.name, n('clampWidth'));
    },
    jointThickness: ({ n }) => n('gussetThickness') + n('siding') + n('gussetThickness'),
  },
  bevels: {
    chineInProfile: ({ n }) => Math.atan2(n('chineProfile'), 1),
    sheerInPlan: ({ n }) => Math.atan2(n('sheerPlan'), 1),
    sheerInProfile: ({ n }) => Math.atan2(n('sheerProfile'), 1),
    deadriseThere: ({ n }) => n('deadrise'),
    sheerGauge: ({ n }) => Math.acos(Math.sin(Math.abs(n('sheerBevel')))),
    bottomGauge: ({ n }) => Math.acos(Math.sin(Math.abs(n('bottomBevel')))),
    bottomRemoval: ({ n }) => Math.abs(n('siding') / Math.tan(Math.PI / 2 - n('bottomBevel'))),
    // A frame forward of its line meets skin that closes in, one aft of it skin that opens out: wood is then added.
    proudBottom: ({ n }) =>
      n('forwardOnLine') > 0 === n('bottomBevel') < 0 && n('bottomBevel') !== 0
        ? Math.abs(n('siding') * Math.tan(n('bottomBevel')))
        : 0,
    proud: ({ n }) =>
      ['proudSheer', ...(n('hasChine') > 0 ? ['proudChine', 'proudBottom'] : [])]
        .map(n)
        .toSorted((a, b) => b - a)[0]!,
  },
  rollingBevel: {
    // What is seen of the side and of the bottom by who looks along the log: what the batten and the panels say there.
    hullFlare: (of) => {
      const { up, above } = seenAlong(of);
      return Math.asin(-dot(above, up));
    },
    hullDeadrise: (of) => {
      const { outboard, below } = seenAlong(of);
      return Math.asin(dot(below, outboard));
    },
    lean: ({ n, is }) => (is('lies', 'upright') ? 0 : is('lies', 'side') ? n('flare') : 0 - n('deadrise')),
    deep: ({ n, is }) => n(is('lies', 'bottom') ? 'logWidth' : 'logThickness'),
    tall: ({ n, is }) => n(is('lies', 'bottom') ? 'logThickness' : 'logWidth'),
    onLog: ({ n }) => Number(n('logLength') + 1e-4 - n('at') >= 0),
    reach: ({ n }) => n('interval') / 0.01,
  },
  stemBevel: {
    height: ({ n }) => n('up'),
    sidingFor: ({ n }) => n('siding') - n('faceLeft'),
  },
  compoundCut: {
    edgeBack: (of) => cornerLine(of)[0],
    edgeOut: (of) => cornerLine(of)[1],
    edgeUp: (of) => cornerLine(of)[2],
    sideOff: ({ n }) => n('sideThickness') * Math.tan(least(n('sawTilt'), (85 / 180) * Math.PI)),
  },
  limber: {
    innerHeight: ({ n }) => Math.max(0, n('cutDepth') - (Math.tan(n('deadrise')) * n('keelsonWidth')) / 2),
    openWidth: ({ n }) =>
      n('outerHeight') > 0 ? n('limberWidth') : n('innerHeight') / Math.tan(n('deadrise')),
    // The time of falling water, the flow going as the root of its depth: twice; four thirds where the puddle narrows with
    // it; six fifths where it narrows both ways.
    slackening: ({ n, is }) => {
      const narrows = (is('lies', 'level') ? 0 : 1) + (n('deadrise') < DEGREE ? 0 : 1);
      return (narrows + 1) / (narrows + 0.5);
    },
    depthTaken: ({ n }) => n('cutDepth') / n('depthThere'),
    climb: ({ n }) => n('keelsonThickness') / Math.cos(Math.atan(n('keelSlope'))) - n('keelsonThickness'),
  },
  notch: {
    sideFlare: ({ n, is }) => n(is('timber', 'chineLog') ? 'flare' : 'sheerFlare'),
    plan: ({ n, is }) => n(is('timber', 'chineLog') ? 'chinePlan' : 'sheerPlan'),
    profile: ({ n, is }) => n(is('timber', 'chineLog') ? 'chineProfile' : 'sheerProfile'),
    bed: ({ n }) => (n('thickness') > n('proud') ? n('thickness') - n('proud') : 0),
    planedOff: ({ n }) => Math.abs(n('siding') * Math.tan(n('bevel'))),
    depthTaken: ({ n }) => n('nearDepth') / Math.max(n('moulded') - n('planedOff'), MM),
    // The run of the line over the run of the frame's side.
    climb: ({ n }) =>
      dot([1, n('plan'), n('profile')], [0, Math.sin(n('sideFlare')), Math.cos(n('sideFlare'))]),
    skew: ({ n }) => Math.atan2(n('climb'), 1 / Math.cos(n('bevel'))),
    sawnOut: ({ n }) => least(n('kerf') * n('passes'), n('along')),
  },
  strongback: {
    stands: ({ hull, is, word }) => {
      const { index } = hull.station(word('station'));
      const last = hull.stations.length - 1;
      if (index > 0 && index < last)
        return is('side', 'custom') ? (index < hull.widest.index ? 'aft' : 'forward') : word('side');
      // An end stands inboard of its line where that is its outer face: a stem always, a transom as it is drawn.
      const inboard = is('kindOfStation', 'stem') || is('face', 'outer');
      return (index === 0) === inboard ? 'forward' : 'aft';
    },
    fromAft: ({ n }) => n('running') - n('overhang'),
    footHeight: ({ n }) => n('levelLine') - n('footAboveJig'),
    kindOfStation: ({ hull, word }) => {
      const { index } = hull.station(word('station'));
      if (index > 0 && index < hull.stations.length - 1) return 'frame';
      return hull.edges.some(({ points }) => points[index]![1] > 0) ? 'transom' : 'stem';
    },
    highest: (of) =>
      Math.max(
        ...everyStation(of).map(
          ({ n, is }) => n('sheerHeight') + (is('kindOfStation', 'stem') ? n('stemHead') : 0),
        ),
      ),
    usualLevel: ({ n }) => n('highest') + n('clearance'),
    freeOverJig: ({ n }) => n('clearance') - (n('usualLevel') - n('levelLine')),
    footRunning: ({ n }) => n('overhang') + n('fromAft') + n('footAhead'),
    hullSpan: (of) => {
      const all = everyStation(of).flatMap(({ n }) => [n('fromAft'), n('fromAft') + n('footAhead')]);
      return Math.max(...all) - Math.min(...all);
    },
    markAboveJig: ({ n }) => n('leg') + n('sheerHeight') - n('markLine'),
    underRails: ({ n }) => (n('jigTop') > n('railDepth') ? n('jigTop') - n('railDepth') : 0),
    topHeight: (of) => of.n('jigTop') + Math.max(...everyStation(of).map(({ n }) => n('footAboveJig'))),
    stemRise: (of) => {
      const { aft, fore } = sheerCorner(of);
      return fore.n('sheerHeight') - aft.n('sheerHeight');
    },
    spallLength: ({ n }) => Math.max(2 * n('sheerOut'), n('gauge')) + n('spallBeyond') + n('spallBeyond'),
    spallsLength: (of) => sum(everyStation(of).map(({ n }) => n('spallLength'))),
    // At 45 degrees a prop is the long side of a square's half.
    propsLength: (of) =>
      sum(everyStation(of).map(({ n }) => Math.max(0, n('footAboveJig')) / Math.sin(Math.PI / 4))),
  },
  squareCheck: {
    difference: ({ n }) =>
      (n('diagonalAC') ** 2 - n('diagonalBD') ** 2) / (n('diagonalAC') + n('diagonalBD')),
    slideBy: either('slide'),
    reach: ({ n }) => Math.hypot(n('diagonalAC'), n('diagonalBD')) * Math.SQRT1_2,
  },
  transomCut: {
    // Short, long, extra long and longest shafts: 15, 20, 25 and 30 in, by makers' guides.
    classHeight: ({ word }) =>
      (15 + 5 * ['short', 'long', 'extraLong', 'longest'].indexOf(word('shaft'))) * INCH,
    raise: ({ n }) => (n('alongFace') > n('topUp') ? n('alongFace') - n('topUp') : 0),
    outOfPlumb: either('motorTilt'),
    clampThickness: ({ n }) => n('thickness') + n('pads'),
  },
  settingUp: {
    // The nail's two distances, squared, differ by twice the breadth times what it stands off the middle.
    nailToPort: ({ n }) => (n('starboardLength') ** 2 - n('portLength') ** 2) / (4 * n('out')),
    nailOff: ({ n }) => {
      const plumb = (n('portHeight') + n('starboardHeight')) / 2;
      return Math.sqrt(n('portLength') ** 2 - (n('out') - n('nailToPort')) ** 2 - plumb ** 2);
    },
    portHigh: ({ n }) => n('portHeight') - n('starboardHeight'),
    tooHigh: ({ n }) => (n('portHeight') - n('height')) / 2 + (n('starboardHeight') - n('height')) / 2,
    swingBy: either('portAhead'),
    alongBy: either('centreAhead'),
    offBy: either('offString'),
    leanBy: either('footAhead'),
    highBy: either('portHigh'),
    liftBy: either('tooHigh'),
  },
  stemCheck: {
    difference: ({ n }) =>
      (n('starboardLength') ** 2 - n('portLength') ** 2) / (n('starboardLength') + n('portLength')),
    trueLength: ({ n }) => Math.hypot(n('ahead'), n('cornerOut'), n('rise')),
    differBy: either('difference'),
    offBy: either('off'),
    skewBy: either('skew'),
    tooFarBy: either('tooFar'),
  },
};
