/** Works through the first builds of a block. @param count how many builds */
export type Kernel = (count: number) => void;

/** Ends of bands of one fact or limit, one entry a build. */
export interface EndColumns {
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly lack: Uint8Array;
}

/**
 * What a condition comes to, one entry a build: the bits of `Outcome`, as bytes and as four bytes at once. Comparisons
 * are written without branches: on mixed builds no branch could be foretold.
 */
export interface Outcomes {
  readonly bytes: Uint8Array;
  readonly fours: Int32Array;
}

const bit = (holds: boolean): number => (holds ? 1 : 0);

/** Kernels of comparisons with a number. A missing fact may hold and does not surely, by its ends. */
export const numberKernels = {
  greaterThan:
    ({ low, high, lack }: EndColumns, { bytes }: Outcomes, number: number): Kernel =>
    (count) => {
      for (let at = 0; at < count; at += 1)
        bytes[at] = bit(low[at]! > number) | (bit(high[at]! > number) << 1) | lack[at]!;
    },
  greaterThanInclusive:
    ({ low, high, lack }: EndColumns, { bytes }: Outcomes, number: number): Kernel =>
    (count) => {
      for (let at = 0; at < count; at += 1)
        bytes[at] = bit(low[at]! >= number) | (bit(high[at]! >= number) << 1) | lack[at]!;
    },
  lessThan:
    ({ low, high, lack }: EndColumns, { bytes }: Outcomes, number: number): Kernel =>
    (count) => {
      for (let at = 0; at < count; at += 1)
        bytes[at] = bit(high[at]! < number) | (bit(low[at]! < number) << 1) | lack[at]!;
    },
  lessThanInclusive:
    ({ low, high, lack }: EndColumns, { bytes }: Outcomes, number: number): Kernel =>
    (count) => {
      for (let at = 0; at < count; at += 1)
        bytes[at] = bit(high[at]! <= number) | (bit(low[at]! <= number) << 1) | lack[at]!;
    },
} as const;

/** Kernels of comparisons of two facts, or of a fact with a limit that depends on the build. */
export const pairKernels: Readonly<
  Record<keyof typeof numberKernels, (left: EndColumns, into: Outcomes, right: EndColumns) => Kernel>
> = {
  greaterThan:
    (left: EndColumns, { bytes }: Outcomes, right: EndColumns): Kernel =>
    (count) => {
      const { low, high, lack } = left;
      const { low: least, high: most, lack: lacks } = right;
      for (let at = 0; at < count; at += 1) {
        const surely = bit(low[at]! > most[at]!);
        const possibly = bit(high[at]! > least[at]!);
        bytes[at] = surely | (possibly << 1) | ((lack[at]! | lacks[at]!) & ((surely ^ possibly) << 2));
      }
    },
  greaterThanInclusive:
    (left: EndColumns, { bytes }: Outcomes, right: EndColumns): Kernel =>
    (count) => {
      const { low, high, lack } = left;
      const { low: least, high: most, lack: lacks } = right;
      for (let at = 0; at < count; at += 1) {
        const surely = bit(low[at]! >= most[at]!);
        const possibly = bit(high[at]! >= least[at]!);
        bytes[at] = surely | (possibly << 1) | ((lack[at]! | lacks[at]!) & ((surely ^ possibly) << 2));
      }
    },
  lessThan: (left: EndColumns, into: Outcomes, right: EndColumns) =>
    pairKernels.greaterThan(right, into, left),
  lessThanInclusive: (left: EndColumns, into: Outcomes, right: EndColumns) =>
    pairKernels.greaterThanInclusive(right, into, left),
};

/** Whether words are among some. @param outcomes by the number of the word: what the comparison comes to */
export function wordKernel({ low, lack }: EndColumns, { bytes }: Outcomes, outcomes: Uint8Array): Kernel {
  return (count) => {
    // A missing word stands at −∞, which is no place in the list.
    for (let at = 0; at < count; at += 1) bytes[at] = lack[at] !== 0 ? 6 : outcomes[low[at]!]!;
  };
}

/** The first bit of each of four bytes. */
const ONES = 0x01010101;

/** Every one of some conditions, four builds at once. */
export function allKernel(children: readonly Outcomes[], { fours }: Outcomes): Kernel {
  const [first, ...others] = children.map((child) => child.fours) as [Int32Array, ...Int32Array[]];
  return (count) => {
    for (let at = 0; at < count / 4; at += 1) {
      let both = first[at]!;
      let either = both;
      for (let child = 0; child < others.length; child += 1) {
        const other = others[child]![at]!;
        both &= other;
        either |= other;
      }
      const surely = both & ONES;
      const possibly = (both >>> 1) & ONES;
      fours[at] = surely | (possibly << 1) | (either & ((surely ^ possibly) << 2));
    }
  };
}

/** Any of some conditions, four builds at once. */
export function anyKernel(children: readonly Outcomes[], { fours }: Outcomes): Kernel {
  const [first, ...others] = children.map((child) => child.fours) as [Int32Array, ...Int32Array[]];
  return (count) => {
    for (let at = 0; at < count / 4; at += 1) {
      let either = first[at]!;
      for (let child = 0; child < others.length; child += 1) either |= others[child]![at]!;
      const surely = either & ONES;
      const possibly = (either >>> 1) & ONES;
      fours[at] = surely | (possibly << 1) | (either & ((surely ^ possibly) << 2));
    }
  };
}

/** One case of a limit: what its condition comes to, and the value that the limit then has. */
export interface CaseColumn {
  readonly when: Outcomes;
  readonly value: number;
}

/** The value of a limit: that of the first case that surely stands, or the band over every one that may. */
export function limitKernel(cases: readonly CaseColumn[], otherwise: number, into: EndColumns): Kernel {
  const whens = cases.map(({ when }) => when.bytes);
  const values = Float64Array.from(cases, ({ value }) => value);
  const { low, high, lack } = into;
  return (count) => {
    for (let at = 0; at < count; at += 1) {
      let [least, most, lacks] = [Infinity, -Infinity, 0];
      let settled = 0;
      for (let index = 0; index < values.length && settled === 0; index += 1) {
        const outcome = whens[index]![at]!;
        if (outcome === 0) continue;
        least = Math.min(least, values[index]!);
        most = Math.max(most, values[index]!);
        lacks |= outcome & 4;
        settled = outcome & 1;
      }
      low[at] = settled === 1 ? least : Math.min(least, otherwise);
      high[at] = settled === 1 ? most : Math.max(most, otherwise);
      lack[at] = lacks;
    }
  };
}

/** The verdicts of a rule, as codes, from what `when` and `requires` come to; four builds at once. */
export function verdictKernel(when: Outcomes | undefined, requires: Outcomes, into: Int32Array): Kernel {
  const met = requires.fours;
  const relevant = when?.fours;
  return (count) => {
    for (let at = 0; at < count / 4; at += 1) {
      const needs = met[at]!;
      const stands = relevant === undefined ? 3 * ONES : relevant[at]!;
      const may = (stands >>> 1) & ONES;
      const holds = may & needs;
      const fails = stands & ~(needs >>> 1) & ONES;
      const unsettled = may & ~(holds | fails);
      const lacking = ((stands | needs) >>> 2) & unsettled;
      into[at] = (holds & ONES) | (fails << 2) | (unsettled << 1) | lacking;
    }
  };
}
