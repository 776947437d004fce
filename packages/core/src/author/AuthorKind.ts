import { issueKinds } from "../judge/RuleIssue.ts";

/** Kinds of problem that only an author meets, beside those that keep a rule from being judged. */
const authorOnly = {
  "not-yaml": "a text that is not YAML",
  "unknown-key": "a key that no rule file has",
  "missing-key": "a key that is not there",
  "wrong-word": "a word that is not one of those allowed",
  "wrong-type": "a list where a text belongs, or the like",
  "wrong-length": "too short or too long, too few or too many",
  "wrong-form": "a name that is not written as names are",
  "wrong-file-name": "an id that is not the file's name",
  "wrong-folder": "a system that is not the folder's name",
  "duplicate-id": "an id that another rule has",
  "unknown-part": "a part that no build file has",
  contradiction: "a condition that can never hold",
  "always-true": "a condition that always holds",
  "says-nothing-new": "a condition that the others beside it make needless",
  "never-fails": "a rule that cannot fail where it is relevant",
  "never-holds": "a rule that cannot hold where it is relevant",
  "case-never-applies": "a case that earlier cases, or the rule's own `when`, leave nothing to",
  "case-changes-nothing": "a case whose value would be the same without it",
  "unknown-source": "a source that is not listed",
  "unfounded-standing": "a standing without a source of its kind",
  "missing-caution": "work that can hurt someone, without a caution",
  "unreadable-example": "an example with a value that cannot be read",
  "wrong-verdict": "an example that says another verdict than the rule",
  "wrong-missing": "an example that says other missing inputs than the rule",
  "same-name": "two examples with one name",
  "no-example-at-limit": "a limit without an example inside, on or outside it",
  "no-unknown-example": "no example whose verdict is unknown",
  "no-not-applicable-example": "a `when` without an example that it leaves out",
  "to-fill-in": "a place that a new rule leaves to its author",
  "unnoticed-slip": "a slip that no example notices",
  "needless-part": "a part that changes no verdict",
} as const;

/** Worth knowing, and no fault. */
const notes = {
  overlap: "another rule that compares the same in the same direction",
  "no-place": "a published source without the place in it",
  "asks-if-stated": "a rule that only asks whether something is stated",
} as const;

/** Every kind of problem that a rule file can have, and what it is about. */
export const authorKinds = { ...issueKinds, ...authorOnly, ...notes } as const;
export type AuthorKind = keyof typeof authorKinds;

/** Whether a kind of problem is a note: the rule can be used as it is. */
export function isNote(kind: AuthorKind): boolean {
  return Object.hasOwn(notes, kind);
}
