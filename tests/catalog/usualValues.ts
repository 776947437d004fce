import { ruleFiles } from "@trialfit/rules";
import { fields, quantities } from "trialfit";
import type { DimensionSpec, FieldSpec } from "../../packages/core/src/read/FieldSpec.ts";
import { readDimension } from "../../packages/core/src/read/readDimension.ts";
import { parseDimension } from "../../packages/core/src/units/parseDimension.ts";

/** A value of a field [SI], with the word that says where, if there is one. */
export interface UsualValue {
  readonly value: number;
  readonly place: string | undefined;
}

function ofRule(spec: DimensionSpec, text: string): UsualValue {
  const { value, place } = readDimension(text, spec, "data-sheet");
  return { value: value.nominal, place };
}

/** Quantities write their examples with signs in place of words. */
function ofQuantity({ unit, places }: DimensionSpec, text: string): UsualValue {
  return { value: parseDimension(text, { unit }).nominal, place: places?.[0] };
}

type Read = (spec: DimensionSpec, text: string) => UsualValue;

function readNumber(spec: FieldSpec | undefined, text: string, read: Read): readonly UsualValue[] {
  if (spec?.kind === "count") return [{ value: Number(text), place: undefined }];
  return spec?.kind === "dimension" ? [read(spec, text)] : [];
}

function collect(): ReadonlyMap<string, readonly UsualValue[]> {
  const usual = new Map<string, UsualValue[]>();
  const add = (path: string, text: string, read: Read) => {
    const values = readNumber(fields.get(path)?.spec, text, read);
    if (values.length > 0) usual.set(path, [...(usual.get(path) ?? []), ...values]);
  };
  for (const { examples } of ruleFiles)
    for (const { given } of examples)
      for (const [path, text] of Object.entries(given)) add(path, text, ofRule);
  for (const { inputs, examples } of quantities.values())
    for (const { given } of examples)
      for (const [name, path] of Object.entries(inputs))
        if (given[name] !== undefined) add(path, given[name], ofQuantity);
  return usual;
}

/** Values that occur: what rules and quantities give in their examples, by the field's path. */
export const usualValues: ReadonlyMap<string, readonly UsualValue[]> = collect();
