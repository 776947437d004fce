import type { MechanismScene } from "../scene/Scene.ts";
import { shapePath } from "./path.ts";

/** Crank, camshaft and what stands behind the rod. */
export function BehindRod({ scene: { crank, surroundings } }: { readonly scene: MechanismScene }) {
  const { camshaft, crankcase } = surroundings;
  return (
    <g>
      {crankcase !== undefined && <circle class="fine" r={crankcase} />}
      <circle class="fine" r={crank.throwRadius} />
      {crank.counterweightRadius !== undefined && <circle class="dashed" r={crank.counterweightRadius} />}
      <path class="behind" d={shapePath(crank.counterweight)} />
      {crank.mainJournal !== undefined && <circle class="part" r={crank.mainJournal} />}
      {camshaft && (
        <g>
          <circle class="dashed" cx={camshaft.x} cy={camshaft.y} r={camshaft.sweep} />
          <circle class="part" cx={camshaft.x} cy={camshaft.y} r={camshaft.base} />
        </g>
      )}
    </g>
  );
}
