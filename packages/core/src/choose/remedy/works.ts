/**
 * Kinds of work by which a dimension comes to another size, in the order in which remedies are offered: before parts
 * are ordered another one costs least, then what a machine shop or a shim does; what asks less of the engine comes
 * last, since it gives up what the build is for.
 */
export const works = {
  part: "another part",
  machine: "machining",
  shim: "shim or gasket",
  set: "setting",
  limit: "limit on speed or power",
} as const;
export type WorkKind = keyof typeof works;

/** What makes a dimension larger, and what makes it smaller. Absent: nobody can, or nobody should. */
export interface Changes {
  readonly up?: WorkKind;
  readonly down?: WorkKind;
}
