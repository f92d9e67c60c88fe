/** Screws of the whole skin: along every edge and on every frame, and the boxes to buy. */
import type { Edge, Panel } from '../../../boat';
import { distance2 } from '../../../kernel';
import { isIssue } from '../../../measure';
import { screwsInLine } from '../../../trade/screw-spacing';
import { choice, defineCell, input, step, type ValuesOf } from '../../form/define';
import { fact, tell } from '../../form/fact';
import { fromShop } from '../../form/from-shop';
import { tableOf } from '../../form/row-quantities';
import { screwInputs, usualSpaces } from '../../common/screws/screw-choice';
import { GEOMETRY } from '../../../trade/sources';

const SHARED = 'first and last an end distance in, the rest evenly, no wider apart than asked';

const inputs = {
  skin: choice('Panels', {
    options: 'panels',
    none: 'all of them',
    preset: 'none',
    note: 'one by one where they take screws of other sizes',
  }),
  along: choice('Edge', { options: 'edges', preset: 'chine' }),
  pitch: fromShop('screwPitch', { bound: 'most', slider: true }),
  rows: input('count', 'Rows along edges', {
    from: 'fasten.rows',
    preset: '1',
    min: '1',
    max: '6',
    step: '1',
  }),
  end: input('length', 'First screw from an end', {
    from: 'fasten.endDistance',
    preset: '50 mm',
    min: '1 mm',
    max: '1 m',
    step: '5 mm',
  }),
  frames: choice('Skin to frames', {
    options: [
      { id: 'screwed', label: 'screwed' },
      { id: 'glued', label: 'glued alone' },
    ],
    preset: 'screwed',
    note: 'some builders leave the screws out there: a row of holes across a sheet is a weak line',
  }),
  framePitch: fromShop('framePitch', { bound: 'most', when: 'frames == "screwed"' }),
  soldIn: screwInputs.soldIn,
  spare: input('share', 'Spare', {
    from: 'fasten.spare',
    preset: '10 %',
    min: '0 %',
    max: '100 %',
    step: '5 %',
    note: 'common practice',
  }),
  box: input('count', 'Screws in a box', {
    from: 'fasten.box',
    preset: '100',
    min: '1',
    max: '10000',
    step: '50',
  }),
};

type Asked = ValuesOf<typeof inputs>;

const edge = fact(
  'along the edge from its after end to its forward end',
  GEOMETRY,
  ({ along }: Asked, { hull }) => hull.edge(along),
);

/** Those counted: the one chosen, or all. */
const panels = fact('as chosen', GEOMETRY, ({ skin }: Asked, { hull }) =>
  hull.panels.filter(({ name }) => skin === 'none' || skin === name),
);

/** Lines of screws along an edge: one for each counted panel that lands on it, on both sides of the boat. */
const linesOn = (edge: Edge, counted: readonly Panel[]) =>
  2 * counted.filter(({ inner, outer }) => inner.name === edge.name || outer.name === edge.name).length;

const lines = fact(
  'one for each of these panels that lands on the edge, port and starboard',
  'a panel is screwed along each of its edges',
  (_: Asked, { ask }) => linesOn(ask(edge), ask(panels)),
);

const onEdges = fact(
  `the same along every edge, summed: ${SHARED}`,
  'count',
  ({ end, pitch, rows }: Asked, { hull, ask }) =>
    hull.edges.reduce(
      (sum, one) => sum + screwsInLine(one.length, end, pitch) * rows * linesOn(one, ask(panels)),
      0,
    ),
);

const inFrames = fact(
  `each of these panels across each frame, port and starboard, in one row: ${SHARED}`,
  'count',
  ({ end, framePitch }: Asked, { hull, ask }) => {
    const across = hull.frames.flatMap(({ section }) =>
      // A corner for each edge.
      ask(panels).map(({ inner, outer }) => distance2(section[inner.index]!, section[outer.index]!)),
    );
    // A panel that has come to nothing at a frame has none there.
    return across.reduce(
      (sum, breadth) => sum + (breadth < 1e-6 ? 0 : 2 * screwsInLine(breadth, end, framePitch)),
      0,
    );
  },
);

