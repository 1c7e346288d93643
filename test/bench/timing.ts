/**
 * Timing for the benchmark: contestants take turns after a warm-up, medians are quoted with the spread.
 */
export interface Row {
  readonly what: string;
  readonly medianUs: number;
  readonly lowUs: number;
  readonly highUs: number;
  readonly note: string;
}

export interface Contestant {
  /** Calls timed together: short ones need several. */
  readonly calls: number;
  readonly call: () => unknown;
}

/** The middle one of some times. */
export function median(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)]!;
}

/** Times several contestants in turn; returns microseconds a call, run by run. */
export function inTurn(runs: number, contestants: readonly Contestant[]): number[][] {
  const times = contestants.map((): number[] => []);
  for (let run = -2; run < runs; run++) {
    contestants.forEach(({ calls, call }, i) => {
      const from = performance.now();
      for (let c = 0; c < calls; c++) call();
      if (run >= 0) times[i]!.push(((performance.now() - from) * 1000) / calls);
    });
  }
  return times;
}

/** A row of the table. */
export function row(what: string, times: readonly number[], note: string): Row {
  return { what, medianUs: median(times), lowUs: Math.min(...times), highUs: Math.max(...times), note };
}

/** How many times slower, in words: by the lowest times, which a busy machine disturbs least. */
export function ratio(slow: readonly number[], fast: readonly number[]): string {
  const times = Math.min(...slow) / Math.min(...fast);
  return `${times < 10 ? times.toFixed(1) : Math.round(times)} times`;
}

/** A time as it is read. */
export function said(us: number): string {
  if (us < 1000) return `${us.toFixed(1)} µs`;
  return us < 1e6 ? `${(us / 1000).toFixed(1)} ms` : `${(us / 1e6).toFixed(2)} s`;
}
