import { choice, count, dimension } from "../fields.ts";
import { part } from "../part.ts";

/** The main bearing caps. */
export const mainCap = part(
  { key: "mainCap", id: "main-cap", label: "Main caps", help: "The main bearing caps." },
  {
    kind: choice({
      label: "Cap kind",
      help: "Where the caps come from.",
      options: {
        original: "as cast or forged by the engine's maker",
        upgraded: "machined steel or stronger replacement caps",
      },
    }),
    boltsPerCap: count({ label: "Fasteners per cap", symbol: "n_c", help: "Counted.", least: 2, most: 6 }),
    registerInterference: dimension({
      label: "Register interference",
      symbol: "delta_r",
      unit: "mm",
      range: ["-0.5 mm", "0.5 mm"],
      tolerance: "0.006",
      help: "How much wider the cap is than its register in the block.",
    }),
  },
);
