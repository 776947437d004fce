/** What measuring takes beside judging: fetched when somebody begins to measure. */
export { measuringPlan, takeReadings, takeRows } from "trialfit/papers";
