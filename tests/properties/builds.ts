import { readFileSync } from "node:fs";
import { parseSource, toSi, unitOf } from "trialfit";
import { rationalFromDecimal } from "../../packages/core/src/units/Rational.ts";

/** A build file as plain data, every scalar the text that was written. */
export type RawBuild = { [part: string]: string | { [field: string]: unknown } };

export function demoBuild(name: string): RawBuild {
  const path = new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url);
  return parseSource(readFileSync(path, "utf8"), name).data as RawBuild;
}

/** Replaces one field by its path. */
export function withField(build: RawBuild, path: string, value: unknown): RawBuild {
  const [part = "", field] = path.split(".");
  if (field === undefined) return { ...build, [part]: value as string };
  return { ...build, [part]: { ...(build[part] as object | undefined), [field]: value } };
}

/** Leaves one field out. */
export function withoutField(build: RawBuild, path: string): RawBuild {
  const [part = "", field = ""] = path.split(".");
  const { [field]: _, ...rest } = build[part] as Record<string, unknown>;
  return { ...build, [part]: rest };
}

/** Paths of every field that the build gives, parts' fields only. */
export function fieldPaths(build: RawBuild): readonly string[] {
  return Object.entries(build).flatMap(([part, fields]) =>
    typeof fields === "object" ? Object.keys(fields).map((field) => `${part}.${field}`) : [],
  );
}

const LENGTH = /^(-?[\d.]+) (mm|in)((?: [a-z].*?)?)(?: ± ([\d.]+))?$/;

/** The same text in inches when it is a plain length in millimetres, exact to 30 decimals. */
export function inInches(text: string): string {
  const match = LENGTH.exec(text);
  if (match === null || match[2] !== "mm") return text;
  const convert = (number: string) => {
    const scaled = rationalFromDecimal(number)!;
    const [top, bottom] = [scaled.numerator * 10n ** 31n * 10n, scaled.denominator * 254n];
    const digits = (top / bottom).toString().replace("-", "").padStart(32, "0");
    return `${top < 0n ? "-" : ""}${digits.slice(0, -31)}.${digits.slice(-31)}`;
  };
  const tolerance = match[4] === undefined ? "" : ` ± ${convert(match[4])}`;
  return `${convert(match[1]!)} in${match[3] ?? ""}${tolerance}`;
}

/** One millimetre in SI, to show that the units package was used. */
export const millimetre = toSi(rationalFromDecimal("1")!, unitOf("mm"));
