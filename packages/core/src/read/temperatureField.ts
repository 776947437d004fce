import { dimension } from "./fields.ts";

interface TemperatureField {
  readonly label: string;
  readonly symbol: string;
  readonly help: string;
  /** Taken when none is given, and why. */
  readonly usual: readonly [value: string, because: string];
  readonly range?: readonly [string, string];
  readonly tolerance?: string;
}

/** The temperature of one part, of the air or of the oil: seldom measured, so there is always a usual one. */
export function temperatureField({ usual: [value, because], ...own }: TemperatureField) {
  const spec = { unit: "degC", range: ["-40 degC", "600 degC"], tolerance: "20", ...own } as const;
  return dimension({ ...spec, assumed: { value, because } }, "assumed");
}
