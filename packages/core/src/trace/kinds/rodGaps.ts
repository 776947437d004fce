import { buildOutline, cylinderObstacle, type RodContact, rodContactOver } from "@trialfit/mechanics";
import type { FixedObstacle } from "../../derive/clearances/RodObstacle.ts";
import { camshaftEnvelope, panRail, squirter } from "../../derive/clearances/rodObstacles.ts";
import type { Quantity } from "../../derive/Quantity.ts";
import { rodToCamshaft } from "../../derive/quantities/clearances/rodToCamshaft.ts";
import { rodToCylinderClearance } from "../../derive/quantities/clearances/rodToCylinderClearance.ts";
import { rodToPanRail } from "../../derive/quantities/clearances/rodToPanRail.ts";
import { rodToSquirter } from "../../derive/quantities/clearances/rodToSquirter.ts";
import { outlineVertices, rodSweep, type rodSweepInputs } from "../../derive/rodSweep.ts";
import { asksLike, type Taken, type TraceKind } from "../TraceKind.ts";
import { crankOf } from "./motion.ts";

type Contact = (taken: Taken, tilts?: readonly number[]) => (angle: number) => RodContact;

/** A distance from the rod by crank angle; the uncertainty of its outline comes off, as in the catalog. */
function rodGap(id: string, words: string, quantity: Quantity, contact: Contact): TraceKind {
  return {
    ...asksLike(quantity),
    id,
    name: quantity.name,
    meaning: `Least distance between the big end of the connecting rod and ${words} at each crank angle; negative when they strike.`,
    unit: quantity.unit,
    decimals: quantity.decimals,
    turns: 1,
    from: "firing",
    over: (taken) => {
      const at = contact(taken);
      return (angle) => at(angle).clearance - taken.numbers.t_o!;
    },
    contact,
    extremes: [{ take: "least", of: quantity.id }],
  };
}

function toObstacle(obstacle: FixedObstacle): Contact {
  return (taken, tilts) =>
    rodContactOver({
      crank: crankOf(taken),
      outline: buildOutline(outlineVertices(taken.tables.outline!)),
      obstacle: obstacle.metal(taken.numbers, tilts),
    });
}

export const rodToCylinderGap = rodGap(
  "rodToCylinderGap",
  "the lower edge of its cylinder",
  rodToCylinderClearance,
  ({ numbers, tables }) => {
    const geometry = rodSweep(numbers as Record<keyof typeof rodSweepInputs, number>, tables.outline!);
    const { p_n, q_n, W_n, r_n } = numbers;
    const notch = { depth: p_n!, height: q_n!, width: W_n!, cornerRadius: r_n! };
    return rodContactOver({ ...geometry, obstacle: cylinderObstacle({ ...geometry, notch }) });
  },
);
export const rodToPanRailGap = rodGap("rodToPanRailGap", panRail.words, rodToPanRail, toObstacle(panRail));
export const rodToCamshaftGap = rodGap(
  "rodToCamshaftGap",
  camshaftEnvelope.words,
  rodToCamshaft,
  toObstacle(camshaftEnvelope),
);
export const rodToSquirterGap = rodGap(
  "rodToSquirterGap",
  squirter.words,
  rodToSquirter,
  toObstacle(squirter),
);
