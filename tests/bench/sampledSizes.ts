import { readFileSync } from "node:fs";
import { type Build, type FieldValue, readBuildText } from "trialfit";

/** The demo build whose sizes are changed. */
export const DEMO = "harrow-eight";
export const EVERY = 6;

export const demoBuild: Build = readBuildText(
  readFileSync(new URL(`../../packages/core/demo/${DEMO}.yaml`, import.meta.url), "utf8"),
  DEMO,
);

/** Whether it is a size: whole numbers are counts. */
export const isSize = (value: FieldValue) => value.kind === "dimension" && !Number.isInteger(value.nominal);

/** Sizes of the demo build, and every sixth of them. */
export const sizePaths: readonly string[] = [...demoBuild.values]
  .filter(([, value]) => isSize(value))
  .map(([path]) => path);
export const sampledSizes: readonly string[] = sizePaths.filter((_, index) => index % EVERY === 0);
