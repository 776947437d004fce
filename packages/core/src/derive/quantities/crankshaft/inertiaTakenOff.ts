import { inertiaChange } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const inertiaTakenOff = quantity({
  id: "inertiaTakenOff",
  name: "Inertia taken off",
  symbol: "Delta_J",
  unit: "kg m2",
  decimals: 5,
  system: "crankshaft",
  meaning:
    "How much less inertia crankshaft and flywheel have after mass came off at a radius: far out counts with the square.",
  inputs: { m_off: "crankshaft.massRemoved", R_off: "crankshaft.removalRadius" },
  formula: "m_off * R_off^2",
  compute: ({ m_off, R_off }) => inertiaChange({ massChange: m_off, radius: R_off }),
  shape: "monotone",
  valid: "mass close to one radius",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_off: "500 g", R_off: "72 mm" }, expect: "0.00259 kg m2" }],
  display: true,
});
