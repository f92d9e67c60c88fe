/** Where a panel of plywood may be jointed, and its outline, as plain numbers that a search can take along. */
import { stripSection, thinned, type Vec2 } from '../../kernel';
import type { Quarter } from '../../kernel/nest';
import { flatPanel } from '../hull/flat-panel';
import type { Hull } from '../hull/hull';
import type { Panel } from '../hull/panel';
import { sideOf } from '../hull/side-of';
import { mirrored, overCentre } from './whole-bottom';

/** Where the joints of a panel may stand: on frames, midway, midway or on the second frame, or where there is room. */
export type JointRule = 'frames' | 'midway' | 'secondFrame' | 'clear';

export interface SpotRules {
  readonly rule: JointRule;
  /** Thickness of a frame, m, and on which side of its line it stands: `custom`, `forward`, `aft`. */
  readonly siding: number;
  readonly stands: string;
  /** Kept between a joint and a frame's wood where the rule says no more, m. */
  readonly clear: number;
  /** Kept from the hardest bend across the panel, m. */
  readonly offBend: number;
  /** Scarfs lap by so much; a butt by nothing. m. */
  readonly lap: number;
  /** What lies behind the joint along the panel, and must find room between the frames too: a lap, or a butt's block. m. */
  readonly behind: number;
  /** A joint chosen by hand, m forward of the after end of the bottom. */
  readonly held: number | null;
  /** How its pieces may lie on a sheet. */
  readonly turns: readonly Quarter[];
  /** Cut in one width with its mirror image, which only a flat bottom can be: see `isFlatAcross`. */
  readonly whole: boolean;
  /** Joints may stand clear of frames as well, wherever the rule would have them. */
  readonly freed: boolean;
}

/** A place for a joint: its line on the flat panel from the inner edge to the outer; of a whole bottom from chine to chine. */
export interface Spot {
  /** m, forward of the after end of the bottom. */
  readonly x: number;
  /** `on frame 2`. */
  readonly words: string;
  readonly line: readonly [inner: Vec2, outer: Vec2];
  /** Stands on a frame, which backs it. */
  readonly onFrame: boolean;
  /** Stands where the rule would have it, and not merely clear of frames. */
  readonly byRule: boolean;
}

/** A panel to be cut; of a skin in layers each is one by itself. */
export interface CutPanel {
  readonly name: string;
  /** Its place among the panels from the keel outward: those that lie next to each other meet. */
  readonly strake: number;
  /** From inside outward, 1 first, and of how many. */
  readonly layer: number;
  readonly layers: number;
  readonly label: string;
  /** Laid flat, the outside of the port panel seen, anticlockwise, m. */
  readonly outline: readonly Vec2[];
  readonly turns: readonly Quarter[];
  /** Both sides of the boat in one; then its joints port and starboard are the same. */
  readonly whole: boolean;
  /** From aft forward. */
  readonly spots: readonly Spot[];
  /** The spot of the joint chosen by hand. */
  readonly held: number | null;
  readonly lap: number;
}

/** Points that stand off the edge by less are left out, m: a pencil line is wider. */
const LINE = 2.5e-4;

/**
 * @param over what is left on at the after end, for trimming, m
 * @throws a sentence where a joint chosen by hand is not on the panel
 */
export function cutPanel(
  hull: Hull,
  panel: Panel,
  rules: SpotRules,
  over: number,
  [layer, layers]: readonly [layer: number, layers: number] = [1, 1],
): CutPanel {
  const spots = spotsOf(hull, panel, rules);
  const { turns, whole } = rules;
  const held = rules.held === null ? null : lineAt(panel, rules.held, whole);
  if (rules.held !== null && !held)
    throw new Error(`the joint chosen by hand does not cross the ${panel.label}`);
  const mine: Spot | null = held && {
    x: rules.held!,
    words: 'chosen by hand',
    line: held,
    onFrame: false,
    byRule: true,
  };
  const all = mine
    ? [...spots.filter(({ x }) => Math.abs(x - mine.x) > NEAR), mine].toSorted((a, b) => a.x - b.x)
    : spots;
  return {
    name: panel.name,
    strake: panel.index,
    layer,
    layers,
    label: layers > 1 ? `${panel.label}, layer ${layer}` : panel.label,
    outline: outlineOf(panel, over, whole),
    turns,
    whole,
    spots: all,
    held: mine && all.indexOf(mine),
    lap: rules.lap,
  };
}

/** Nearer than this, m, the joint chosen by hand takes another's place. */
const NEAR = 0.05;

