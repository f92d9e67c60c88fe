/** What the flotation asks of the hull: room for foam in her bays, and the foam in them. */
import { type FoamBay, foamBays } from '../../boat/hull/foam-bays';
import { fact } from '../form/fact';
import { GEOMETRY } from '../../trade/sources';

interface Placed {
  readonly where: 'sides' | 'under';
  readonly below: number;
  readonly stripDown: number;
  readonly thick: number;
  readonly seat: number;
  readonly fills: number;
}

/** From aft forward. */
const rooms = fact(
  'the hull’s sections between neighbouring stations, within the strip or under the level, times the share filled',
  GEOMETRY,
  ({ where, below, stripDown: drop, thick, seat, fills }: Placed, { hull }) =>
    foamBays(hull, { where, below, drop, thick, under: seat, fills }),
);

interface Laid extends Placed {
  readonly fitted: number;
  readonly motorFoam: number;
  readonly peopleForward: number;
}

/** Foam of each bay, m3: the motor's from aft forward, and the rest from where people sit. */
export const laid = fact(
  'the motor’s share from the stern forward, and the rest into the bays nearest to the people, till each is full',
  'Coast Guard, Boatbuilder’s Handbook: against the sides, balanced about the passengers’ middle, and aft by the motor',
  ({ fitted, motorFoam, peopleForward }: Laid, { ask }) => {
    const bays = ask(rooms);
    const volumes = bays.map(() => 0);
    const pour = (order: readonly number[], amount: number): number =>
      order.reduce((left, at) => {
        const goes = Math.min(left, bays[at]!.room - volumes[at]!); // as many as bays
        volumes[at]! += goes;
        return left - goes;
      }, amount);
    const fromAft = bays.map((_, at) => at);
    const off = ({ aft, fore }: FoamBay) => Math.abs((aft + fore) / 2 - peopleForward);
    const fromPeople = fromAft.toSorted((a, b) => off(bays[a]!) - off(bays[b]!));
    const left = pour(fromAft, Math.min(motorFoam, fitted));
    const lacks = pour(fromPeople, fitted - Math.min(motorFoam, fitted) + left);
    const sum = (of: (bay: FoamBay, at: number) => number) =>
      bays.reduce((all, bay, at) => all + of(bay, at), 0);
    const foam = sum((_, at) => volumes[at]!);
    const middle = sum(({ aft, fore }, at) => (volumes[at]! * (aft + fore)) / 2);
    return {
      bays,
      volumes,
      room: sum(({ room }) => room),
      lacks,
      // Without foam its middle is nowhere in particular.
      forward: foam > 0 ? middle / foam : peopleForward,
    };
  },
);

/** The bay looked at; nothing forward of the last station. */
export const here = fact(
  'the bay from this station to the next',
  GEOMETRY,
  ({ bay }: { readonly bay: string }, { ask }) => {
    const { bays, volumes } = ask(laid);
    const at = bays.findIndex(({ name }) => name === bay);
    return at < 0 ? { there: 0, room: 0, foam: 0 } : { there: 1, room: bays[at]!.room, foam: volumes[at]! };
  },
);
