import { quantity } from "../Quantity.ts";
import { type Bearing, headed, type Numbers, type Paths } from "./Bearing.ts";

/** Declares the hot oil clearance of a bearing over its journal. */
export function clearanceRatioHot(bearing: Bearing) {
  const { prefix, index, hot, journal } = bearing;
  const [C, D] = [hot[0], journal[0]];
  return quantity({
    id: `${prefix}ClearanceRatioHot`,
    name: `${headed(bearing)} clearance over journal, hot`,
    symbol: `psi_${index}h`,
    unit: "1",
    decimals: 5,
    system: "bearings",
    meaning:
      "Oil clearance at full load as a share of the journal’s diameter: what the film, its flow and its friction follow.",
    inputs: { [C]: hot[1], [D]: journal[1] } as Paths,
    formula: `${C} / ${D}`,
    compute: (n: Numbers) => n[C]! / n[D]!,
    shape: "monotone",
    valid: "as the hot clearance",
    sources: [{ id: "definition" }],
    examples: [{ given: { [C]: "0.06 mm", [D]: "48 mm" }, expect: "0.00125" }],
    display: true,
  });
}
