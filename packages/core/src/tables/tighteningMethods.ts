/** A way of tightening and how far preload scatters with it. */
export interface TighteningMethod {
  readonly name: string;
  /** Greatest over least preload, with its spread, as the build file writes it. */
  readonly factor: string;
  readonly because: string;
}

/** Ways of tightening. Source: VDI 2230-1, table of tightening factors, from memory. */
export const tighteningMethods: Readonly<Record<string, TighteningMethod>> = {
  stretch: {
    name: "by measured stretch",
    factor: "1.15 ± 0.05",
    because: "measured stretch scatters by 1.1 to 1.2 (from memory, VDI 2230)",
  },
  angle: {
    name: "by a snug torque and an angle",
    factor: "1.3 ± 0.1",
    because: "torque and angle scatter by 1.2 to 1.4 (from memory, VDI 2230)",
  },
  yield: {
    name: "to yield, of a fastener made for it, as its sheet says",
    factor: "1.3 ± 0.1",
    because: "tightening to yield scatters by 1.2 to 1.4 (from memory, VDI 2230)",
  },
  torque: {
    name: "by torque wrench with the friction of a tested lubricant",
    factor: "1.5 ± 0.1",
    because: "a torque wrench with tested friction scatters by 1.4 to 1.6 (from memory, VDI 2230)",
  },
  guessed: {
    name: "by torque wrench with a friction that is guessed",
    factor: "1.9 ± 0.3",
    because: "a torque wrench with guessed friction scatters by 1.6 to 2.2 (from memory, VDI 2230)",
  },
  impact: {
    name: "by impact wrench",
    factor: "3.2 ± 0.7",
    because: "impact wrenches scatter by 2.5 to 4 (from memory, VDI 2230)",
  },
};
