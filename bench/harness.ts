// Measures a piece of work beside a yardstick, in turns, so that a busy machine slows both alike. Takes functions,
// gives milliseconds and the ratio of the medians; the ratio is what can be compared between machines.

export interface Work {
  readonly name: string;
  /** Gets the number of the round, so that no round can be answered from what another left behind. */
  readonly run: (round: number) => unknown;
  /** What the libraries beneath need for the same job, alone. */
  readonly yardstick: (round: number) => unknown;
  readonly warmUp: number;
  readonly rounds: number;
}

export interface Row {
  readonly name: string;
  readonly median_ms: number;
  readonly min_ms: number;
  readonly max_ms: number;
  readonly ratio: number;
}

export function measured(work: Work): Row {
  const times: number[] = [];
  const yardsticks: number[] = [];
  for (let round = 0; round < work.warmUp + work.rounds; round += 1) {
    const time = milliseconds(() => work.run(round));
    const yardstick = milliseconds(() => work.yardstick(round));
    if (round < work.warmUp) continue;
    times.push(time);
    yardsticks.push(yardstick);
  }
  return {
    name: work.name,
    median_ms: rounded(median(times)),
    min_ms: rounded(Math.min(...times)),
    max_ms: rounded(Math.max(...times)),
    ratio: rounded(median(times) / median(yardsticks)),
  };
}

/** The power with which time grows with size, by least squares on the logarithms. */
export function growthExponent(
  points: readonly { readonly size: number; readonly ms: number }[],
): number {
  const logs = points.map(({ size, ms }) => ({ x: Math.log(size), y: Math.log(ms) }));
  const meanX = logs.reduce((sum, { x }) => sum + x, 0) / logs.length;
  const meanY = logs.reduce((sum, { y }) => sum + y, 0) / logs.length;
  const across = logs.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0);
  const along = logs.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  return rounded(across / along);
}

export const rounded = (value: number): number => Math.round(value * 100) / 100;

function milliseconds(work: () => unknown): number {
  const started = performance.now();
  work();
  return performance.now() - started;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const high = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? high : (high + (sorted[middle - 1] ?? high)) / 2;
}
