/**
 * A queue that gives the widest entry first, of equally wide ones the deepest, of these the first put in.
 * A binary heap over typed arrays; an entry is a number that its user understands.
 */
export class WidestFirst {
  size = 0;
  private widths = new Float64Array(64);
  private depths = new Uint8Array(64);
  private turns = new Int32Array(64);
  private entries = new Int32Array(64);
  private turn = 0;

  put(entry: number, width: number, depth: number): void {
    if (this.size === this.entries.length) this.grow();
    const turn = this.turn++;
    let at = this.size++;
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (!this.before(width, depth, turn, up)) break;
      this.copy(up, at);
      at = up;
    }
    this.set(at, entry, width, depth, turn);
  }

  /** How wide and deep the first entry is; the queue must not be empty. */
  get first(): { readonly width: number; readonly depth: number } {
    return { width: this.widths[0]!, depth: this.depths[0]! };
  }

  /** Takes the first entry out; the queue must not be empty. */
  take(): number {
    const first = this.entries[0]!;
    const last = --this.size;
    const [entry, width] = [this.entries[last]!, this.widths[last]!];
    const [depth, turn] = [this.depths[last]!, this.turns[last]!];
    let at = 0;
    for (;;) {
      let next = 2 * at + 1;
      if (next >= last) break;
      const other = next + 1;
      if (other < last && this.before(this.widths[other]!, this.depths[other]!, this.turns[other]!, next)) {
        next = other;
      }
      if (this.before(width, depth, turn, next)) break;
      this.copy(next, at);
      at = next;
    }
    this.set(at, entry, width, depth, turn);
    return first;
  }

  /** Whether an entry comes before the one at a place. */
  private before(width: number, depth: number, turn: number, at: number): boolean {
    const other = this.widths[at]!;
    if (width !== other) return width > other;
    const otherDepth = this.depths[at]!;
    return depth !== otherDepth ? depth > otherDepth : turn < this.turns[at]!;
  }

  private set(at: number, entry: number, width: number, depth: number, turn: number): void {
    this.entries[at] = entry;
    this.widths[at] = width;
    this.depths[at] = depth;
    this.turns[at] = turn;
  }

  private copy(from: number, to: number): void {
    this.set(to, this.entries[from]!, this.widths[from]!, this.depths[from]!, this.turns[from]!);
  }

  private grow(): void {
    const room = 2 * this.entries.length;
    const [widths, depths] = [new Float64Array(room), new Uint8Array(room)];
    const [turns, entries] = [new Int32Array(room), new Int32Array(room)];
    widths.set(this.widths);
    depths.set(this.depths);
    turns.set(this.turns);
    entries.set(this.entries);
    [this.widths, this.depths, this.turns, this.entries] = [widths, depths, turns, entries];
  }
}
