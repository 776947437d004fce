/** A value of a rule file as it is named in a message. */
export function showValue(value: unknown): string {
  if (value === undefined) return "nothing";
  if (value === null || value === "") return "an empty value";
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : "a list";
  if (typeof value === "object") return "a group of keys";
  const text = String(value);
  return `"${text.length > 60 ? `${text.slice(0, 57)}…` : text}"`;
}
