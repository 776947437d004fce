import type { UnitChoice } from "trialfit/papers";
import type { Circumstances } from "../../state/Circumstances.ts";

interface Props {
  readonly circumstances: Circumstances;
  readonly change: (part: Partial<Circumstances>) => void;
}

const units = {
  written: "as the build writes them",
  metric: "metric",
  inch: "inch",
} as const satisfies Partial<Record<UnitChoice, string>>;

/** Who measures, when and in which state: given once, and written down with every reading after it. */
export function CircumstancesForm({ circumstances, change }: Props) {
  const box = (
    key: "by" | "on" | "temperature" | "joint",
    label: string,
    more: { readonly type: string; readonly inputMode?: "decimal"; readonly autocomplete?: string },
  ) => (
    <label>
      {label}
      <input
        {...more}
        value={circumstances[key]}
        onInput={(event) => change({ [key]: event.currentTarget.value })}
      />
    </label>
  );
  return (
    <fieldset class="circumstances">
      <legend>Given once, kept for every reading</legend>
      {box("by", "Who measures", { type: "text", autocomplete: "name" })}
      {box("on", "Day", { type: "date" })}
      {box("temperature", "Part temperature, °C", { type: "text", inputMode: "decimal" })}
      {box("joint", "State of the joints", { type: "text" })}
      <label>
        Units
        <select
          value={circumstances.units}
          onChange={(event) => change({ units: event.currentTarget.value as keyof typeof units })}
        >
          {Object.entries(units).map(([id, words]) => (
            <option key={id} value={id}>
              {words}
            </option>
          ))}
        </select>
      </label>
    </fieldset>
  );
}
