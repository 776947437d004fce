import { bankTilts } from "@trialfit/mechanics";
import type { Nominals } from "trialfit";
import { markedContact } from "./markedContact.ts";
import type { MechanismScene, NoScene } from "./Scene.ts";
import { sceneOf } from "./sceneOf.ts";

const gapOf = (scene: MechanismScene | NoScene, mark: string | undefined): number =>
  (scene.state === "value" ? markedContact(scene, mark)?.clearance : undefined) ?? Number.POSITIVE_INFINITY;

/**
 * The cylinder whose rod is nearest at an angle, so that a picture shows the place that the curve follows: in a
 * symmetrical block the rods of both banks come equally near, but at different angles.
 * @param angle from firing top dead centre [rad]
 * @param mark id of a trace that follows a gap; the nearest of all when left out
 */
export function nearestScene(nominals: Nominals, angle: number, mark?: string): MechanismScene | NoScene {
  const scenes = bankTilts(nominals.size("block.bankAngle") ?? 0).map((_, bank) =>
    sceneOf(nominals, angle, bank),
  );
  return scenes.reduce((best, one) => (gapOf(one, mark) < gapOf(best, mark) ? one : best));
}
