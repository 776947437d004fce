import { quantities } from "../derive/generated/quantities.ts";
import type { Quantity } from "../derive/Quantity.ts";
import { fieldLabel, fields } from "../read/fieldCatalog.ts";
import { formatNumber } from "../units/formatNumber.ts";
import { describeHot } from "./describeHot.ts";
import { rootSumSquareText, sampledText, spreadText } from "./describeLikely.ts";
import { statisticsNote } from "./describeReport.ts";
import { describeRoutes } from "./describeRoutes.ts";
import { nameFields } from "./nameFields.ts";
import { nameSource } from "./nameSource.ts";
import { printBand } from "./printValue.ts";
import type { Report, ReportQuantity } from "./Report.ts";
import type { DocumentItem, DocumentLine, ReportDocument } from "./ReportDocument.ts";

function unitOfInput(path: string): string {
  const spec = fields.get(path)?.spec;
  return quantities.get(path)?.unit ?? (spec?.kind === "dimension" ? spec.unit : "1");
}

function nameOf(path: string): string {
  return quantities.get(path)?.name ?? fieldLabel(path);
}

function inputLines(quantity: Quantity, worked: ReportQuantity | undefined): readonly DocumentLine[] {
  const others = [...Object.entries(quantity.choices), ...Object.entries(quantity.tables)];
  return [
    ...Object.entries(quantity.inputs).map(([symbol, path]) => {
      const value = worked?.inputs?.[symbol];
      const number = value === undefined ? "" : ` = ${formatNumber(value, unitOfInput(path), { digits: 6 })}`;
      return { label: symbol, text: `${nameOf(path)} [${path}]${number}` };
    }),
    ...others.map(([symbol, path]) => ({ label: symbol, text: `${nameOf(path)} [${path}]` })),
  ];
}

function workedItem(quantity: Quantity, worked: ReportQuantity, build: string): DocumentItem {
  if (worked.state === "missing") {
    return {
      title: build,
      tone: "doubt",
      lines: [
        {
          label: "unknown",
          text: `needs ${nameFields(worked.missing ?? [])}`,
        },
      ],
    };
  }
  if (worked.state === "impossible")
    return { title: build, tone: "bad", lines: [{ label: "cannot be", text: worked.reason ?? "" }] };
  const band = {
    low: worked.low ?? Number.NaN,
    nominal: worked.nominal ?? Number.NaN,
    high: worked.high ?? Number.NaN,
  };
  const line = (label: string, text: string | undefined) => (text === undefined ? [] : [{ label, text }]);
  return {
    title: build,
    tone: "plain",
    lines: [
      { label: "value", text: `${worked.symbol} = ${printBand(band, worked.unit, worked.decimals)}` },
      ...line("likely", rootSumSquareText(worked)),
      ...line("drawn", sampledText(worked)),
      ...line("spread", spreadText(worked)),
      ...((worked.assumed ?? []).length === 0
        ? []
        : [{ label: "assumed", text: worked.assumed!.map(fieldLabel).join("; ") }]),
      ...(worked.takenFor ?? []).map((text) => ({ label: "assumed", text })),
      ...(worked.inputs === undefined ? [] : (quantity.listing?.(worked.inputs) ?? [])),
    ],
  };
}

/** A quantity explained: meaning, formula, inputs and sources, with this build's numbers when one is given. */
export function explainQuantity(quantity: Quantity, report?: Report): ReportDocument {
  const worked = report?.quantities.find((one) => one.id === quantity.id);
  const lines: DocumentLine[] = [
    { label: "meaning", text: quantity.meaning },
    {
      label: quantity.formula === undefined ? "method" : "formula",
      text: quantity.formula === undefined ? quantity.method! : `${quantity.symbol} = ${quantity.formula}`,
    },
    ...Object.entries(quantity.cases).map(([name, formula]) => ({
      label: `formula, ${quantity.routes.length > 0 ? "way " : ""}${name}`,
      text: `${quantity.symbol} = ${formula}`,
    })),
    ...inputLines(quantity, worked),
    ...describeRoutes(quantity).map((text, index) => ({ label: `way ${index + 1}`, text })),
    { label: "valid", text: quantity.valid },
    ...describeHot(quantity),
    ...quantity.sources.map((source) => ({ label: "source", text: nameSource(source) })),
  ];
  return {
    title: `${quantity.name} (${quantity.symbol}, ${quantity.unit === "1" ? "a plain number" : quantity.unit})`,
    lead: [],
    sections: [
      { heading: "Quantity", items: [{ title: quantity.name, id: quantity.id, tone: "plain", lines }] },
      ...(worked === undefined
        ? []
        : [{ heading: "Worked", items: [workedItem(quantity, worked, report!.build.name)] }]),
    ],
    closing: statisticsNote(report),
  };
}
