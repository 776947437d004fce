import type { System, Work } from "@trialfit/rules";

/** Parts whose failure, or whose handling, hurts people: fasteners, springs, pressure, fuel, what spins fast. */
export const cautionedParts: ReadonlySet<string> = new Set([
  "rod-bolt",
  "main-fastener",
  "head-fastener",
  "flywheel-fastener",
  "valve-spring",
  "fuel",
  "flywheel",
  "damper",
]);

/** Kinds of work that put hands on a part, or run it. */
export const cautionedWorks: ReadonlySet<Work> = new Set(["assemble", "machine", "operate"]);

/** Systems whose stop rules ask for a number on paper only: nobody touches a part for them. */
export const paperSystems: ReadonlySet<System> = new Set(["targets"]);
