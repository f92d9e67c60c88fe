/** The landing of the side on a stem that is planed evenly from its foot to its head, against the skin at each height. */
import { postLength, skinOnPost } from '../../boat/hull/post-skin';
import type { FaceOnSkin, FacePlace } from '../../boat/joinery/face-on-skin';
import type { Hull } from '../../boat';
import { fact } from '../form/fact';
import type { FairingAsked } from './fairing-inputs';
import { GEOMETRY } from '../../trade/sources';

/** Tenths of the way up. */
const TENTHS = 10;
/** Places of the line that is drawn. */
const DRAWN = 4 * TENTHS;

const EVENLY =
  'the bevel at each height against one that turns evenly from foot to head; landing × sine of the difference';

/**
 * Held at the outer face, the landing leaves the skin at the bearding line: its bevel turns as much in each tenth of its
 * height, as a plane takes it from one mark to the other. Null where she has no stem.
 */
function stemOnSkin(hull: Hull, landing: number): (FaceOnSkin & { readonly length: number }) | null {
  if (hull.fore.role !== 'stem') return null;
  const length = postLength(hull, hull.fore);
  const entryAt = (share: number) => skinOnPost(hull, hull.fore, share).entry;
  const [foot, head] = [entryAt(0), entryAt(1)];
  const placeAt = (share: number): FacePlace => ({
    along: share * length,
    line: 0,
    far: landing * Math.sin(foot + (head - foot) * share - entryAt(share)),
  });
  return {
    length,
    places: Array.from({ length: DRAWN + 1 }, (_, i) => placeAt(i / DRAWN)),
    at: (up) => placeAt(Math.max(0, Math.min(1, up / length))),
  };
}

export const stem = fact(EVENLY, GEOMETRY, ({ landing }: Pick<FairingAsked, 'landing'>, { hull }) =>
  stemOnSkin(hull, landing),
);

/** Where it is most proud and where it lacks most, at the tenths that its bevel is planed by. */
export const onStem = fact(EVENLY, GEOMETRY, (_: Pick<FairingAsked, 'landing'>, { ask }) => {
  const of = ask(stem);
  if (!of) return null;
  const tenths = Array.from({ length: TENTHS + 1 }, (_at, i) => of.at((of.length * i) / TENTHS));
  const largest = (size: (place: FacePlace) => number) =>
    tenths.reduce((best, one) => (size(one) > size(best) + NOTHING ? one : best));
  return { proud: largest(({ far }) => far), lack: largest(({ far }) => -far) };
});

/** Less than this is what rounding leaves, m. */
const NOTHING = 1e-7;
