/** Keys that reach into object prototypes: no build or rule file holds one. */
export const FORBIDDEN_KEYS: ReadonlySet<string> = new Set(["__proto__", "constructor", "prototype"]);

/** Deepest nesting that is read: a build file has four levels. */
export const MAX_DEPTH = 24;
