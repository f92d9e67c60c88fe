import type { Issue, KindId } from '../../measure';
import { attempt } from '../attempt';
import type { Hull } from '../hull/hull';
import type { Derived, Read } from './quantity';

const GEOMETRY = 'geometry of the offsets as they stand';

/** A quantity that follows from the hull alone; a fault of the hull becomes its issue. */
export function fromHull(
  name: string,
  kind: KindId,
  meaning: string,
  ask: (hull: Hull) => number | Issue,
): Derived {
  return fromBoth(name, kind, meaning, GEOMETRY, (hull) => ask(hull));
}

/** A quantity that follows from the hull and from other quantities. */
export function fromBoth(
  name: string,
  kind: KindId,
  meaning: string,
  source: string,
  ask: (hull: Hull, read: Read) => number | Issue,
): Derived {
  return {
    name,
    kind,
    meaning,
    source,
    from: (read) => {
      const hull = read.hull();
      return attempt(() => ask(hull, read));
    },
  };
}
