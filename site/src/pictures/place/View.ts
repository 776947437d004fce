import type { DrawnBearing } from "../scene/bearingOf.ts";
import type { StackResult } from "../scene/deckStackOf.ts";
import type { JointPart } from "../scene/jointOf.ts";
import type { ValveSide } from "../scene/valveSpringOf.ts";

/** A place in the engine that can be drawn. */
export type View =
  | {
      readonly kind: "mechanism";
      /** Trace whose nearest place is marked, at the angle at which it is nearest; no mark when left out. */
      readonly mark?: string;
      /** Crank angle from firing top dead centre: in degrees, or the quantity that names it. */
      readonly at?: number | string;
    }
  | { readonly kind: "curves"; readonly traces: readonly string[] }
  | { readonly kind: "deck-stack"; readonly result: StackResult }
  | { readonly kind: "joint"; readonly part: JointPart }
  | { readonly kind: "bearing"; readonly which: DrawnBearing }
  | { readonly kind: "valve-spring"; readonly side: ValveSide }
  | { readonly kind: "ring-pack" | "pin" | "throws" | "throw-side" | "flywheel" | "torque" };
