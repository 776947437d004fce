import { vehicleMass } from "../../vehicleMass.ts";

export const vehicleMassSaved = vehicleMass({
  id: "vehicleMassSaved",
  name: "Vehicle mass saved by a lighter crankshaft",
  symbol: "m_vs",
  meaning:
    "Mass of the vehicle that the inertia taken off is worth in the gear looked at: what a lighter crankshaft changes, and in a high gear how little.",
  inertia: ["Delta_J", "inertiaTakenOff"],
  example: ["0.00259 kg m2", "2.9 kg"],
});
