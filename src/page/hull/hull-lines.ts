/** The hull as named lines in space, ready for the three views. */
import { attempt, type Hull } from '../../boat';
import { isIssue } from '../../measure';
import type { SpaceLine } from '../../drawing';

/** Points along an edge: enough for a smooth line on a small picture, cheap enough for every key press. */
const ALONG = 33;

/** Edges as smooth lines, sections as straight ones, each tagged with the part it shows. */
export function hullLines(hull: Hull): SpaceLine[] {
  const edges = hull.edges.flatMap((edge): SpaceLine[] => {
    const points = attempt(() => edge.polyline(ALONG));
    return isIssue(points) ? [] : [{ name: edge.name, pen: 'outline', points }];
  });
  const sections = hull.stations.flatMap((station): SpaceLine[] => {
    const points = attempt(() => station.corners);
    if (isIssue(points)) return [];
    const pieces = hull.panels.map((panel, index): SpaceLine => ({
      name: panel.name,
      pen: 'thin',
      points: points.slice(index, index + 2),
    }));
    return [...pieces, { name: station.name, pen: 'thin', points }];
  });
  return [...sections, ...edges];
}

/** Parts of the boat stand on lines of the hull; what a cell speaks of lights those. */
export function litParts(wanted: readonly string[], hull: Hull): ReadonlySet<string> {
  // By place: a table may call its edges otherwise.
  const names = hull.edges.map((edge) => edge.name);
  const [keel, chines, sheer] = [names.slice(0, 1), names.slice(1, -1), names.slice(-1)];
  const lines: Readonly<Record<string, readonly string[]>> = {
    keel,
    keelson: keel,
    chineLog: chines,
    chines,
    sheer,
    sheerClamp: sheer,
    rubRail: sheer,
    frame: hull.stations.filter((station) => station.role === 'frame').map((station) => station.name),
    frames: hull.stations.filter((station) => station.role === 'frame').map((station) => station.name),
    skin: hull.panels.map((panel) => panel.name),
  };
  return new Set(wanted.flatMap((name) => lines[name] ?? [name]));
}
