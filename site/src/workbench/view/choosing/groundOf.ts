import type { ChoosingGround } from "../../choosingProtocol.ts";
import type { BenchState } from "../../state/BenchState.ts";

/** The build on the bench as it is now, and what it is judged by. */
export const groundOf = ({ history, options: { set, stage } }: BenchState): ChoosingGround => ({
  text: history.text ?? "",
  file: "build.yaml",
  set,
  stage,
});
