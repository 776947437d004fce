import type { EvaluateOptions } from "trialfit";
import type { ChoosingGround } from "../choosingProtocol.ts";

/** What a build is judged by, as the evaluator is told. */
export const judgedBy = ({
  stage,
  set,
}: Pick<ChoosingGround, "stage" | "set">): Pick<EvaluateOptions, "stage" | "sets"> => ({
  ...(stage === undefined ? {} : { stage }),
  ...(set === undefined ? {} : { sets: [set] }),
});
