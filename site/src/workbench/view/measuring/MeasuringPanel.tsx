import "./measuring.css";
import { useEffect, useMemo, useState } from "preact/hooks";
import type { MeasuringPlan, PlannedDimension } from "trialfit/papers";
import { VerdictMark } from "../../../components/VerdictMark.tsx";
import type { FormData, FormField } from "../../protocol.ts";
import type { BenchActions } from "../../state/BenchActions.ts";
import type { BenchState } from "../../state/BenchState.ts";
import { type Circumstances, keepCircumstances, keptCircumstances } from "../../state/Circumstances.ts";
import { CircumstancesForm } from "./CircumstancesForm.tsx";
import { DimensionReadings } from "./DimensionReadings.tsx";
import { filledRow } from "./filledRow.ts";
import { SheetDrop } from "./SheetDrop.tsx";
import { standingOf, verdictsOf } from "./standing.ts";
import { useLimits } from "./useLimits.ts";

interface Props {
  readonly form: FormData;
  readonly state: BenchState;
  readonly actions: BenchActions;
}

const INSTRUMENTS = "measuring-instruments";

const readOf = ({ places }: PlannedDimension) => places.filter(({ reading }) => reading !== undefined).length;

/** Dimensions by the part that they belong to, in the order of the sheet. */
function byPart(plan: MeasuringPlan): readonly (readonly [part: string, dimensions: MeasuringPlan])[] {
  const parts = new Map<string, PlannedDimension[]>();
  for (const dimension of plan) {
    const { part } = dimension.places[0]!.row;
    parts.set(part, [...(parts.get(part) ?? []), dimension]);
  }
  return [...parts];
}

/** Takes measurements beside the engine: each reading goes into the build, and the verdicts follow. */
export default function MeasuringPanel({ form, state, actions }: Props) {
  const [circumstances, set] = useState(keptCircumstances);
  const [open, setOpen] = useState<string | undefined>(undefined);
  const { plan, report, takings, history } = state;
  const { units } = circumstances;
  useEffect(() => actions.measure(units), [actions, units]);
  const change = (part: Partial<Circumstances>) =>
    set((before) => {
      const after = { ...before, ...part };
      keepCircumstances(after);
      return after;
    });
  const fields = useMemo(
    () => new Map<string, FormField>(form.parts.flatMap((part) => part.fields.map((one) => [one.path, one]))),
    [form],
  );
  const verdicts = useMemo(() => verdictsOf(report), [report]);
  const limits = useLimits(open, units, {
    text: history.text ?? "",
    file: "build.yaml",
    set: state.options.set,
  });
  if (plan === undefined)
    return (
      <div class="measuring">
        <p role="status">
          {report === undefined && state.done
            ? "The file cannot be read: see the File panel."
            : "Working out what is to be measured…"}
        </p>
      </div>
    );
  const all = plan.reduce((sum, { places }) => sum + places.length, 0);
  const read = plan.reduce((sum, one) => sum + readOf(one), 0);
  return (
    <div class="measuring">
      <p>
        Every reading goes into the build file as you enter it, and the verdicts follow. Nothing that was
        measured is overwritten: a second reading of a place asks for its reason and keeps the first.
      </p>
      <CircumstancesForm circumstances={circumstances} change={change} />
      <SheetDrop state={state} actions={actions} />
      <datalist id={INSTRUMENTS}>
        {form.instruments.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      <p class="read-so-far">
        {all === 0
          ? "Nothing is to be measured yet: the build says too little."
          : `${read} of ${all} readings taken.`}
      </p>
      {byPart(plan).map(([part, dimensions]) => (
        <section key={part} aria-label={part}>
          <h3>{part}</h3>
          {dimensions.map((dimension) => {
            const { path, places, rules } = dimension;
            const standing = standingOf(rules, verdicts);
            return (
              <details
                key={path}
                class="measured"
                open={open === path}
                onToggle={(event) => {
                  const isOpen = event.currentTarget.open;
                  if (isOpen !== (open === path)) setOpen(isOpen ? path : undefined);
                }}
              >
                <summary>
                  <span class="title">{places[0]!.row.dimension}</span>
                  <span class="quiet number">
                    {readOf(dimension)} of {places.length}
                  </span>
                  {standing[0] !== undefined && <VerdictMark word={standing[0].word} />}
                </summary>
                {open === path && (
                  <DimensionReadings
                    dimension={dimension}
                    field={fields.get(path)}
                    circumstances={circumstances}
                    instruments={INSTRUMENTS}
                    limits={limits}
                    standing={standing}
                    takings={takings}
                    change={change}
                    take={({ row }, reading, because) =>
                      actions.take(filledRow(row, reading, circumstances, because))
                    }
                  />
                )}
              </details>
            );
          })}
        </section>
      ))}
    </div>
  );
}
