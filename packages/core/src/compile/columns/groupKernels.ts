import type { Kernel, Outcomes } from "./kernels.ts";

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
