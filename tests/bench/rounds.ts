/** Something to be timed. */
export interface Timed {
  readonly name: string;
  /** Builds that one run judges. */
  readonly builds: number;
  /** @param round from 0, to take other builds each time */
  readonly run: (round: number) => unknown;
}

/** What came of it: medians over all rounds. */
export interface Measured {
  readonly name: string;
  /** Builds judged in a second of processor time. */
  readonly perSecond: number;
  /** How many times as many as the first: the median of the ratios within one round. */
  readonly ratio: number;
}

export function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}

/** Seconds of processor time of this process: other programs on the machine do not count. */
async function processorTime(run: () => unknown): Promise<number> {
  const before = process.cpuUsage();
  await run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

/** Repetitions that make one measurement long enough for the clock of the processor. */
const LEAST_SECONDS = 0.05;

/** Times all of them round after round, so that whatever disturbs a round disturbs all of them. */
export async function interleaved(all: readonly Timed[], rounds: number): Promise<readonly Measured[]> {
  const repeats: number[] = [];
  for (const { run } of all) {
    let count = 1;
    // The first runs also let the compiler finish its work.
    for (let seconds = 0; seconds < LEAST_SECONDS; ) {
      seconds = await processorTime(async () => {
        for (let n = 0; n < count; n += 1) await run(n);
      });
      if (seconds < LEAST_SECONDS)
        count = Math.ceil(count * Math.min(10, (1.3 * LEAST_SECONDS) / Math.max(seconds, 1e-4)));
    }
    repeats.push(count);
  }
  const rates: number[][] = all.map(() => []);
  for (let round = 0; round < rounds; round += 1)
    for (const [index, { builds, run }] of all.entries()) {
      const count = repeats[index]!;
      const seconds = await processorTime(async () => {
        for (let n = 0; n < count; n += 1) {
          const done = run(round * count + n);
          if (done instanceof Promise) await done;
        }
      });
      rates[index]!.push((builds * count) / seconds);
    }
  return all.map(({ name }, index) => ({
    name,
    perSecond: median(rates[index]!),
    ratio: median(rates[index]!.map((rate, round) => rate / rates[0]![round]!)),
  }));
}
