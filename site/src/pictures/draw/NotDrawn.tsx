import { fieldLabel } from "trialfit";
import type { NoScene } from "../scene/Scene.ts";
import "../pictures.css";

/** Stands where a picture would, and says what it needs. */
export function NotDrawn({ scene }: { readonly scene: NoScene }) {
  return (
    <p class="not-drawn">
      {scene.state === "missing"
        ? `Not drawn: it needs ${scene.missing.map(fieldLabel).join(", ")}.`
        : `Not drawn, as these values do not go together: ${scene.reason}.`}
    </p>
  );
}
