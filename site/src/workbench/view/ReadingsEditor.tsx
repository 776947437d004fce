import { prettyUnit } from "../../data/prettyUnit.ts";
import type { FormField, Reading, Readings } from "../protocol.ts";
import { DimensionEditor } from "./DimensionEditor.tsx";

interface Props {
  readonly field: FormField;
  readonly entry: Readings;
  readonly id: string;
  /** How many the build has of what is measured, where it tells. */
  readonly places: number | undefined;
  readonly describedBy: string | undefined;
  readonly wrong: boolean;
  readonly write: (entry: Readings) => void;
}

/** Where readings are usually taken. */
const HEIGHTS = ["top", "middle", "bottom"];
const DIRECTIONS = ["along", "across"];

const layouts = {
  one: { label: "one reading each", heights: [""], directions: [""] },
  heights: { label: "three heights each", heights: HEIGHTS, directions: [""] },
  directions: { label: "two directions each", heights: ["middle"], directions: DIRECTIONS },
  both: { label: "three heights, two directions each", heights: HEIGHTS, directions: DIRECTIONS },
} as const;
type Layout = keyof typeof layouts;

const samePlace = (a: Reading, b: Reading) =>
  a.at === b.at && a.height === b.height && a.direction === b.direction;

/** The rows of a layout; what was read already keeps its place, and what has none stays at the end. */
function laidOut(rows: readonly Reading[], layout: Layout, places: number): readonly Reading[] {
  const { heights, directions } = layouts[layout];
  const due = Array.from({ length: places }, (_, index) =>
    heights.flatMap((height) =>
      directions.map((direction) => ({ at: String(index + 1), height, direction, reading: "" })),
    ),
  ).flat();
  const taken = rows.filter(({ reading }) => reading.trim() !== "");
  const others = taken.filter((row) => !due.some((one) => samePlace(one, row)));
  return [
    ...due.flatMap((one) => {
      const found = taken.filter((row) => samePlace(one, row));
      return found.length === 0 ? [one] : found;
    }),
    ...others,
  ];
}

/** Readings of one dimension: for each where it was taken and what was read. */
export function ReadingsEditor({ field, entry, id, places, describedBy, wrong, write }: Props) {
  const { label, per = "cylinder", units = [] } = field;
  const { rows, unit, beside } = entry;
  const set = (at: number, part: Partial<Reading>) =>
    write({ ...entry, rows: rows.map((row, index) => (index === at ? { ...row, ...part } : row)) });
  const next = (): Reading => ({ at: "1", height: "", direction: "", ...rows.at(-1), reading: "" });
  const box = (row: Reading, at: number, key: keyof Reading, name: string, list?: string) => (
    <td key={key}>
      <input
        type="text"
        {...(at === 0 && key === "reading" ? { id } : {})}
        class={key}
        inputMode={key === "at" ? "numeric" : key === "reading" ? "decimal" : undefined}
        autocomplete="off"
        list={list}
        aria-label={`${label}, row ${at + 1}: ${name}`}
        aria-invalid={key === "reading" && wrong}
        aria-describedby={key === "reading" ? describedBy : undefined}
        value={row[key]}
        onInput={(event) => set(at, { [key]: event.currentTarget.value })}
      />
    </td>
  );
  return (
    <div class="rows readings">
      <div class="row">
        <label>
          Lay out
          <select
            aria-label={`${label}: lay out rows`}
            value=""
            onChange={(event) => {
              const layout = event.currentTarget.value as Layout;
              event.currentTarget.value = "";
              write({ ...entry, rows: laidOut(rows, layout, places ?? 1) });
            }}
          >
            <option value="">rows for every {per}…</option>
            {Object.entries(layouts).map(([name, { label: words }]) => (
              <option key={name} value={name}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <label>
          A number alone is in
          <select
            aria-label={`${label}: unit of the readings`}
            value={unit}
            onChange={(event) => write({ ...entry, unit: event.currentTarget.value })}
          >
            {units.map((one) => (
              <option key={one} value={one}>
                {prettyUnit(one)}
              </option>
            ))}
          </select>
        </label>
      </div>
      <datalist id={`${id}-heights`}>
        {HEIGHTS.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      <datalist id={`${id}-directions`}>
        {DIRECTIONS.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      <div class="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col" title={per}>
                no.
              </th>
              <th scope="col">height</th>
              <th scope="col">direction</th>
              <th scope="col">reading</th>
              <th>
                <span class="sr-only">Take out</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row, at) => (
              <tr key={at}>
                {box(row, at, "at", per)}
                {box(row, at, "height", "height", `${id}-heights`)}
                {box(row, at, "direction", "direction", `${id}-directions`)}
                {box(row, at, "reading", "reading")}
                <td>
                  <button
                    type="button"
                    aria-label={`${label}: take out row ${at + 1}`}
                    onClick={() => write({ ...entry, rows: rows.filter((_, index) => index !== at) })}
                  >
                    ×
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="row">
        <button type="button" onClick={() => write({ ...entry, rows: [...rows, next()] })}>
          Add a reading
        </button>
      </p>
      {beside?.form === "pieces" && (
        <div class="beside">
          <label class="quiet" for={`${id}-beside`}>
            Every {per} without a reading
          </label>
          <DimensionEditor
            field={{ ...field, label: `${label}, where it was not measured` }}
            entry={beside}
            id={`${id}-beside`}
            describedBy={undefined}
            wrong={false}
            write={(size) => write({ ...entry, beside: size })}
          />
        </div>
      )}
    </div>
  );
}
