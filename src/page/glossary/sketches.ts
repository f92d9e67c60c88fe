/** The small drawings by their names, each made when it is asked for. */
import { edgeSketches } from './edge-sketches';
import { hullSketches } from './hull-sketches';
import { jointSketches } from './joint-sketches';
import { sectionSketches } from './section-sketches';
import { shopSketches } from './shop-sketches';
import type { Sketches } from './small-drawing';

export const sketches: Sketches = {
  ...hullSketches,
  ...sectionSketches,
  ...edgeSketches,
  ...jointSketches,
  ...shopSketches,
};
