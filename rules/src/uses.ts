/** What an engine is for: many limits follow it. */
export const uses = {
  street: "road use, long life",
  circuit: "circuit and hill-climb racing",
  drag: "short runs at full power",
  endurance: "long races",
  marine: "boats and stationary engines: long hours at high load",
  vintage: "restored engines run gently",
} as const;

export type Use = keyof typeof uses;
