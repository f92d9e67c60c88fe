/** By which rules cloth is planned, and what a piece of it is. */
import type { Station } from '../../boat';
import type { Vec2 } from '../../kernel';

export interface ClothRules {
  readonly over: 'hull' | 'flat';
  readonly bottomLayers: number;
  readonly sideLayers: number;
  readonly flatLength: number;
  readonly flatWidth: number;
  readonly layers: number;
  readonly width: number;
  readonly runs: 'least' | 'along' | 'across';
  readonly lap: number;
  /** Between the seams of one layer and the next. */
  readonly seamShift: number;
  readonly turn: number;
  readonly further: number;
  readonly trim: number;
  readonly slack: number;
  readonly strips: 'none' | 'joints' | 'allJoints' | 'all';
  readonly stripWidth: number;
  readonly stripCut: 'straight' | 'bias';
  readonly sideJoints: number;
  readonly sideJointLong: number;
  readonly bottomJoints: number;
  readonly bottomJointLong: number;
  readonly beyond: number;
  readonly soldBy: number;
}

/** One piece, cut from the roll. */
export interface ClothPiece {
  /** As it is called on the boat: `bottom, port`. */
  readonly name: string;
  /** The part of the boat it lies on. */
  readonly part: string;
  readonly kind: 'strip' | 'cloth';
  /** On which side of the boat; on both of one that goes over the keel. */
  readonly side: 'port' | 'starboard' | 'both';
  /** Which of so many runs beside each other it is, from 0, from aft where they go across the boat, else from the keel. */
  readonly run: { readonly index: number; readonly count: number; readonly across: boolean };
  /** 1 for the layer on the wood. */
  readonly layer: number;
  /** As it is cut, along the roll and across it, m. */
  readonly long: number;
  readonly wide: number;
  /** What of it lies on the boat, laps with it, m2. */
  readonly laid: number;
  /** The finished edge on the piece, from its lower left corner, m; pencilled round on the hull. */
  readonly outline: readonly Vec2[];
  /** Where frames cross it, the same way. */
  readonly marks: readonly { readonly station: Station; readonly from: Vec2; readonly to: Vec2 }[];
  /** Cut at 45 degrees, so many beside each other. */
  readonly bias: number;
}
