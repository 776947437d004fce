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
