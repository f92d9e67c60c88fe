/** The hull in two rope loops between posts: what each leg bears, where she turns in them, where they run along her. */
import type { Hull } from '../../boat';
import { convexOutline, meshSection, pullsOn, type Slung, slung, turned, type Vec2 } from '../../kernel';
import { fact } from '../form/fact';
import { rolling } from './roll-facts';
import { GEOMETRY } from '../../trade/sources';

export const CAPSTAN = 'rope round a body, L. Euler (1769): pull by pull e^(friction times angle of wrap)';
const DEGREE = Math.PI / 180;

interface Hung {
  readonly way: string;
  readonly angle: number;
  readonly centreHeight: number;
  readonly centreForward: number;
  readonly aftRope: number;
  readonly foreRope: number;
  readonly posts: number;
  readonly postHigh: number;
  readonly clear: number;
  readonly grips: number;
  readonly drags: number;
}

/** Over so much of her length to each side the rope that it takes is compared, m. */
const BESIDE = 0.02;

/** Her section where a rope lies, as the rope bridges it. */
function sectionAt({ body }: Hull, x: number): readonly Vec2[] {
  const points = meshSection(body, { normal: [1, 0, 0], height: x }).flat();
  return points.length > 2 ? convexOutline(points.map(([, y, z]): Vec2 => [y, z])) : [];
}

const span = (values: readonly number[]) => {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return { middle: (least + most) / 2, half: (most - least) / 2 };
};

interface Hanging extends Slung {
  readonly outline: readonly Vec2[];
  readonly across: ReturnType<typeof span>;
  /** Share of her weight, and of it the pull in each leg. */
  readonly bears: number;
  readonly pulls: readonly [left: number, right: number];
}

export const ropePlaces = fact(
  'so far along the keel',
  GEOMETRY,
  ({ aftRope, foreRope }: Pick<Hung, 'aftRope' | 'foreRope'>, { hull }) => {
    const keel = hull.edges[0]!.points; // a hull has a keel
    const [from, to] = [keel[0]![0], keel.at(-1)![0]];
    const at = (share: number) => from + share * (to - from);
    return { aft: at(aftRope), fore: at(foreRope) };
  },
);

/** Her sections at the two ropes, with the share of her weight that each bears; null where she hangs in none. */
const ropes = fact(
  'moments about the other rope',
  'statics: moments about the other rope',
  ({ way, centreForward }: Hung, { hull, ask }) => {
    if (way !== 'ropes') return null;
    const places = ask(ropePlaces);
    // Where her centre lies beyond the ropes she tips, and all of her hangs in the one.
    const share = Math.max(0, Math.min(1, (centreForward - places.aft) / (places.fore - places.aft)));
    const [aft, fore] = [sectionAt(hull, places.aft), sectionAt(hull, places.fore)];
    return [
      { section: aft, bears: 1 - share },
      { section: fore, bears: share },
    ] as const;
  },
);

/** A section that a rope lies under, right side up, and its share of her weight. */
interface Roped {
  readonly section: readonly Vec2[];
  readonly bears: number;
}

/** As she hangs when she is turned so far: each section with its legs, and her centre beside the middle of the loops. */
function hangingAt(of: readonly [Roped, Roped], v: Hung, angle: number) {
  const turn = Math.PI - angle;
  const low = Math.min(...of.flatMap(({ section }) => section.map((point) => turned(point, turn)[1])));
  const loop = (section: readonly Vec2[], middle: number) => {
    const outline = section.map((point): Vec2 => {
      const [x, y] = turned(point, turn);
      return [x - middle, y - low + v.clear];
    });
    return { outline, ...slung(outline, { apart: v.posts, high: v.postHigh }) };
  };
  const hang = ({ section, bears }: Roped): Hanging => {
    const across = span(section.map((point) => turned(point, turn)[0]));
    const lies = loop(section, across.middle);
    const [left, right] = pullsOn(lies);
    return { ...lies, across, bears, pulls: [left * bears, right * bears] };
  };
  const hung = [hang(of[0]), hang(of[1])] as const;
  const sum = (each: (one: Hanging) => number) => hung.reduce((all, one) => all + one.bears * each(one), 0);
  const [x, y] = turned([0, v.centreHeight], turn);
  return {
    hung,
    /** The rope that it takes round another of her sections, she held as she hangs in the forward rope, m. */
    ropeRound: (section: readonly Vec2[]) => loop(section, hung[1].across.middle).length,
    off: x - sum(({ across }) => across.middle),
    centreUp: y - low + v.clear,
    /** How far off the middle friction holds her: one leg pulled e^(friction times wrap) as hard as the other. */
    held: (friction: number) => sum(({ across, wrap }) => across.half * Math.tanh((friction * wrap) / 2)),
  };
}

