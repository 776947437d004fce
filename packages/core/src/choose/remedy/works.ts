/**
 * Kinds of work by which a dimension comes to another size, the cheapest first: what is set costs nothing but the time,
 * a limit nothing but what it gives up, shims and gaskets little; then the machine shop, and another part. Common
 * practice.
 */
export const works = {
  set: "setting",
  limit: "limit on speed or power",
  shim: "shim or gasket",
  machine: "machining",
  part: "another part",
} as const;
export type WorkKind = keyof typeof works;

/** What makes a dimension larger, and what makes it smaller. Absent: nobody can, or nobody should. */
export interface Changes {
  readonly up?: WorkKind;
  readonly down?: WorkKind;
}
