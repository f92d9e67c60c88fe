/** How near to an end, an edge and each other screws may stand before the wood splits. */

export interface Spacing {
  /** Screw to screw along the grain, m. */
  readonly along: number;
  /** Row to row across the grain, m. */
  readonly across: number;
  /** To an end that the screw is pulled towards, m. */
  readonly loadedEnd: number;
  readonly freeEnd: number;
  /** To an edge that the screw is pulled towards, m. */
  readonly loadedEdge: number;
  readonly freeEdge: number;
}

/**
 * Least distances for nails and for screws up to 6 mm, in timber.
 *
 * EN 1995-1-1 (2004), Table 8.2, from memory.
 *
 * @param diameter m
 * @param grainAngle between the force and the grain, rad, 0 to pi/2
 * @param density characteristic, kg/m3; counts only where no hole is drilled
 * @returns throws a sentence above 500 kg/m3 without a drilled hole: the table ends there
 */
export function spacingByEurocode(
  diameter: number,
  grainAngle: number,
  drilled: boolean,
  density: number,
): Spacing {
  const c = Math.abs(Math.cos(grainAngle));
  const s = Math.abs(Math.sin(grainAngle));
  const thick = diameter >= 0.005;
  const times = (factors: Spacing): Spacing => ({
    along: factors.along * diameter,
    across: factors.across * diameter,
    loadedEnd: factors.loadedEnd * diameter,
    freeEnd: factors.freeEnd * diameter,
    loadedEdge: factors.loadedEdge * diameter,
    freeEdge: factors.freeEdge * diameter,
  });
  if (drilled) {
    return times({
      along: 4 + c,
      across: 3 + s,
      loadedEnd: 7 + 5 * c,
      freeEnd: 7,
      loadedEdge: 3 + (thick ? 4 : 2) * s,
      freeEdge: 3,
    });
  }
  if (density > 500)
    throw new Error('wood heavier than 500 kg/m³ (31 lb/ft³) must be drilled for its screws');
  if (density > 420) {
    return times({
      along: 7 + 8 * c,
      across: 7,
      loadedEnd: 15 + 5 * c,
      freeEnd: 15,
      loadedEdge: 7 + (thick ? 5 : 2) * s,
      freeEdge: 7,
    });
  }
  return times({
    along: 5 + (thick ? 7 : 5) * c,
    across: 5,
    loadedEnd: 10 + 5 * c,
    freeEnd: 10,
    loadedEdge: 5 + (thick ? 5 : 2) * s,
    freeEdge: 5,
  });
}

/**
 * The same by the table in the commentary to the American code, for screws pulled along the grain.
 *
 * Commentary to the National Design Specification, wood screws, from memory.
 */
export function spacingByAmericanCode(diameter: number, drilled: boolean): Spacing {
  return {
    along: (drilled ? 10 : 15) * diameter,
    across: (drilled ? 3 : 5) * diameter,
    loadedEnd: (drilled ? 10 : 15) * diameter,
    freeEnd: (drilled ? 5 : 10) * diameter,
    loadedEdge: 2.5 * diameter,
    freeEdge: 2.5 * diameter,
  };
}

/**
 * Timber thinner than this is drilled, m.
 *
 * EN 1995-1-1 (2004), 8.3.1.2, eq. 8.18 and 8.19, from memory.
 *
 * @param density characteristic, kg/m3
 */
export function thinnestUndrilled(diameter: number, density: number, splitsEasily: boolean): number {
  const fit = (13 * diameter - 0.03) * density;
  return splitsEasily ? Math.max(14 * diameter, fit / 200) : Math.max(7 * diameter, fit / 400);
}

/**
 * Screws in one line: the first and the last an end distance in, the rest shared out evenly between them.
 *
 * @param end from either end of the line, m
 * @param pitch greatest distance from screw to screw, m; a thousandth of a space is forgiven
 */
export function screwsInLine(length: number, end: number, pitch: number): number {
  return 1 + Math.ceil(Math.max(0, length - 2 * end) / pitch - 1e-3);
}