export const cradles = fact(
  'each rope bears its share of her; its legs leave her section towards the posts',
  'statics: no pull is left over sideways; weight and legs balance',
  (v: Hung, { ask }) => {
    const of = ask(ropes);
    return of && hangingAt(of, v, v.angle);
  },
);

/** The whole turn, degree by degree. */
export const everyDegree = fact(
  'the same at every degree',
  'statics: no pull is left over sideways; weight and legs balance',
  (v: Hung, { ask }) => {
    const of = ask(ropes);
    return of
      ? Array.from({ length: 181 }, (_, degree) => ({
          angle: degree * DEGREE,
          ...hangingAt(of, v, degree * DEGREE),
        }))
      : [];
  },
);

/** How hard the legs are pulled, and how far out of plumb they lean: the worse of the two ropes. */
export const legs = fact(
  'the harder pulled leg, and the one that leans most',
  'statics: no pull is left over sideways',
  (_: Hung, { ask }) => {
    const hung = ask(cradles)?.hung ?? [];
    const all = hung.flatMap(({ pulls: [left, right], left: leansLeft, right: leansRight }) => [
      { pull: left, lean: leansLeft },
      { pull: right, lean: leansRight },
    ]);
    return {
      foreShare: hung[1]?.bears ?? 0,
      pull: Math.max(0, ...all.map(({ pull }) => pull)),
      lean: Math.max(0, ...all.map(({ lean }) => lean)),
      postPull: Math.max(0, ...all.map(({ pull, lean }) => pull * Math.sin(lean))),
    };
  },
);

export const turning = fact(
  'moments about the middle of the loops; friction holds one leg against the other',
  CAPSTAN,
  (v: Hung, { ask }) => {
    const { grip } = ask(rolling);
    const found = ask(cradles);
    return {
      off: found?.off ?? 0,
      held: (friction: number) => found?.held(friction) ?? 0,
      arm: Math.hypot(grip[0], grip[1] - v.centreHeight),
    };
  },
);

/** From where on she turns by herself, friction or not; half a turn where she never does. */
export const slipping = fact('the same at every degree', CAPSTAN, (v: Hung, { ask }) => {
  const gone = ask(everyDegree).find(({ off, held }) => off > held(v.grips));
  return gone?.angle ?? Math.PI;
});

/** How steeply the forward rope is drawn along her: it runs out where this is more than friction. */
export const running = fact(
  'the rope that it takes a little aft and a little forward, over the angle of wrap',
  'statics: a rope slides to where less of it is needed; friction acts all round the wrap',
  (_: Hung, { hull, ask }) => {
    const now = ask(cradles);
    if (!now) return { slope: 0, drawn: 0 };
    const [, fore] = now.hung;
    const ropeAt = (x: number) => {
      const section = sectionAt(hull, x);
      return section.length < 3 ? null : now.ropeRound(section);
    };
    const at = ask(ropePlaces).fore;
    const [behind, ahead] = [ropeAt(at - BESIDE), ropeAt(at + BESIDE)];
    const over = (behind === null ? 0 : BESIDE) + (ahead === null ? 0 : BESIDE);
    const less = over > 0 ? Math.max(0, ((behind ?? fore.length) - (ahead ?? fore.length)) / over) : 0;
    const [left, right] = fore.pulls;
    return { slope: less / fore.wrap, drawn: (less * (left + right)) / 2 };
  },
);