function outlineOf(panel: Panel, over: number, whole: boolean): readonly Vec2[] {
  const { inner, outer } = flatPanel(panel);
  const turn = whole ? overCentre(panel) : null;
  const fewer = (line: readonly Vec2[]) => {
    const kept = thinned(
      line.map((at) => [...(turn ? turn(at) : at), 0] as const),
      LINE,
    ).map(([x, y]): Vec2 => [x, y]);
    return over > 0 ? [runOn(kept, over), ...kept] : kept;
  };
  const [keel, high] = [fewer(inner), fewer(outer)];
  // Of a whole bottom the keel's ends alone are corners, where it ends in anything but a straight line.
  const round = turn
    ? [keel[0]!, ...high.map(mirrored), keel.at(-1)!, ...high.toReversed()]
    : [...keel, ...high.toReversed()];
  return round.filter(([x, y], i, all) => Math.hypot(x - all.at(i - 1)![0], y - all.at(i - 1)![1]) > LINE);
}

/** Straight on from the after end. */
function runOn(line: readonly Vec2[], over: number): Vec2 {
  const [end, next] = [line[0]!, line[1]!]; // an edge has two points
  const share = over / Math.hypot(next[0] - end[0], next[1] - end[1]);
  return [end[0] - share * (next[0] - end[0]), end[1] - share * (next[1] - end[1])];
}

function lineAt(panel: Panel, x: number, whole: boolean): Spot['line'] | null {
  const section = stripSection(panel.strip, x);
  const [first, last] = [section[0], section.at(-1)];
  if (first?.share !== 0 || last?.share !== 1) return null;
  const { place } = flatPanel(panel);
  if (!whole) return [place(first.flat), place(last.flat)];
  const outer = overCentre(panel)(place(last.flat));
  return [mirrored(outer), outer];
}

interface Wood {
  readonly label: string;
  readonly from: number;
  readonly to: number;
}

function spotsOf(hull: Hull, panel: Panel, rules: SpotRules): readonly Spot[] {
  const frames = hull.frames.map((station): Wood => {
    const [from, to] =
      sideOf(station, rules.stands, true) === 'forward'
        ? [station.x, station.x + rules.siding]
        : [station.x - rules.siding, station.x];
    return { label: station.label.toLowerCase(), from, to };
  });
  const hard = panel.leastRadius?.x ?? null;
  const ruled = placesOf(frames, rules);
  const beside = rules.freed
    ? placesOf(frames, { ...rules, rule: 'clear' }).filter(({ x }) =>
        ruled.every((place) => Math.abs(place.x - x) > NEAR),
      )
    : [];
  const spots = (places: readonly Place[], byRule: boolean) =>
    places
      .filter(({ x }) => hard === null || Math.abs(x - hard) >= rules.offBend)
      .flatMap(({ x, words, onFrame }): Spot[] => {
        const line = lineAt(panel, x, rules.whole);
        return line ? [{ x, words, line, onFrame, byRule }] : [];
      });
  return [...spots(ruled, true), ...spots(beside, false)].toSorted((a, b) => a.x - b.x);
}

type Place = Pick<Spot, 'x' | 'words' | 'onFrame'>;

function placesOf(frames: readonly Wood[], { rule, clear, behind }: SpotRules): readonly Place[] {
  const onFrame = (frame: Wood): Place => ({
    x: (frame.from + frame.to) / 2,
    words: `on ${frame.label}`,
    onFrame: true,
  });
  const bays = frames.slice(1).map((fore, i) => ({ aft: frames[i]!, fore })); // the list shifted by one
  const midway = ({ aft, fore }: (typeof bays)[number]): Place => ({
    x: (aft.to + fore.from) / 2,
    words: `midway between ${aft.label} and ${fore.label}`,
    onFrame: false,
  });
  if (rule === 'frames') return frames.map(onFrame);
  if (rule === 'midway') return bays.map(midway);
  if (rule === 'secondFrame') {
    const second = frames[1];
    return [...(second ? [onFrame(second)] : []), ...bays.map(midway)];
  }
  const kept = clear + behind / 2;
  return bays.flatMap((bay): Place[] => {
    const [from, to] = [bay.aft.to + kept, bay.fore.from - kept];
    if (from > to) return [];
    const middle = midway(bay);
    const room = middle.x - from;
    if (room < NEAR) return [middle];
    // Quarters of the room only where they are not the same place as its ends.
    const shares = room < 4 * NEAR ? [0, 1, 2] : [0, 0.5, 1, 1.5, 2];
    return shares.map((share): Place => {
      if (share === 1) return middle;
      const words = share < 1 ? `forward of ${bay.aft.label}` : `aft of ${bay.fore.label}`;
      return { x: from + share * room, words, onFrame: false };
    });
  });
}