export const screwCount = defineCell({
  id: 'screwCount',
  stage: 'timber',
  title: 'Screws for the whole skin',
  question: 'How many screws go in along every edge and on the frames, and how many boxes is that?',
  inputs,
  functions: {
    inLine: {
      takes: ['length', 'length', 'length'],
      gives: 'count',
      how: SHARED,
      run: screwsInLine,
    },
  },
  groups: {
    'The rows': ['rows', 'end'],
    'As the shop sells it': ['soldIn', 'spare', 'box'],
  },
  steps: {
    ...usualSpaces,
    length: tell(edge, 'length', 'length of the edge', ({ length }) => length),
    lines: tell(lines, 'count', 'lines of screws along the edge'),
    perLine: step('count', 'inLine(length, end, pitch)', 'screws in one row of a line', GEOMETRY),
    onEdge: step('count', 'perLine * rows * lines', 'screws along this edge', 'count'),
    onEdges: tell(onEdges, 'count', 'screws along all edges'),
    inFrames: tell(inFrames, 'count', 'screws in all frames, where the skin is screwed to them'),
    onFrames: step('count', 'frames == "screwed" ? inFrames : 0', 'screws in all frames', 'as chosen'),
    total: step('count', 'onEdges + onFrames', 'screws in all', 'count'),
    toBuy: step('count', 'ceil(total * (1 + spare) - 0.001)', 'screws to buy', 'count and spare'),
    boxes: step('count', 'ceil(toBuy / box)', 'boxes to buy', 'count'),
  },
  answers: [
    { of: 'total', label: 'screws', from: 'port and starboard, these panels' },
    { of: 'toBuy', label: 'to buy', from: 'spare included' },
    { of: 'boxes', label: 'boxes', from: 'whole ones' },
  ],
  inWords: [
    'Port and starboard together,',
    {
      when: 'frames == "screwed"',
      says: '{onEdges} screws {onEdges?goes:go} in along the edges and {onFrames} on the frames, {total} in all.',
      otherwise: '{total} screws {total?goes:go} in along the edges; the frames are glued alone.',
    },
    'With a spare of {spare} buy {toBuy}. Boxes of {box} to buy: {boxes}.',
  ],
  table: tableOf({
    caption: 'Along each edge, port and starboard',
    over: 'along',
    only: 'lines',
    columns: [
      { of: 'length', label: 'length' },
      { of: 'lines', label: 'lines' },
      { of: 'perLine', label: 'in a row' },
      { of: 'onEdge', label: 'screws' },
    ],
  }),
  warnings: [
    {
      when: 'pitch > usualMost',
      says: 'Wider than usual along edges: with glue, screws stand {usualLeast} to {usualMost} apart.',
      limit: 'common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'Screws of gussets, transom and stem are not in it. Two metals that touch in wet wood eat each other: buy all of one kind, as the maker advises for salt water.',
    'Panels of other thicknesses take screws of other lengths and gauges: choose them one by one before you buy.',
  ],
  sources: [
    { text: 'Lengths of edges and of frames’ edges: the hull', known: 'geometry' },
    { text: 'Spacing with glue, spare', known: 'common practice' },
  ],
  about: ['{along}'],
  chart: (v, on) => {
    const pitches = Array.from({ length: 24 }, (_, i) => 0.035 + 0.005 * i);
    const points = pitches.flatMap((pitch) => {
      const made = on.with({ pitch });
      return isIssue(made) ? [] : [[pitch, made.total] as const];
    });
    return {
      title: 'Against the distance from screw to screw',
      says: `Twice as far apart takes about half as many along the edges: at ${on.say(v.pitch, 'length')} it is ${on.say(v.total, 'count')} in all.`,
      x: { label: 'Along edges, screw to screw', kind: 'length', from: 0.03, to: Math.max(0.155, v.pitch) },
      y: { label: 'Screws in all', kind: 'count', from: 0 },
      lines: [{ name: 'screws', points }],
      points: [{ x: v.pitch, y: v.total, label: 'as set' }],
    };
  },
});
