import { parseSource } from "trialfit";

/** Keys and values, as YAML and JSON have them. */
export type Data = Readonly<Record<string, unknown>>;

/** The data of a text of YAML. */
export const dataOf = (text: string): unknown => parseSource(text, "page").data;

export const isData = (value: unknown): value is Data =>
  typeof value === "object" && value !== null && !Array.isArray(value);
