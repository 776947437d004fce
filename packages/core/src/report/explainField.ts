import { ruleFiles, standings } from "@trialfit/rules";
import { quantities } from "../derive/generated/quantities.ts";
import { pathsOf } from "../derive/groupsOf.ts";
import { describeCount } from "../read/describeCount.ts";
import { describeDefault } from "../read/describeDefault.ts";
import { describeTable } from "../read/describeTable.ts";
import { describeTolerance } from "../read/describeTolerance.ts";
import type { FieldSpec } from "../read/FieldSpec.ts";
import { type Field, fieldLabel } from "../read/fieldCatalog.ts";
import { syntaxOf } from "../read/syntaxOf.ts";
import { bandOrigins } from "../tables/bandOrigins.ts";
import { describeSyntax } from "../units/parseDimension.ts";
import type { DocumentLine, ReportDocument } from "./ReportDocument.ts";

function syntaxLines(spec: FieldSpec): readonly DocumentLine[] {
  switch (spec.kind) {
    case "dimension": {
      const tolerance = describeTolerance(spec);
      const standing = standings[bandOrigins.default.standing!];
      return [
        { label: "write", text: describeSyntax(syntaxOf(spec)) },
        { label: "range", text: `${spec.range[0]} to ${spec.range[1]}` },
        ...(tolerance === undefined
          ? spec.exact === undefined
            ? []
            : [{ label: "tolerance", text: `exact where none is given: ${spec.exact}` }]
          : [{ label: "tolerance", text: `${tolerance} where none is given (${standing})` }]),
      ];
    }
    case "choice":
      return Object.entries(spec.options).map(([word, meaning]) => ({
        label: "write",
        text: `${word}: ${meaning}`,
      }));
    case "count":
      return [{ label: "write", text: describeCount(spec) }];
    case "table":
      return [
        { label: "write", text: `${describeTable(spec)}, such as ${spec.row}` },
        ...Object.entries(spec.columns).map(([name, column]) => ({
          label: name,
          text: `${column.help} ${syntaxLines(column)
            .map(({ label, text }) => `${label} ${text}`)
            .join("; ")}`,
        })),
      ];
    default:
      return [];
  }
}

/** Ids of quantities that rest on the field directly. */
function readers(path: string): readonly string[] {
  return [...quantities.values()]
    .filter((one) => pathsOf(one).some((input) => input === path || input === `${path}.place`))
    .map((one) => one.id);
}

/** A field of the build file explained: what it is, how it is written, and what asks for it. */
export function explainField({ path, spec }: Field): ReportDocument {
  const used = readers(path);
  const rules = ruleFiles
    .filter((file) => JSON.stringify([file.when, file.requires]).includes(`"${path}"`))
    .map((file) => file.id);
  const lines: DocumentLine[] = [
    { label: "is", text: spec.help },
    ...syntaxLines(spec),
    ...(spec.assumed === undefined
      ? []
      : describeDefault(spec.assumed).map((text) => ({ label: "left out", text }))),
    ...(used.length === 0 ? [] : [{ label: "gives", text: used.join(", ") }]),
    ...(rules.length === 0 ? [] : [{ label: "rules", text: rules.join(", ") }]),
  ];
  return {
    title: fieldLabel(path),
    lead: [],
    sections: [{ heading: "Field", items: [{ title: spec.label, id: path, tone: "plain", lines }] }],
    closing: [],
  };
}
