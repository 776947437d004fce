import { oilTemperatureRise } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Bearing, Numbers, Paths } from "./Bearing.ts";

interface TemperatureRise {
  /** Flows that carry the heat: symbol, path, example. */
  readonly flows: readonly (readonly [symbol: string, path: string, example: string])[];
  readonly meaning: string;
  readonly expect: string;
}

/** Declares by how much the oil warms up in a bearing. */
export function temperatureRise(bearing: Bearing, { flows, meaning, expect }: TemperatureRise) {
  const { prefix, word, index } = bearing;
  const P = `P_f${index}`;
  const symbols = flows.map(([symbol]) => symbol);
  return quantity({
    id: `${prefix}TemperatureRise`,
    name: `Heating of the oil in a ${word}`,
    symbol: `Delta_T_${index}`,
    unit: "K",
    decimals: 0,
    system: "bearings",
    meaning,
    inputs: {
      [P]: `${prefix}Friction`,
      ...Object.fromEntries(flows.map(([symbol, path]) => [symbol, path])),
      rho_o: "oil.density",
      c_o: "oil.heatCapacity",
    } as Paths,
    formula: `${P} / (rho_o * c_o * (${symbols.join(" + ")}))`,
    compute: (n: Numbers) =>
      oilTemperatureRise({
        frictionPower: n[P]!,
        flow: symbols.reduce((sum, symbol) => sum + n[symbol]!, 0),
        density: n.rho_o!,
        heatCapacity: n.c_o!,
      }),
    shape: "guarded",
    valid: "upper bound",
    sources: [{ id: "shigley", where: "journal bearings" }],
    examples: [
      {
        given: {
          [P]: "400 W",
          ...Object.fromEntries(flows.map(([symbol, , example]) => [symbol, example])),
          rho_o: "800 kg/m3",
          c_o: "2100 J/(kg K)",
        },
        expect,
      },
    ],
    display: true,
  });
}
