/**
 * Many short lists of ids, all in one array: what is gone through together lies together, which is what going through
 * thousands of them costs. A list that outgrows its room moves to the end, to twice the room, so that what is left
 * behind never comes to more than what is in use.
 */
export class IdLists {
  /** Each list is its room, its size, and its ids; the first is the one of all that are empty and have no room yet. */
  pool = new Int32Array(256);
  /** Where each list begins. */
  starts = new Int32Array(64);
  private end = 2;

  /** Makes room for lists up to this number; each begins empty. */
  reach(list: number): void {
    this.starts = reaching(this.starts, list);
  }

  /** A copy of one; empty where none was made. */
  of(list: number): Int32Array {
    const first = (this.starts[list] ?? 0) + 2;
    return this.pool.slice(first, first + this.pool[first - 1]!);
  }

  size(list: number): number {
    return this.pool[(this.starts[list] ?? 0) + 1]!;
  }

  /** The id at a place within a list. */
  at(list: number, place: number): number {
    return this.pool[this.starts[list]! + 2 + place]!;
  }

  /** Whether a list is the one of the same number among others. */
  isAsIn(others: Pick<IdLists, 'size' | 'at'>, list: number): boolean {
    const size = this.size(list);
    if (size !== others.size(list)) return false;
    for (let place = 0; place < size; place += 1)
      if (this.at(list, place) !== others.at(list, place)) return false;
    return true;
  }

  push(list: number, id: number): void {
    let start = this.starts[list]!; // reached
    const size = this.pool[start + 1]!;
    if (size === this.pool[start]) {
      const room = 2 * size || 2;
      this.pool = reaching(this.pool, this.end + room + 2);
      this.pool.copyWithin(this.end, start, start + size + 2);
      start = this.starts[list] = this.end;
      this.pool[start] = room;
      this.end += room + 2;
    }
    this.pool[start + 1] = size + 1;
    this.pool[start + 2 + size] = id;
  }

  /** Takes an id that is in a list out of it once; the last one comes to stand in its place. */
  drop(list: number, id: number): void {
    const { pool } = this;
    const start = this.starts[list]!; // reached
    const last = start + 1 + pool[start + 1]!;
    pool[pool.lastIndexOf(id, last)] = pool[last]!; // it is in it
    pool[start + 1]! -= 1;
  }

  /** Leaves the first ones of a list only. */
  cut(list: number, size: number): void {
    this.pool[this.starts[list]! + 1] = size; // reached
  }
}

/** The array itself where it has a place of this number, else one that has, with the same in it. */
function reaching(were: Int32Array<ArrayBuffer>, place: number): Int32Array<ArrayBuffer> {
  if (place < were.length) return were;
  const wide = new Int32Array(2 * place);
  wide.set(were);
  return wide;
}
