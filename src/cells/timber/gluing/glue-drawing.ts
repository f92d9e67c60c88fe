/** A joint cut square to its length: with the glue laid, and closed. Millimetres. */
import { circle, dim, hatch, note, type Point, rectHatch, type Shape } from '../../../drawing';

export interface GluedJoint {
  readonly width: number;
  readonly film: number;
  /** Diameters of beads side by side; none where the glue is spread on both faces. */
  readonly beads: number;
  readonly bead: number;
}

/** More than these side by side run together on a phone. */
const MOST_BEADS = 8;

export function gluedJoint(
  { width, film, beads, bead }: GluedJoint,
  says: { readonly width: string; readonly film: string; readonly bead: string },
): Shape[] {
  const deep = width * 0.4;
  const gap = Math.max(width * 0.22, 1.6 * bead);
  const right = width * 1.5;
  const shown = Math.min(MOST_BEADS, Math.ceil(beads));
  // A bead lies on the face, a spread half on either.
  const beaded = shown > 0 && bead > 0;
  const laid: Shape[] = beaded
    ? Array.from({ length: shown }, (_, i) => round([((i + 0.5) * width) / shown, bead / 2], bead / 2)).flat()
    : [glueFilm(0, 0, width, film / 2), glueFilm(0, gap - film / 2, width, film / 2)];
  return [
    wood(0, -deep, width, deep, false),
    wood(0, gap, width, deep, true),
    ...laid,
    wood(right, -deep, width, deep, false),
    wood(right, film, width, deep, true),
    glueFilm(right, 0, width, film),
    dim([0, -deep], [width, -deep], says.width, { side: 'below' }),
    note(beaded ? `laid, ${says.bead}` : 'laid, on both faces', { at: [width / 2, gap + deep * 1.5] }),
    note(`closed, ${says.film}`, { at: [right + width / 2, gap + deep * 1.5] }),
  ];
}

function wood(x: number, y: number, width: number, height: number, falling: boolean): Shape {
  return rectHatch(x, y, width, height, 'cedar', { falling });
}

function glueFilm(x: number, y: number, width: number, film: number): Shape {
  return rectHatch(x, y, width, film, 'glue', { pen: 'thin', layer: 'glue' });
}

function round(at: Point, radius: number): Shape[] {
  const ring = Array.from({ length: 24 }, (_, i): Point => {
    const angle = (i / 12) * Math.PI;
    return [at[0] + radius * Math.cos(angle), at[1] + radius * Math.sin(angle)];
  });
  return [hatch(ring, 'glue', { pen: 'none', layer: 'glue' }), circle(at, radius, { layer: 'glue' })];
}
