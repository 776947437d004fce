import { useState } from "preact/hooks";
import type { Both } from "../../pairProtocol.ts";
import { usePairPictures } from "../../state/usePairPictures.ts";
import { Markup } from "../Markup.tsx";

interface Props {
  /** Both build files. */
  readonly texts: Both<string>;
  readonly names: Both<string>;
}

/** Both mechanisms beside each other, at one crank angle and to one scale. */
export function PairPictures({ texts, names }: Props) {
  const [degrees, setDegrees] = useState(0);
  const pictures = usePairPictures(texts, (degrees / 180) * Math.PI);
  return (
    <section class="pair-pictures" aria-label="Both to the same scale">
      <h3>Both to the same scale</h3>
      <label class="angle">
        Crank angle after firing top dead centre, of both: {degrees}°
        <input
          type="range"
          min={0}
          max={720}
          step={1}
          value={degrees}
          aria-valuetext={`${degrees} degrees`}
          onInput={(event) => setDegrees(event.currentTarget.valueAsNumber)}
        />
      </label>
      {pictures === undefined ? (
        <p role="status">Drawing…</p>
      ) : (
        <div class="both">
          {pictures.map((html, at) => (
            <figure key={at}>
              <figcaption>
                <span class="quiet">{at === 0 ? "This build" : "The other"}</span> {names[at]}
              </figcaption>
              {html === "" ? <p>It cannot be drawn: the file cannot be read.</p> : <Markup html={html} />}
            </figure>
          ))}
        </div>
      )}
    </section>
  );
}
