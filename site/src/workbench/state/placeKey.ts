import type { SheetRow } from "trialfit/papers";

/** The name of a place where a reading is taken. */
export const placeKey = ({ entry, position, height, direction }: SheetRow): string =>
  [entry, position, height, direction].filter((word) => word !== "").join(" ");
