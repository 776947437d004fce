import type { LimitFile } from "@trialfit/rules";
import type { CompiledLimit } from "./CompiledRule.ts";
import type { Path, RuleReading } from "./RuleReading.ts";
import { readCondition } from "./readCondition.ts";

/** Reads one limit. The conditions must have been read before: they lend it its unit. */
export function readLimit(reading: RuleReading, name: string, limit: LimitFile): CompiledLimit {
  const path = ["limits", name];
  const unit = reading.unitOfLimit(name);
  if (!reading.usedLimits.has(name)) {
    const found = `limit.${name}, which is never compared with anything`;
    const expected = `a comparison with { fact: limit.${name} }, or no such limit`;
    reading.report("limit-unused", path, found, expected, { key: true });
  }
  const number = (text: string, at: Path) =>
    unit === undefined ? Number.NaN : reading.number(text, unit, [...path, ...at]);
  const value = number(limit.value, ["value"]);
  const [least, most] = limit.range.map((text, index) => number(text, ["range", index])) as [number, number];
  const cases = (limit.cases ?? []).map((one, index) => ({
    when: readCondition(reading, one.when, [...path, "cases", index, "when"], true),
    value: number(one.value, ["cases", index, "value"]),
    text: one.value,
  }));
  if (least > most) {
    const found = `a range that runs backwards, from ${limit.range[0]} to ${limit.range[1]}`;
    reading.report("range-reversed", [...path, "range"], found, "the lower end first");
    return { fact: `limit.${name}`, unit: unit ?? "1", value, cases };
  }
  const placed = [
    { value, text: limit.value, at: ["value"] },
    ...cases.map((one, index) => ({ ...one, at: ["cases", index, "value"] })),
  ];
  for (const one of placed.filter((each) => each.value < least || each.value > most)) {
    const expected = `a value from ${limit.range[0]} to ${limit.range[1]}, or a wider range`;
    const found = `${one.text}, which lies outside its own range`;
    reading.report("outside-range", [...path, ...one.at], found, expected);
  }
  return { fact: `limit.${name}`, unit: unit ?? "1", value, cases };
}
