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
  /** Shear strength of the metal into which it is screwed. */
  readonly tapped: Reference;
  /** The part into which it is screwed. */
  readonly into: string;
}

/** A joint that a working load pulls open. */
export interface LoadedJoint extends Joint {
  /** Load on one fastener. */
  readonly load: Reference;
  /** What bends and adds to the pull. */
  readonly prying: string;
}

/** A joint that warms up so much that its preload changes. */
export interface HeatedJoint extends LoadedJoint {
  readonly heat: {
    /** Id of the preload that heat adds. */
    readonly id: string;
    /** What is clamped, as a word. */
    readonly clamped: string;
    readonly expansion: Reference;
    readonly temperature: Reference;
    readonly fastenerTemperature: Reference;
  };
}

/** A symbol and the path of what it stands for. */
export type Reference = readonly [symbol: string, path: string];

const rod: HeatedJoint = {
  prefix: "rodBolt",
  word: "rod bolt",
  part: "rodBolt",
  index: "b",
  system: "rods",
  preload: ["F_v", "rodBolt.preload"],
  stressArea: ["A_s", "rodBoltStressArea"],
  tapped: ["tau_R", "connectingRod.threadShearStrength"],
  into: "rod",
  load: ["F_b", "rodBoltLoad"],
  prying: "prying of a rod cap adds 20 to 50 % to the load",
  heat: {
    id: "rodBoltThermalPreload",
    clamped: "rod",
    expansion: ["alpha_r", "connectingRod.expansion"],
    temperature: ["T_rod", "conditions.rodTemperature"],
    fastenerTemperature: ["T_rod", "conditions.rodTemperature"],
  },
};
const main: LoadedJoint = {
  prefix: "mainFastener",
  word: "main fastener",
  part: "mainFastener",
  index: "m",
  system: "fasteners",
  preload: ["F_vm", "mainPreload"],
  stressArea: ["A_m", "mainFastenerStressArea"],
  tapped: ["tau_B", "block.threadShearStrength"],
  into: "block",
  load: ["F_m", "mainFastenerLoad"],
  prying: "prying of the part adds to the load",
};
const head: HeatedJoint = {
  prefix: "headFastener",
  word: "head fastener",
  part: "headFastener",
  index: "h",
  system: "fasteners",
  preload: ["F_vh", "headPreload"],
  stressArea: ["A_h", "headFastenerStressArea"],
  tapped: ["tau_B", "block.threadShearStrength"],
  into: "block",
  load: ["F_h", "headFastenerLoad"],
  prying: "prying of the part adds to the load",
  heat: {
    id: "headThermalPreload",
    clamped: "head",
    expansion: ["alpha_h", "cylinderHead.expansion"],
    temperature: ["T_h", "conditions.headTemperature"],
    fastenerTemperature: ["T_hs", "conditions.headFastenerTemperature"],
  },
};
const flywheel: Joint = {
  prefix: "flywheelFastener",
  word: "flywheel bolt",
  part: "flywheelFastener",
  index: "f",
  system: "flywheel",
  preload: ["F_vf", "flywheelPreload"],
  stressArea: ["A_f", "flywheelFastenerStressArea"],
  tapped: ["tau_C", "crankshaft.threadShearStrength"],
  into: "crankshaft",
};

/** The screwed joints of an engine. */
export const joints = { rod, main, head, flywheel } as const;

export type Paths = Readonly<Record<string, string>>;
export type Numbers = Readonly<Record<string, number>>;
