import type { About } from "../protocol.ts";

interface Props {
  readonly label: string;
  readonly about: About;
  readonly instruments: string;
  readonly write: (about: About) => void;
}

const origins = {
  "": "as usual for this field",
  "data-sheet": "data sheet",
  measured: "measured",
  assumed: "assumed",
  target: "target",
} as const;

const orNothing = (text: string) => (text === "" ? undefined : text);

/** Where a size comes from: its origin, the instrument, a note. */
export function AboutEditor({ label, about, instruments, write }: Props) {
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
