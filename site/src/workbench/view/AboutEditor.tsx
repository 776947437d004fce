import type { About, Choice } from "../protocol.ts";

interface Props {
  readonly label: string;
  readonly about: About;
  readonly instruments: string;
  readonly ways: readonly Choice[];
  readonly write: (about: About) => void;
}

const origins = {
  "": "as usual",
  "data-sheet": "data sheet",
  measured: "measured",
  assumed: "assumed",
  target: "target",
} as const;

const orNothing = (text: string) => (text === "" ? undefined : text);

/** Where a size comes from: its origin, the instrument, a note. */
export function AboutEditor({ label, about, instruments, ways, write }: Props) {
  return (
    <div class="about">
      <label>
        From
        <select
          aria-label={`${label}: where it comes from`}
          value={about.provenance ?? ""}
          onChange={(event) =>
            write({ ...about, provenance: orNothing(event.currentTarget.value) as About["provenance"] })
          }
        >
          {Object.entries(origins).map(([word, text]) => (
            <option key={word} value={word}>
              {text}
            </option>
          ))}
        </select>
      </label>
      <label>
        Instrument
        <input
          type="text"
          aria-label={`${label}: instrument`}
          list={instruments}
          value={about.instrument ?? ""}
          onInput={(event) => write({ ...about, instrument: orNothing(event.currentTarget.value) })}
        />
      </label>
      <label>
        Uncertainty
        <input
          type="text"
          autocomplete="off"
          placeholder="as usual"
          aria-label={`${label}: uncertainty of what was read, with its unit`}
          value={about.uncertainty ?? ""}
          onInput={(event) => write({ ...about, uncertainty: orNothing(event.currentTarget.value) })}
        />
      </label>
      <label>
        Made
        <select
          aria-label={`${label}: how it was made`}
          value={about.made ?? ""}
          onChange={(event) => write({ ...about, made: orNothing(event.currentTarget.value) })}
        >
          <option value="">not said</option>
          {ways.map((way) => (
            <option key={way.id} value={way.id}>
              {way.label}
            </option>
          ))}
        </select>
      </label>
      <label>
        Note
        <input
          type="text"
          aria-label={`${label}: note`}
          value={about.note ?? ""}
          onInput={(event) => write({ ...about, note: orNothing(event.currentTarget.value) })}
        />
      </label>
    </div>
  );
}
