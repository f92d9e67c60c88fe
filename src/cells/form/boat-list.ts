/** Lists that depend on the boat in hand and can be chosen from. */
export type BoatList = 'edges' | 'longEdges' | 'chines' | 'panels' | 'frames' | 'stations';
