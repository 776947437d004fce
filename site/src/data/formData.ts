import { setFiles } from "@trialfit/rules";
import {
  describeDefault,
  type Field,
  type FieldSpec,
  fields,
  instruments,
  parts,
  quantities,
  readBuildText,
  stages,
  unitOf,
  unitsLike,
  waysOfMaking,
} from "trialfit";
import { paperPurposes } from "trialfit/papers";
import type { FormData, FormField } from "../workbench/protocol.ts";
import { demoTexts } from "./demoTexts.ts";
import { spaced } from "./names.ts";
import { rulesRestingOn } from "./usage.ts";

function ofSpec(spec: FieldSpec): Partial<FormField> {
  switch (spec.kind) {
    case "dimension": {
      const words = spec.places ?? Object.keys(spec.signs ?? {});
      const units = [spec.unit, ...unitsLike(unitOf(spec.unit)).map((unit) => unit.symbol)];
      return {
        units: [...new Set(units)],
        range: spec.range,
        ...(words.length === 0 ? {} : { words }),
        ...(spec.tolerance === undefined ? {} : { tolerance: spec.tolerance }),
        ...(spec.per === undefined ? {} : { per: spec.per }),
      };
    }
    case "choice":
      return { options: spec.options };
    case "count":
      return { range: [String(spec.least), String(spec.most)] };
    case "table":
      return {
        row: spec.row,
        columns: Object.entries(spec.columns).map(([name, column]) => ({
          name,
          label: column.label,
          optional: spec.optional.includes(name),
        })),
      };
    case "text":
      return {};
  }
}

function fieldOf({ path, spec }: Field): FormField {
  return {
    path,
    label: spec.label,
    help: spec.help,
    kind: spec.kind,
    ...ofSpec(spec),
    ...(spec.assumed === undefined ? {} : { leftOut: describeDefault(spec.assumed) }),
    rules: rulesRestingOn(path).length,
  };
}

/** It gives every paper something to say. */
const fullBuild = readBuildText(demoTexts.find(({ id }) => id === "harrow-eight")!.text, "harrow-eight");

const all = [...fields.values()];

/** The form of a build, from the declarations of its fields. */
export const formData: FormData = {
  parts: [
    {
      key: "",
      label: "The build",
      help: "What the engine is for.",
      fields: all.filter(({ part }) => part === undefined).map(fieldOf),
    },
    ...parts.map(({ spec }) => ({
      key: spec.key,
      label: spec.label,
      help: spec.help,
      fields: all.filter(({ part }) => part === spec).map(fieldOf),
    })),
  ],
  instruments: Object.keys(instruments),
  ways: Object.entries(waysOfMaking).map(([id, { help }]) => ({ id, label: help })),
  quantities: [...quantities.values()]
    .filter(({ nominalOnly }) => !nominalOnly)
    .map(({ id, name, unit }) => ({ id, label: name, unit }))
    .sort((a, b) => (a.label < b.label ? -1 : 1)),
  stages: stages.map((id) => ({ id, label: spaced(id) })),
  sets: setFiles.map(({ id, title }) => ({ id, label: title })),
  papers: await paperPurposes(fullBuild),
  ruleParts: parts.map(({ spec }) => ({ id: spec.id, label: spec.label })),
};
