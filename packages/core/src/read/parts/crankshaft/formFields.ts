import type { PositionKind } from "../../FieldSpec.ts";
import { dimension } from "../../fields.ts";

const form = (per: PositionKind, label: string, symbol: string, help: string) =>
  dimension({
    label,
    symbol,
    unit: "mm",
    per,
    measureBy: "trial-assembly",
    range: ["0 mm", "0.5 mm"],
    tolerance: "0.001",
    help,
  });

/** How true the journals are, and how straight the crankshaft. */
export const formFields = {
  mainJournalTaper: form(
    "main",
    "Taper of the main journals",
    "k_m",
    "Largest difference of diameter between the two ends of one main journal; of all journals the worst.",
  ),
  mainJournalOutOfRound: form(
    "main",
    "Out-of-round of the main journals",
    "o_m",
    "Largest difference of two diameters at right angles, at one place of a main journal; of all journals the worst.",
  ),
  crankpinTaper: form(
    "crankpin",
    "Taper of the crankpins",
    "k_p",
    "Largest difference of diameter between the two ends of one crankpin; of all crankpins the worst.",
  ),
  crankpinOutOfRound: form(
    "crankpin",
    "Out-of-round of the crankpins",
    "o_p",
    "Largest difference of two diameters at right angles, at one place of a crankpin; of all crankpins the worst.",
  ),
  runout: dimension({
    label: "Run-out of the crankshaft",
    symbol: "e_ro",
    unit: "mm",
    measureBy: "trial-assembly",
    range: ["0 mm", "1 mm"],
    tolerance: "0.002",
    help: "Full reading of an indicator on the middle main journal in one turn, the crankshaft lying on its outer journals in V-blocks.",
  }),
};
