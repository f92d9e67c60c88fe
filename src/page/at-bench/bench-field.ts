/** A number of the cell at the bench: the input it stands for, and the quantity that its field writes. */
export interface BenchField {
  readonly place: string;
  readonly name: string;
  readonly label: string;
  /** The group it stands in; empty where it decides. */
  readonly group: string;
}
