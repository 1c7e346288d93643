/**
 * A queue that gives the widest entry first, of equally wide ones the deepest, of these the first put in.
 * A binary heap over plain arrays; an entry is a number that its user understands.
 */
export class WidestFirst {
  private readonly widths: number[] = [];
  private readonly depths: number[] = [];
  private readonly turns: number[] = [];
  private readonly entries: number[] = [];
  private turn = 0;

  get size(): number {
    return this.entries.length;
  }

  put(entry: number, width: number, depth: number): void {
    let at = this.entries.length;
    this.turn++;
    this.move(at, width, depth, this.turn, entry);
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (!this.before(at, up)) return;
      this.swap(at, up);
      at = up;
    }
  }

  /** Takes the first entry out; the queue must not be empty. */
  take(): number {
    const first = this.entries[0]!;
    const last = this.entries.length - 1;
    this.swap(0, last);
    for (const list of [this.widths, this.depths, this.turns, this.entries]) list.pop();
    let at = 0;
    for (;;) {
      let next = 2 * at + 1;
      if (next >= last) return first;
      if (next + 1 < last && this.before(next + 1, next)) next++;
      if (!this.before(next, at)) return first;
      this.swap(at, next);
      at = next;
    }
  }

  private before(a: number, b: number): boolean {
    const [wa, wb] = [this.widths[a]!, this.widths[b]!];
    if (wa !== wb) return wa > wb;
    const [da, db] = [this.depths[a]!, this.depths[b]!];
    return da !== db ? da > db : this.turns[a]! < this.turns[b]!;
  }

  private move(at: number, width: number, depth: number, turn: number, entry: number): void {
    this.widths[at] = width;
    this.depths[at] = depth;
    this.turns[at] = turn;
    this.entries[at] = entry;
  }

  private swap(a: number, b: number): void {
    const [width, depth, turn, entry] = [this.widths[a]!, this.depths[a]!, this.turns[a]!, this.entries[a]!];
    this.move(a, this.widths[b]!, this.depths[b]!, this.turns[b]!, this.entries[b]!);
    this.move(b, width, depth, turn, entry);
  }
}
