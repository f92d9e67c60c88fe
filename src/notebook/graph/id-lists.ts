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
    if (list < this.starts.length) return;
    const count = Math.max(list + 1, 2 * this.starts.length);
    this.starts = widened(this.starts, count);
    this.sizes = widened(this.sizes, count);
    this.rooms = widened(this.rooms, count);
  }

  /** A copy of one. */
  of(list: number): number[] {
    const start = this.starts[list] ?? 0;
    return [...this.pool.subarray(start, start + (this.sizes[list] ?? 0))];
  }

  push(list: number, id: number): void {
    const size = this.sizes[list]!; // reached
    if (size === this.rooms[list]) this.move(list, Math.max(2, 2 * size));
    this.pool[this.starts[list]! + size] = id;
    this.sizes[list] = size + 1;
  }

  /** Takes an id out once, wherever it stands; the last one comes to stand in its place. */
  drop(list: number, id: number): void {
    const { pool } = this;
    const start = this.starts[list]!; // reached
    const last = start + this.sizes[list]! - 1;
    let at = last;
    while (at >= start && pool[at] !== id) at -= 1;
    if (at < start) return;
    pool[at] = pool[last]!;
    this.sizes[list] = last - start;
  }

  /** Leaves the first ones of a list only. */
  cut(list: number, size: number): void {
    this.sizes[list] = size;
  }

  private move(list: number, room: number): void {
    if (this.end + room > this.pool.length) this.pool = widened(this.pool, 2 * (this.end + room));
    const start = this.starts[list]!; // reached
    this.pool.copyWithin(this.end, start, start + this.sizes[list]!);
    this.starts[list] = this.end;
    this.rooms[list] = room;
    this.end += room;
  }
}

function widened(was: Int32Array<ArrayBuffer>, length: number): Int32Array<ArrayBuffer> {
  const wide = new Int32Array(length);
  wide.set(was);
  return wide;
}
