import type { Box, MechanismScene, NoScene } from "./Scene.ts";

/**
 * The least box that holds what is drawn of every scene, so that their pictures have one scale and their crankshafts
 * stand at one place; undefined where none can be drawn.
 */
export function commonBox(scenes: readonly (MechanismScene | NoScene)[]): Box | undefined {
  const boxes = scenes.flatMap((scene) => (scene.state === "value" ? [scene.box] : []));
  if (boxes.length === 0) return undefined;
  const x = Math.min(...boxes.map((box) => box.x));
  const y = Math.min(...boxes.map((box) => box.y));
  return {
    x,
    y,
    width: Math.max(...boxes.map((box) => box.x + box.width)) - x,
    height: Math.max(...boxes.map((box) => box.y + box.height)) - y,
  };
}
