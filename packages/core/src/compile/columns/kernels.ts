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
 * are written without branches, which on mixed builds no processor could foretell, and four to a number that is stored.
 */
export interface Outcomes {
  readonly bytes: Uint8Array;
  readonly fours: Int32Array;
}

const foursOf = ({ buffer, byteOffset, byteLength }: Uint8Array) =>
  new Int32Array(buffer, byteOffset, byteLength / 4);

/** Kernels of comparisons with a number. A missing fact may hold and does not surely, by its ends. */
export const numberKernels = {
  greaterThan: ({ low, high, lack }: EndColumns, { fours }: Outcomes, number: number): Kernel => {
    const lacks = foursOf(lack);
    return (count) => {
      for (let at = 0, four = 0; at < count; at += 4, four += 1)
        fours[four] =
          Number(low[at]! > number) |
          (Number(high[at]! > number) << 1) |
          (Number(low[at + 1]! > number) << 8) |
          (Number(high[at + 1]! > number) << 9) |
          (Number(low[at + 2]! > number) << 16) |
          (Number(high[at + 2]! > number) << 17) |
          (Number(low[at + 3]! > number) << 24) |
          (Number(high[at + 3]! > number) << 25) |
          lacks[four]!;
    };
  },
  greaterThanInclusive: ({ low, high, lack }: EndColumns, { fours }: Outcomes, number: number): Kernel => {
    const lacks = foursOf(lack);
    return (count) => {
      for (let at = 0, four = 0; at < count; at += 4, four += 1)
        fours[four] =
          Number(low[at]! >= number) |
          (Number(high[at]! >= number) << 1) |
          (Number(low[at + 1]! >= number) << 8) |
          (Number(high[at + 1]! >= number) << 9) |
          (Number(low[at + 2]! >= number) << 16) |
          (Number(high[at + 2]! >= number) << 17) |
          (Number(low[at + 3]! >= number) << 24) |
          (Number(high[at + 3]! >= number) << 25) |
          lacks[four]!;
    };
  },
  lessThan: ({ low, high, lack }: EndColumns, { fours }: Outcomes, number: number): Kernel => {
    const lacks = foursOf(lack);
    return (count) => {
      for (let at = 0, four = 0; at < count; at += 4, four += 1)
        fours[four] =
          Number(high[at]! < number) |
          (Number(low[at]! < number) << 1) |
          (Number(high[at + 1]! < number) << 8) |
          (Number(low[at + 1]! < number) << 9) |
          (Number(high[at + 2]! < number) << 16) |
          (Number(low[at + 2]! < number) << 17) |
          (Number(high[at + 3]! < number) << 24) |
          (Number(low[at + 3]! < number) << 25) |
          lacks[four]!;
    };
  },
  lessThanInclusive: ({ low, high, lack }: EndColumns, { fours }: Outcomes, number: number): Kernel => {
    const lacks = foursOf(lack);
    return (count) => {
      for (let at = 0, four = 0; at < count; at += 4, four += 1)
        fours[four] =
          Number(high[at]! <= number) |
          (Number(low[at]! <= number) << 1) |
          (Number(high[at + 1]! <= number) << 8) |
          (Number(low[at + 1]! <= number) << 9) |
          (Number(high[at + 2]! <= number) << 16) |
          (Number(low[at + 2]! <= number) << 17) |
          (Number(high[at + 3]! <= number) << 24) |
          (Number(low[at + 3]! <= number) << 25) |
          lacks[four]!;
    };
  },
} as const;

/** Kernels of comparisons of two facts, or of a fact with a limit that depends on the build. */
export const pairKernels: Readonly<
  Record<keyof typeof numberKernels, (left: EndColumns, into: Outcomes, right: EndColumns) => Kernel>
> = {
  greaterThan: (left, { bytes }, right) => {
    const { low, high, lack } = left;
    const { low: least, high: most, lack: lacks } = right;
    return (count) => {
      for (let at = 0; at < count; at += 1) {
        const surely = Number(low[at]! > most[at]!);
        const possibly = Number(high[at]! > least[at]!);
        bytes[at] = surely | (possibly << 1) | ((lack[at]! | lacks[at]!) & ((surely ^ possibly) << 2));
      }
    };
  },
  greaterThanInclusive: (left, { bytes }, right) => {
    const { low, high, lack } = left;
    const { low: least, high: most, lack: lacks } = right;
    return (count) => {
      for (let at = 0; at < count; at += 1) {
        const surely = Number(low[at]! >= most[at]!);
        const possibly = Number(high[at]! >= least[at]!);
        bytes[at] = surely | (possibly << 1) | ((lack[at]! | lacks[at]!) & ((surely ^ possibly) << 2));
      }
    };
  },
  lessThan: (left, into, right) => pairKernels.greaterThan(right, into, left),
  lessThanInclusive: (left, into, right) => pairKernels.greaterThanInclusive(right, into, left),
};

/** Whether words are among some. @param outcomes by the number of the word: what the comparison comes to */
export function wordKernel({ low }: EndColumns, { bytes }: Outcomes, outcomes: Uint8Array): Kernel {
  return (count) => {
    for (let at = 0; at < count; at += 1) bytes[at] = outcomes[low[at]!]!;
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
