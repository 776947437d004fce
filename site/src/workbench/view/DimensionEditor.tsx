import { prettyUnit } from "../../data/prettyUnit.ts";
import type { FormField, Pieces } from "../protocol.ts";

interface Props {
  readonly field: FormField;
  readonly entry: Pieces;
  readonly id: string;
  readonly describedBy: string | undefined;
  readonly wrong: boolean;
  readonly write: (entry: Pieces) => void;
  /** The number was typed, perhaps with its unit and tolerance: from now on each stands in its own box. */
  readonly typed?: (() => void) | undefined;
  /** Shows the same size in another unit; without it the unit changes and the number stays. */
  readonly convert?: (unit: string) => void;
}

/** Number, unit, tolerance and the word that says which way, each in a box of its own. */
export function DimensionEditor({ field, entry, id, describedBy, wrong, write, typed, convert }: Props) {
  const { units = [], words } = field;
  const change = (part: Partial<Pieces>) => write({ ...entry, ...part });
  const toUnit = (unit: string) =>
    entry.number.trim() === "" || convert === undefined ? change({ unit }) : convert(unit);
  return (
    <div class="pieces">
      <input
        id={id}
        type="text"
        autocomplete="off"
        value={entry.number}
        aria-invalid={wrong}
        aria-describedby={describedBy}
        onInput={(event) => change({ number: event.currentTarget.value })}
        onChange={typed}
      />
      {units.length > 1 ? (
        <select
          aria-label={`${field.label}: unit`}
          value={entry.unit}
          onChange={(event) => toUnit(event.currentTarget.value)}
        >
          {units.map((unit) => (
            <option key={unit} value={unit}>
              {prettyUnit(unit)}
            </option>
          ))}
        </select>
      ) : (
        <span class="unit">{entry.unit === "1" ? "" : prettyUnit(entry.unit)}</span>
      )}
      {words !== undefined && (
        <select
          aria-label={`${field.label}: which way`}
          value={entry.word}
          onChange={(event) => change({ word: event.currentTarget.value })}
        >
          {words.map((word) => (
            <option key={word} value={word}>
              {word}
            </option>
          ))}
        </select>
      )}
      <span class="tolerance">
        <span aria-hidden="true">±</span>
        <input
          type="text"
          autocomplete="off"
          aria-label={`${field.label}: tolerance, plus or minus`}
          placeholder={field.tolerance ?? "0"}
          value={entry.tolerance}
          onInput={(event) => change({ tolerance: event.currentTarget.value })}
        />
      </span>
    </div>
  );
}
