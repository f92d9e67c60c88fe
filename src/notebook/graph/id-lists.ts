/**
 * Many short lists of ids, all in one array: what is gone through together lies together, which is what going through
 * thousands of them costs. A list that outgrows its room moves to the end, to twice the room, so that what is left
 * behind never comes to more than what is in use.
 */
export class IdLists {
  /** All lists; one begins at its start and has its size. */
  pool = new Int32Array(256);
  starts = new Int32Array(64);
  sizes = new Int32Array(64);
  private rooms = new Int32Array(64);
  private end = 0;

  /** Makes room for lists up to this number; each begins empty. */
  reach(list: number): void {
    this.starts = reaching(this.starts, list);
    this.sizes = reaching(this.sizes, list);
    this.rooms = reaching(this.rooms, list);
  }

  /** A copy of one; empty where none was made. */
  of(list: number): Int32Array {
    const start = this.starts[list] ?? 0;
    return this.pool.slice(start, start + (this.sizes[list] ?? 0));
  }

  push(list: number, id: number): void {
    const size = this.sizes[list]!; // reached
    if (size === this.rooms[list]) this.move(list, 2 * size || 2);
    this.pool[this.starts[list]! + size] = id;
    this.sizes[list] = size + 1;
  }

  /** Takes an id that is in a list out of it once; the last one comes to stand in its place. */
  drop(list: number, id: number): void {
    const start = this.starts[list]!; // reached
    const last = start + this.sizes[list]! - 1;
    this.pool[this.pool.lastIndexOf(id, last)] = this.pool[last]!; // it is in it
    this.sizes[list] = last - start;
  }

  private move(list: number, room: number): void {
    const start = this.starts[list]!; // reached
    this.pool = reaching(this.pool, this.end + room);
    this.pool.copyWithin(this.end, start, start + this.sizes[list]!);
    this.starts[list] = this.end;
    this.rooms[list] = room;
    this.end += room;
  }
}

/** The array itself where it has a place of this number, else one that has, with the same in it. */
function reaching(were: Int32Array<ArrayBuffer>, place: number): Int32Array<ArrayBuffer> {
  if (place < were.length) return were;
  const wide = new Int32Array(2 * place);
  wide.set(were);
  return wide;
}
