import { crushFitPressure, hotInterferenceChange } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../tables/referenceTemperature.ts";
import { STEEL } from "../../tables/usualMetals.ts";
import { pressFitFormula } from "../pressFitFormula.ts";
import { quantity } from "../Quantity.ts";
import { type Bearing, HOUSING_POISSON, housingExpansions, type Numbers, type Paths } from "./Bearing.ts";

interface FitPressure {
  readonly state: "cold" | "hot";
  readonly expect: string;
}

/** Declares the pressure of the shells on a housing that gives way, cold or at full load. */
export function fitPressure(bearing: Bearing, { state, expect }: FitPressure) {
  const { prefix, word, part, index, housing, outside, modulus, temperature } = bearing;
  const [H, O, E, T] = [housing[0], outside[0], modulus[0], temperature[0]];
  const grows = housingExpansions(bearing);
  const isHot = state === "hot";
  return quantity({
    id: `${prefix}FitPressure${isHot ? "Hot" : ""}`,
    name: `Seat pressure of a ${word} shell, housing giving way${isHot ? ", hot" : ""}`,
    symbol: `p_e${index}${isHot ? "h" : ""}`,
    unit: "MPa",
    decimals: 2,
    system: "bearings",
    meaning: isHot
      ? `Pressure by which crush still holds the ${word} shells at full load. An aluminium housing grows away from steel shells; 0 when they lie loose.`
      : `Pressure with which the ${word} shells press on their housing by crush, the shells squeezed and the housing stretched: less than on a stiff one.`,
    inputs: {
      a_c: `${part}.crush`,
      [H]: housing[1],
      [O]: outside[1],
      t_s: `${part}.wall`,
      [E]: modulus[1],
      ...(isHot ? { ...grows.paths, [T]: temperature[1], T_sh: "conditions.shellTemperature" } : {}),
    } as Paths,
    formula: pressFitFormula({
      interference: isHot
        ? `max(0, 2 * a_c / pi + ${H} * (${STEEL.expansionText} * (T_sh - ${REFERENCE_TEMPERATURE}) - ${grows.formula} * (${T} - ${REFERENCE_TEMPERATURE})))`
        : "2 * a_c / pi",
      diameter: H,
      outerDiameter: O,
      innerBore: `${H} - 2 * t_s`,
      outer: { modulus: E, poissonRatio: HOUSING_POISSON },
      inner: { modulus: STEEL.modulusText, poissonRatio: STEEL.poissonRatio },
    }),
    compute: (n: Numbers) =>
      crushFitPressure({
        crush: n.a_c!,
        housingBore: n[H]!,
        housingOuterDiameter: n[O]!,
        shellWall: n.t_s!,
        housing: { elasticModulus: n[E]!, poissonRatio: HOUSING_POISSON },
        shell: STEEL,
        interferenceChange: isHot
          ? hotInterferenceChange({
              housingBore: n[H]!,
              shellExpansion: STEEL.expansion,
              shellRise: n.T_sh! - REFERENCE_TEMPERATURE,
              housingExpansion: grows.of(n),
              housingRise: n[T]! - REFERENCE_TEMPERATURE,
            })
          : 0,
      }),
    // Without interference left it stays at 0.
    shape: "guarded",
    valid: `a housing as stiff all round as the ring that is entered, its give that of ${isHot ? "one metal; block and cap grow half and half" : "one metal"}`,
    sources: [
      { id: "shigley", where: "press and shrink fits" },
      { id: "from-memory", where: "steel of the shells" },
    ],
    examples: [
      {
        given: {
          a_c: "0.045 mm",
          [H]: "51 mm",
          [O]: "66 mm",
          t_s: "1.472 mm",
          [E]: "206 GPa",
          ...(isHot ? { ...grows.example("14e-6 1/K"), [T]: "110 degC", T_sh: "115 degC" } : {}),
        },
        expect,
      },
    ],
    display: true,
  });
}
