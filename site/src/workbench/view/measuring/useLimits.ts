import { useEffect, useRef, useState } from "preact/hooks";
import type { Limits, UnitChoice } from "trialfit/papers";
import type { PaperGround } from "../../deskProtocol.ts";
import { desk } from "../../state/DeskClient.ts";

/**
 * The limits of the dimension that is being measured, worked out once while it is: its own readings do not move them.
 * @returns undefined while they are being worked out
 */
export function useLimits(
  path: string | undefined,
  units: UnitChoice,
  ground: PaperGround,
): Limits | "none" | undefined {
  const [found, setFound] = useState<{ readonly of: string; readonly limits: Limits | "none" }>();
  const now = useRef(ground);
  now.current = ground;
  const of = `${path} in ${units} by ${ground.set ?? ""}`;
  useEffect(() => {
    if (path === undefined || now.current.text === "") return;
    desk.ask({ kind: "limits", ground: now.current, path, units }, (answer) => {
      if (answer.kind === "limits") setFound({ of, limits: answer.limits ?? "none" });
      else if (answer.kind === "failed") setFound({ of, limits: "none" });
    });
  }, [path, units, of]);
  return found?.of === of ? found.limits : undefined;
}
