/** The later cuts of each frame as quantities: how far from the centreline and above the base no screw may stand. */
import { issue } from '../../measure';
import { type KeepOutBox, type KeepOut, keepOutsOf } from '../joinery/keep-outs';
import type { Layout } from './lists';
import { fromBoth } from './make-derived';
import type { Named } from '../table/named';
import type { Derived } from './quantity';

const SOURCE = 'geometry, with the scantlings in hand; the clearance is common practice, no source';

const SIDES: Readonly<Record<keyof KeepOutBox, string>> = {
  inboard: 'least distance from the centreline of what is kept free for',
  outboard: 'greatest distance from the centreline of what is kept free for',
  lower: 'least height above the base of what is kept free for',
  upper: 'greatest height above the base of what is kept free for',
};
const sides = Object.keys(SIDES) as (keyof KeepOutBox)[];

/** `frame3.chine.notch.keepOut.upper` and the like, for every frame; they come with the cells that need them. */
export function keepOutQuantities({ stations, edges, panels }: Layout): readonly Derived[] {
  const [keel, ...others] = edges;
  const sheer = others.at(-1);
  if (!keel || !sheer) return [];
  return stations
    .filter(({ role }) => role === 'frame')
    .flatMap((frame) => [
      ...boxOf(frame, keel, 'slot', 'the keelson’s slot'),
      ...boxOf(frame, keel, 'limber', 'the limber hole'),
      ...others.flatMap((edge) => boxOf(frame, edge, 'notch', `the notch at the ${edge.label}`)),
      ...boxOf(frame, sheer, 'trim', 'trimming at the sheer'),
      ...panels.map((panel) => planed(frame, panel)),
    ]);
}

function boxOf(frame: Named, at: Named, cut: KeepOut['cut'], words: string): Derived[] {
  return sides.map((side) =>
    fromBoth(
      `${frame.name}.${at.name}.${cut}.keepOut.${side}`,
      'length',
      `${SIDES[side]} ${words} at ${frame.label}`,
      SOURCE,
      (hull, read) => {
        const found = keepOutsOf(hull, frame.name, read.number).find(
          (one) => one.cut === cut && one.at === at.name,
        );
        return found ? found.box[side] : issue(`nothing is left above the sheer at ${frame.label} to trim`);
      },
    ),
  );
}

/** A box round a slanted edge would shut the whole member, so here the distance in from the edge is told. */
function planed(frame: Named, panel: Named): Derived {
  return fromBoth(
    `${frame.name}.${panel.name}.planed.keepOut`,
    'length',
    `distance in from the edge on the ${panel.label} that is kept free for its bevel at ${frame.label}; 0 where nothing is planed`,
    SOURCE,
    (hull, read) => {
      const found = keepOutsOf(hull, frame.name, read.number).find(
        ({ cut, at }) => cut === 'planed' && at === panel.name,
      );
      return found ? found.depth + found.clearance : 0;
    },
  );
}
