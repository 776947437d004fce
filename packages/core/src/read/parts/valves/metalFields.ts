import { dimension } from "../../fields.ts";

/** Thermal expansion of valves of which nothing is known, by side: value and reason. */
const usualExpansion = {
  i: [
    "12.5 um/(m K) ± 1.5",
    "martensitic valve steels have 11 to 14 µm/(m K); a titanium valve has about 9 (from memory)",
  ],
  e: [
    "16 um/(m K) ± 3",
    "austenitic valve steels have 16 to 19, martensitic ones 11 to 14 µm/(m K) (from memory)",
  ],
} as const;

/** How valve and guide grow with heat. @param side index of the symbols */
export function metalFields(side: "i" | "e") {
  const [value, because] = usualExpansion[side];
  const shared = { unit: "um/(m K)", range: ["3 um/(m K)", "30 um/(m K)"], tolerance: "5 %" } as const;
  return {
    expansion: dimension(
      {
        ...shared,
        label: "Valve expansion",
        symbol: `alpha_v${side}`,
        help: "Thermal expansion of the valve’s steel, as a mean from 20 °C to where it runs; from the material’s sheet.",
        assumed: { value, because },
      },
      "assumed",
    ),
    guideExpansion: dimension(
      {
        ...shared,
        label: "Guide expansion",
        symbol: `alpha_gd${side}`,
        help: "Thermal expansion of the valve guide’s material, as a mean from 20 °C to where it runs.",
        assumed: {
          value: "14.5 um/(m K) ± 4",
          because: "iron guides have about 11, bronze ones 17 to 18.5 µm/(m K) (from memory)",
        },
      },
      "assumed",
    ),
  };
}
