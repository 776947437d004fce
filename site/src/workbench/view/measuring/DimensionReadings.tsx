import type { Limits, PlannedDimension, PlannedPlace } from "trialfit/papers";
import type { FormField, Taking } from "../../protocol.ts";
import type { Circumstances, Tool } from "../../state/Circumstances.ts";
import { placeKey } from "../../state/placeKey.ts";
import { ReadingRow } from "./ReadingRow.tsx";
import { RulesOn } from "./RulesOn.tsx";
import type { RuleStanding } from "./standing.ts";

interface Props {
  readonly dimension: PlannedDimension;
  readonly field: FormField | undefined;
  readonly circumstances: Circumstances;
  /** Id of the list of instruments. */
  readonly instruments: string;
  /** Undefined while they are being worked out. */
  readonly limits: Limits | "none" | undefined;
  readonly standing: RuleStanding;
  readonly takings: Readonly<Record<string, Taking>>;
  readonly change: (part: Partial<Circumstances>) => void;
  readonly take: (place: PlannedPlace, reading: string, because: string) => void;
}

/** What a dimension is predicted to be, and between which sizes it may lie. */
function limitWords(limits: Props["limits"], unit: string): string {
  if (limits === undefined) return "Its limits are being worked out…";
  if (limits === "none") return "No limits.";
  const { rules, lowest, highest, lowestBy, highestBy } = limits;
  if (rules === 0) return "Its limits are not known: no rule on it holds for sure yet.";
  const end = (way: string, size: string, by: string | undefined) =>
    size === "" ? [] : [`${way} ${size} ${unit}${by === undefined ? "" : ` (${by})`}`.trim()];
  const ends = [...end("from", lowest, lowestBy), ...end("up to", highest, highestBy)];
  return ends.length === 0 ? "No rule ends it near by." : `May lie ${ends.join(", ")}.`;
}

/** Places by cylinder, crankpin or main bearing, where there are several at each. */
function grouped(
  places: readonly PlannedPlace[],
): readonly (readonly [within: string, own: readonly PlannedPlace[]])[] {
  const several = places.some(({ row }) => row.height !== "" || row.direction !== "");
  const groups = new Map<string, PlannedPlace[]>();
  for (const one of places) {
    const within = several ? one.place.split(", ")[0]! : "";
    groups.set(within, [...(groups.get(within) ?? []), one]);
  }
  return [...groups];
}

/** One dimension with all its places: how it is measured, what is predicted, a box for each reading. */
export function DimensionReadings(props: Props) {
  const { dimension, field, circumstances, instruments, limits, standing, takings, change, take } = props;
  const { path, places, rules } = dimension;
  const first = places[0]!.row;
  const { unit, predicted } = first;
  const { tools } = circumstances;
  const tool: Tool = tools[unit] ?? { instrument: "", uncertainty: "" };
  const setTool = (part: Partial<Tool>) => change({ tools: { ...tools, [unit]: { ...tool, ...part } } });
  const unitWord = unit === "1" ? "" : unit;
  return (
    <div class="dimension">
      {field !== undefined && <p class="quiet">{field.help}</p>}
      <p class="predicted">
        {predicted === "" ? "Nothing is predicted." : `Predicted ${predicted} ${unitWord}.`}{" "}
        {limitWords(limits, unitWord)}
      </p>
      <div class="tool">
        <label>
          Instrument{unitWord === "" ? "" : ` for ${unitWord}`}
          <input
            type="text"
            list={instruments}
            autocomplete="off"
            value={tool.instrument}
            onInput={(event) => setTool({ instrument: event.currentTarget.value })}
          />
        </label>
        <label>
          Uncertainty ±{unitWord === "" ? "" : `, ${unitWord}`}
          <input
            type="text"
            inputMode="decimal"
            autocomplete="off"
            value={tool.uncertainty}
            onInput={(event) => setTool({ uncertainty: event.currentTarget.value })}
          />
        </label>
      </div>
      <RulesOn standing={standing} count={rules.length} />
      {grouped(places).map(([within, own]) => (
        <div key={within} class="position">
          {within !== "" && <h4>{within}</h4>}
          <ul class="places" aria-label={`Readings: ${first.dimension}${within === "" ? "" : `, ${within}`}`}>
            {own.map((place) => (
              <ReadingRow
                key={placeKey(place.row)}
                place={place}
                within={within}
                field={field}
                id={`reading-${placeKey(place.row).replace(/[^\w]+/g, "-")}`}
                limits={limits === "none" ? undefined : limits}
                taking={takings[placeKey(place.row)]}
                gravest={standing[0]?.word}
                take={(reading, because) => take(place, reading, because)}
              />
            ))}
          </ul>
        </div>
      ))}
      <p class="quiet">
        <code>{path}</code>
      </p>
    </div>
  );
}
