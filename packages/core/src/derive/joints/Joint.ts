/** What sets one screwed joint apart from another: words, paths, and the symbols of what is shared between quantities. */
export interface Joint {
  /** Beginning of the ids: `mainFastener…`. */
  readonly prefix: string;
  readonly word: string;
  /** Key of the part that holds the fastener’s fields. */
  readonly part: string;
  /** Index of the symbols. */
  readonly index: string;
  readonly system: "rods" | "fasteners" | "flywheel";
  readonly preload: Reference;
  readonly stressArea: Reference;
  /** Load that opens the joint, on one fastener. */
  readonly load: Reference;
  /** Length of thread and of shank in the grip, where the part says so itself. */
  readonly shank?: { readonly length: Reference; readonly thread: Reference };
}

/** A symbol and the path of what it stands for. */
export type Reference = readonly [symbol: string, path: string];

const rod: Joint = {
  prefix: "rodBolt",
  word: "rod bolt",
  part: "rodBolt",
  index: "b",
  system: "rods",
  preload: ["F_v", "rodBolt.preload"],
  stressArea: ["A_s", "rodBoltStressArea"],
  load: ["F_b", "rodBoltLoad"],
};
const main: Joint = {
  prefix: "mainFastener",
  word: "main fastener",
  part: "mainFastener",
  index: "m",
  system: "fasteners",
  preload: ["F_vm", "mainPreload"],
  stressArea: ["A_m", "mainFastenerStressArea"],
  load: ["F_m", "mainFastenerLoad"],
};
const head: Joint = {
  prefix: "headFastener",
  word: "head fastener",
  part: "headFastener",
  index: "h",
  system: "fasteners",
  preload: ["F_vh", "headPreload"],
  stressArea: ["A_h", "headFastenerStressArea"],
  load: ["F_h", "headFastenerLoad"],
};
const flywheel: Joint = {
  prefix: "flywheelFastener",
  word: "flywheel bolt",
  part: "flywheelFastener",
  index: "f",
  system: "flywheel",
  preload: ["F_vf", "flywheelPreload"],
  stressArea: ["A_f", "flywheelFastenerStressArea"],
  load: ["F_f", "none"],
};

/** The screwed joints of an engine. */
export const joints = { rod, main, head, flywheel } as const;

export type Paths = Readonly<Record<string, string>>;
export type Numbers = Readonly<Record<string, number>>;
