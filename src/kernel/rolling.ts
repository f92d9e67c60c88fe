/** A body rolled over a level floor, seen along the axis that it turns about: corner after corner, without slipping. */
import { turned } from './least-height';
import { distance2, type Vec2 } from './vec';

const TURN = 2 * Math.PI;
/** Angles nearer than this are one, rad. */
const ALIKE = 1e-12;

/** The body as it stands after some turning: the floor at height 0, the corner that it began to roll over at 0 along it. */
export interface Rolled {
  /** Where a place of the body is now, m. */
  readonly place: (point: Vec2) => Vec2;
  /** The corner that bears, in the body's own axes, and how far along the floor it stands, m. */
  readonly corner: Vec2;
  readonly along: number;
  readonly centre: Vec2;
  /** How far the centre is short of standing plumb over the corner, m; - where it is past it, and she rolls by herself. */
  readonly lever: number;
}

export interface Rolling {
  /** @param turn from lying on its topmost side, rad, 0 to a full turn */
  readonly at: (turn: number) => Rolled;
  /** The other end of the side it lies on at first: where hands take hold. */
  readonly grip: Vec2;
  /** Where it first stands in balance, over a corner, rad. */
  readonly balance: number;
  /** Where the next side meets the floor after that, rad, and where it comes to rest if nothing holds it. */
  readonly landing: number;
  readonly rest: number;
  /** Greatest lever over the distance from corner to grip: on the way to the balance, and past it on the way to rest. */
  readonly heaviest: number;
  readonly held: number;
}

interface Contact {
  readonly corner: Vec2;
  readonly from: number;
  readonly to: number;
  readonly along: number;
}

/**
 * Rolls a convex outline clockwise from where it lies upside down.
 *
 * While a corner bears, the centre swings about it; where a side has come down flat, its other end bears. Statics:
 * the lever is the slope of the centre's height against the turning.
 *
 * @param outline anticlockwise, m, right side up
 * @throws where the outline has no area
 */
export function rollingOf(outline: readonly Vec2[], centre: Vec2): Rolling {
  if (outline.length < 3) throw new Error('an outline that is rolled needs an area');
  const contacts = contactsOf(outline);
  const first = contacts[0]!; // one for each corner
  const grip = outline.reduce((best, point) =>
    point[1] > best[1] || (point[1] === best[1] && point[0] > best[0]) ? point : best,
  );
  const bearing = (turn: number) => contacts.find(({ to }) => turn <= to + ALIKE) ?? contacts.at(-1)!;
  const leverOver = (contact: Contact, turn: number) =>
    turned([contact.corner[0] - centre[0], contact.corner[1] - centre[1]], Math.PI - turn)[0];
  /** Where the centre stands plumb over the corner. */
  const plumb = ({ corner }: Contact) =>
    around(Math.atan2(corner[1] - centre[1], corner[0] - centre[0]) - Math.PI / 2);
  const over = contacts.findIndex((one) => {
    const turn = plumb(one);
    return turn > one.from + ALIKE && turn <= one.to + ALIKE;
  });
  const standing = contacts[over] ?? first;
  const balance = plumb(standing);
  const passed = Math.max(over, 0);
  const stops = contacts.findIndex(
    (one, i) => i >= passed && leverOver(contacts[i + 1] ?? first, one.to) >= 0,
  );
  const resting = contacts[stops] ?? contacts.at(-1)!;
  /** Levers over a run of corners at their greatest, each over its distance to the grip; 0 where all are on the other side. */
  const most = (run: readonly Contact[], side: 1 | -1) => {
    const shares = run.flatMap((one) => {
      const arm = distance2(one.corner, grip);
      const level = plumb(one) - (side * Math.PI) / 2;
      const turns = [one.from, one.to, level].filter((turn) => turn >= one.from && turn <= one.to);
      return arm > 0 ? turns.map((turn) => (side * leverOver(one, turn)) / arm) : [];
    });
    return Math.max(0, ...shares);
  };
  return {
    at: (turn) => {
      const { corner, along } = bearing(turn);
      // Asked for thousands of places at one turn.
      const [cosine, sine] = [-Math.cos(turn), Math.sin(turn)];
      const place = ([x, y]: Vec2): Vec2 => {
        const [across, up] = [x - corner[0], y - corner[1]];
        return [along + cosine * across - sine * up, sine * across + cosine * up];
      };
      const middle = place(centre);
      return { place, corner, along, centre: middle, lever: along - middle[0] };
    },
    grip,
    balance,
    landing: standing.to,
    rest: resting.to,
    heaviest: most(contacts.slice(0, passed + 1), 1),
    held: most(contacts.slice(passed, contacts.indexOf(resting) + 1), -1),
  };
}

/** The corners in the order in which they bear, each with the turning over which it does. */
function contactsOf(outline: readonly Vec2[]): readonly Contact[] {
  const top = Math.max(...outline.map(([, y]) => y));
  const left = Math.min(...outline.flatMap(([x, y]) => (y === top ? [x] : [])));
  const begin = outline.findIndex(([x, y]) => x === left && y === top);
  let [from, along] = [0, 0];
  return outline.map((_, k) => {
    const corner = outline[(begin + k) % outline.length]!;
    const next = outline[(begin + k + 1) % outline.length]!;
    // The side lies on the floor where the way out of it points down.
    const flat = around(Math.atan2(corner[0] - next[0], next[1] - corner[1]) - Math.PI / 2);
    const to = k === outline.length - 1 ? TURN : Math.max(from, flat);
    const contact = { corner, from, to, along };
    from = to;
    along += distance2(corner, next);
    return contact;
  });
}

const around = (angle: number): number => ((angle % TURN) + TURN) % TURN;
