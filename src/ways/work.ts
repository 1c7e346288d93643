/**
 * How much looking a search for ways out may do, counted in states judged, so that the answer does not hang on the machine.
 * A state is one bend with one end clamped after some bends; about a third of a microsecond each where many share a side.
 */

export class Work {
  private spent = 0;

  constructor(private readonly most = Number.POSITIVE_INFINITY) {}

  spend(states: number): void {
    this.spent += states;
  }

  get isDone(): boolean {
    return this.spent >= this.most;
  }

  get left(): number {
    return Math.max(0, this.most - this.spent);
  }
}
