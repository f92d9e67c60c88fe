import type { KindId, WriteOptions } from '../../measure';

/** Tells a number, SI, in the units chosen, as it stands in a sentence or a picture. */
export type SayNumber = (value: number, kind: KindId, options?: WriteOptions) => string;
