/** The quantities of cells on a sheet without a boat, and how cells are placed on a boat. */
import { type BoatLists, type Derived, type Given, type Layout, type Owner, ownerOf } from '../../boat';
import { type Cell, cellQuantities, type Instance } from '../../cells';
import { type Catalogue, catalogueFrom } from './on-hand';

/** What cells are placed on. */
export interface CellGround extends Pick<Catalogue, 'hull' | 'ends'> {
  readonly layout: Layout;
  /** Null without a boat. */
  readonly onBoat: BoatLists | null;
  /** The boat's own; nobody's without one. */
  readonly own: readonly Owner[];
}

type Bring = NonNullable<Cell['brings']>;

/** Places cells on a ground. What was made of a cell stays, as long as it is the same cell under the same presets. */
export function placingOn({
  layout,
  onBoat,
  own,
  hull,
  ends,
}: CellGround): (instances: Iterable<Instance>) => Catalogue {
  const brought = new Map<Bring, Owner>();
  const placed = new Map<string, { readonly instance: Instance; readonly owner: Owner }>();

  /** What the cell brings along for this boat: entries of the boat's own too, which a first page can do without. */
  function broughtBy(bring: Bring): Owner {
    const owner = brought.get(bring) ?? ownerOf(bring(layout).filter(isNew));
    brought.set(bring, owner);
    return owner;
  }
  // Tables of the trade that her own parts read, cells bring too.
  const isNew = (one: Given | Derived) => !own.some((owner) => owner.find(one.name) === one);

  function ownerFor(instance: Instance): Owner {
    const known = placed.get(instance.name);
    const owner =
      known && samePlacing(known.instance, instance) ? known.owner : cellQuantities(instance, onBoat);
    placed.set(instance.name, { instance, owner });
    return owner;
  }

  return (instances) => {
    const all = [...instances];
    // Cells may bring the same ones, and a cell stand several times.
    const bringers = new Set(all.flatMap(({ cell: { brings } }) => brings ?? []));
    const owners = [...own, ...[...bringers].map(broughtBy), ...all.map(ownerFor)];
    return catalogueFrom(owners, { hull, ...(onBoat && { onBoat }), ...(ends && { ends }) });
  };
}

function samePlacing(one: Instance, other: Instance): boolean {
  if (one.cell !== other.cell) return false;
  const keys = new Set([...Object.keys(one.presets), ...Object.keys(other.presets)]);
  return [...keys].every((key) => one.presets[key] === other.presets[key]);
}

/** The tables of the trade come with the cells that read them; links to a boat leave their presets. */
export const looseCatalogue: (instances: Iterable<Instance>) => Catalogue = placingOn({
  layout: { edges: [], chines: [], panels: [], stations: [] },
  onBoat: null,
  own: [],
  hull: () => {
    throw new Error('there is no boat in this notebook');
  },
});
