/** What a table of offsets makes as a whole and at a station: told alike wherever it is asked. */
import { fact, tell } from '../form/fact';
import { GEOMETRY } from '../../trade/sources';

export const whole = fact('the hull as it is drawn through the table', GEOMETRY, (_: {}, { hull }) => hull);

export const sizeSteps = {
  length: tell(whole, 'length', 'length of the hull over all', ({ length }) => length, {
    how: 'from the aftmost to the foremost point of all edges',
  }),
  beam: tell(whole, 'length', 'greatest breadth of the hull', ({ beam }) => beam, {
    how: 'twice the greatest half-breadth of the edges, as battens through their points',
  }),
  depth: tell(whole, 'length', 'depth of the hull at its widest station', ({ depth }) => depth, {
    how: 'height of the outermost edge less that of the keel, where the hull is widest',
  }),
};

type At = { readonly station: string };

const bottom = fact(
  'of the straight section of the lowest panel at that station, from level',
  GEOMETRY,
  ({ station }: At, { hull }) => {
    const { name } = hull.panels[0]!; // two edges have a panel
    const here = hull.station(station);
    return { girth: here.girth(name), deadrise: here.deadrise(name) };
  },
);

const flare = fact(
  'of the straight section of the highest panel at that station, from plumb',
  GEOMETRY,
  ({ station }: At, { hull }) => hull.station(station).flare(hull.panels.at(-1)!.name),
);

export const sectionSteps = {
  across: tell(bottom, 'length', 'length of the section across the bottom there', ({ girth }) => girth, {
    how: 'the straight section of the lowest panel at that station; nothing where it comes to a point',
  }),
  deadrise: tell(
    bottom,
    'angle',
    'deadrise of the straight section there, + rising outward',
    ({ deadrise }) => deadrise,
  ),
  flare: tell(flare, 'angle', 'flare of the straight section of the side there, + outward'),
};
