import { type Stage, stages } from "./FieldSpec.ts";

/**
 * Refuses a stage that there is not: no rule would be asked, and nothing would be wrong.
 * @throws RangeError with those that there are
 */
export function checkStage(stage: Stage | undefined): void {
  if (stage !== undefined && !stages.includes(stage))
    throw new RangeError(`stage: found ${JSON.stringify(stage)}, expected one of ${stages.join(", ")}`);
}
