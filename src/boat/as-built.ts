/**
 * As built: what has been measured on the boat, and which parts are cut. Both stand in place of what is
 * designed; the design goes on underneath, so that the difference can be told.
 */
type Entries = Readonly<Record<string, string>>;

export interface AsBuilt {
  /** What was read off the boat or the stock, as entries by the quantity's name. */
  readonly measured: Entries;
  /** Parts cut already, by the first word of their quantities' names: `frame3`, `keelson`. */
  readonly cut: Readonly<Record<string, CutPart>>;
}

export interface CutPart {
  /** What was given of the part on that day, each entry complete in itself: no later change can move it. */
  readonly held: Entries;
  /** All numbers that followed for the part on that day, SI: what follows later is held against them. */
  readonly numbers: Readonly<Record<string, number>>;
}

export const nothingBuilt: AsBuilt = { measured: {}, cut: {} };

/** The part a quantity belongs to. */
export function partOf(name: string): string {
  const dot = name.indexOf('.');
  return dot < 0 ? name : name.slice(0, dot);
}

/**
 * The entries that stand in place of the designed ones. A measurement outranks what a part was cut to: the tape is
 * right about the wood.
 */
export function builtEntries({ measured, cut }: AsBuilt): Entries {
  const held = Object.entries(cut).flatMap(([part, as]) =>
    Object.entries(as.held).filter(([name]) => partOf(name) === part),
  );
  return Object.fromEntries([...held, ...Object.entries(measured)]);
}
