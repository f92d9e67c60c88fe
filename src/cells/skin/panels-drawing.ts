/** The panel along the straight edge of a sheet, and below it what the plywood says to its bends, both ways of the grain. */
import { attempt } from '../../boat';
import type { FlatPanel, FrameMark } from '../../boat/hull/flat-panel';
import type { PanelBend } from '../../boat/hull/panel-bends';
import { type Judged, type Verdict, worstOf } from '../../boat/joinery/plywood-bends';
import type { Vec2 } from '../../kernel';
import {
  arrow,
  dim,
  type Drawing,
  drawing,
  type Fill,
  hatch,
  label,
  line,
  mark,
  mm,
  note,
  type Point,
  type Shape,
} from '../../drawing';
import { isIssue } from '../../measure';
import type { OnHand } from '../form/define';
import { bends, flat, hardestOf, judged, marks } from './panels-facts';
import { openingLine } from './panels-opening';
import type { PanelsValues } from './panels-steps';

type Saying = Pick<OnHand, 'hull' | 'say' | 'ask'>;

const TITLE = 'The panel laid flat, outside up, port side';

/** How each verdict is shown; nothing is drawn over wood that no table speaks of. */
const FILLS: Readonly<Record<Verdict, Fill>> = {
  bends: 'ply',
  marginal: 'cedar',
  refuses: 'glue',
  untabled: 'void',
};

const paper = ([x, y]: Vec2): Point => [mm(x), mm(y)];

/** Number or name alone: the frame's lines stand close. */
const shortName = (name: string) => name.replace(/^(frame|station)\s+/i, '');

export function drawPanels(v: PanelsValues, on: Saying): Drawing {
  const { hull, ask, say } = on;
  const made = attempt(() => {
    if (!hull) throw new Error('There is no hull to lay flat.');
    return { laid: ask(flat), frames: ask(marks), judged: ask(judged), places: ask(bends) };
  });
  if (isIssue(made)) return drawing({ title: TITLE, says: made.issue, shapes: [note(made.issue)] });
  const { laid, frames } = made;
  const gap = mm(laid.length) / 11;
  // Room for a line of text between one panel and the next.
  const step = mm(laid.width) + 1.5 * gap;
  const maps = [
    { name: `Grain ${v.grain}`, of: made.judged.as, down: 1 },
    { name: `Grain ${v.grain === 'along' ? 'across' : 'along'}`, of: made.judged.other, down: 2 },
  ];
  const length = (metres: number) => say(metres, 'length');
  return drawing({
    title: TITLE,
    says: `${length(v.length)} by ${length(v.width)}; bent to ${length(v.bendsTo)} where it takes most, ${length(v.hardestAt)} along; twisted ${say(v.twist, 'angle')} at most.`,
    shapes: [
      panelShapes(v, laid, frames, length, gap),
      maps.map(({ name, of, down }) => mapShapes(made.places, of, name, -down * step, gap)),
      note(`Aft to the left. Below: the ${laid.panel.inner.label}. Turned over it is the starboard panel.`),
      note(
        'Hatched the other way: marginal. Solid: does not bend. Bare: no published radius. Ring: where it takes most.',
      ),
    ],
  });
}

function panelShapes(
  v: PanelsValues,
  laid: FlatPanel,
  frames: readonly FrameMark[],
  length: (metres: number) => string,
  gap: number,
): Shape[] {
  const [long, high] = [mm(laid.length), mm(laid.width)];
  const hole = openingLine(v);
  const part = laid.panel.name;
  const half = Math.min(long / 14, v.grain === 'across' ? high / 4 : long / 14);
  const middle = grainAt(laid, frames);
  const [dx, dy] = v.grain === 'along' ? [half, 0] : [0, half];
  return [
    hatch(laid.outline.map(paper), 'ply', { part, holes: hole.length > 0 ? [hole.map(paper)] : [] }),
    line(
      [
        [-gap / 4, 0],
        [long + gap / 4, 0],
      ],
      { pen: 'centre' },
    ),
    ...frames.map(({ line: across, station }) =>
      line(across.map(paper), { pen: 'thin', part: station.name }),
    ),
    ...frames.map(({ outer, station }) => label(paper(outer.at), shortName(station.label), { toward: 'n' })),
    arrow([middle[0] - dx, middle[1] - dy], [middle[0] + dx, middle[1] + dy]),
    arrow([middle[0] + dx, middle[1] + dy], [middle[0] - dx, middle[1] - dy]),
    dim([0, high], [long, high], length(v.length), { run: 'horizontal', side: 'above' }),
    dim([long, 0], [long, high], length(v.width), { run: 'vertical', side: 'right' }),
  ];
}

/** Where the grain is shown: in the widest bay near the middle, half up the panel. */
function grainAt(laid: FlatPanel, frames: readonly FrameMark[]): Point {
  const middle = laid.length / 2;
  const centres = frames
    .slice(1)
    .map(({ line: after }, i) => centreOf([...frames[i]!.line, ...after])) // the list shifted by one
    .toSorted((a, b) => Math.abs(a[0] - middle) - Math.abs(b[0] - middle));
  return paper(centres[0] ?? [middle, laid.width / 2]);
}

const centreOf = (points: readonly Vec2[]): Vec2 => [
  points.reduce((sum, [x]) => sum + x, 0) / points.length,
  points.reduce((sum, [, y]) => sum + y, 0) / points.length,
];

/** Runs of rulings of which the same is said, as areas between the two edges. */
function mapShapes(
  rulings: readonly PanelBend[],
  of: readonly Judged[],
  name: string,
  up: number,
  gap: number,
): Shape[] {
  const at = ([x, y]: Vec2): Point => [mm(x), mm(y) + up];
  const ends = [...rulings.map(({ from }) => from), ...rulings.map(({ to }) => to)];
  const top = Math.max(...ends.map(([, y]) => mm(y))) + up;
  const middle = (Math.max(...ends.map(([x]) => mm(x))) + Math.min(...ends.map(([x]) => mm(x)))) / 2;
  const placed = rulings.map((ruling, k) => ({ ...of[k]!, place: ruling })); // judged one a ruling
  const worst = hardestOf(placed);
  return [
    runsOf(of).map(({ from, to, verdict }) =>
      hatch(
        [
          ...rulings.slice(from, to + 1).map((ruling) => at(ruling.from)),
          ...rulings
            .slice(from, to + 1)
            .toReversed()
            .map((ruling) => at(ruling.to)),
        ],
        FILLS[verdict],
        { pen: 'thin', falling: verdict === 'marginal' },
      ),
    ),
    note(`${name}: ${summary(of)}`, { at: [middle, top + 0.6 * gap] }),
    // Its radius stands in the words: a text with a leader would not have room beside a short panel on a phone.
    worst.place.bend > 0 ? mark(at(centreOf([worst.place.from, worst.place.to])), { form: 'ring' }) : [],
  ].flat(2);
}

const summary = (of: readonly Judged[]): string => {
  const verdict = worstOf(of);
  if (verdict === 'untabled') return 'no radius';
  return verdict === 'refuses' ? 'does not bend' : verdict;
};

/** Between two rulings the worse of what is said of them. */
function runsOf(of: readonly Judged[]) {
  const runs: { from: number; to: number; verdict: Verdict }[] = [];
  of.slice(1).forEach((one, k) => {
    const verdict = worstOf([of[k]!, one]); // the list shifted by one
    const last = runs.at(-1);
    if (last?.verdict === verdict) last.to = k + 1;
    else runs.push({ from: k, to: k + 1, verdict });
  });
  return runs;
}
