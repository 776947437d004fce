import { useEffect, useState } from "preact/hooks";
import type { View } from "../protocol.ts";
import { usePictures } from "../state/usePictures.ts";
import { LabelledSelect } from "./LabelledSelect.tsx";
import { Markup } from "./Markup.tsx";

const CYCLE = 720;
/** Degrees from one picture to the next while it turns, and the time between them [ms]. */
const STEP = 6;
const PAUSE = 40;

const radians = (degrees: number) => (degrees / 180) * Math.PI;

/** The engine in pictures, to scale, turned by a slider or by itself. */
export function PicturePanel({ text }: { readonly text: string | undefined }) {
  const [degrees, setDegrees] = useState(0);
  const [turning, setTurning] = useState(false);
  const [chart, setChart] = useState("clearances");
  const [mark, setMark] = useState("");
  const [view, setView] = useState<View>({ angle: 0, chart, mark });
  const { still, charts, marks, mechanism, chart: curves, table, blank } = usePictures(text, view);

  useEffect(() => setView({ angle: radians(degrees), chart, mark }), [degrees, chart, mark]);
  useEffect(() => {
    if (!turning) return;
    const timer = setInterval(() => setDegrees((now) => (now + STEP) % CYCLE), PAUSE);
    return () => clearInterval(timer);
  }, [turning]);

  if (blank) return <p role="status">The file cannot be read, so that there is nothing to draw.</p>;
  if (mechanism === "") return <p role="status">Drawing…</p>;
  return (
    <div class="pictures">
      <div class="row">
        <label class="angle">
          Crank angle after firing top dead centre: {degrees}°
          <input
            type="range"
            min={0}
            max={CYCLE}
            step={1}
            value={degrees}
            aria-valuetext={`${degrees} degrees`}
            onInput={(event) => setDegrees(event.currentTarget.valueAsNumber)}
          />
        </label>
        <button type="button" aria-pressed={turning} onClick={() => setTurning(!turning)}>
          {turning ? "Stop" : "Turn"}
        </button>
      </div>
      <div class="turning">
        <figure>
          <figcaption>
            <LabelledSelect
              label="Marked"
              value={mark}
              options={[{ id: "", label: "the nearest place" }, ...marks]}
              choose={setMark}
            />
          </figcaption>
          <Markup html={mechanism} />
        </figure>
        <figure>
          <figcaption>
            <LabelledSelect label="Over the cycle" value={chart} options={charts} choose={setChart} />
          </figcaption>
          <Markup html={curves} />
          {table.html !== "" && (
            <details class="curve-table">
              <summary>{table.title}</summary>
              <Markup html={table.html} />
            </details>
          )}
        </figure>
      </div>
      {still.map(({ id, title, html }) => (
        <figure key={id}>
          <figcaption>
            <h3>{title}</h3>
          </figcaption>
          <Markup html={html} />
        </figure>
      ))}
    </div>
  );
}
