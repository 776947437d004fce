import { describe, expect, it } from "vitest";
import { parts } from "../../read/buildSchema.ts";
import { fields } from "../../read/fieldCatalog.ts";
import { formatProblem, InputError } from "../../read/Problem.ts";
import { listColumns } from "./listColumns.ts";
import { listLimits } from "./RawList.ts";
import { readPartsListText } from "./readPartsListText.ts";

const csv = (
  rows: string,
  heads = "id,stroke (mm),crankpinDiameter,price (EUR),leadTime (d),stock,totalMass (kg)",
) => `# part: crankshaft\n# about: Invented.\n# keep: originalStroke, throws\n${heads}\n${rows}\n`;

function problemsOf(text: string, file = "shafts.csv"): readonly string[] {
  try {
    readPartsListText(text, file);
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.problems.map(formatProblem);
  }
}

const dimension = (value: unknown) => value as { nominal: number; low: number; high: number; text: string };

describe("a parts list", () => {
  it("gives each part its fields as a build file would, and what it takes to have it", () => {
    const list = readPartsListText(csv("S-94,94 ± 0.02,48.00 mm ± 0.005,1249.50,12,3,17.5"), "shafts.csv");
    expect(list).toMatchObject({
      about: "Invented.",
      currency: "EUR",
      keep: ["crankshaft.originalStroke", "crankshaft.throws"],
    });
    expect(list.part.key).toBe("crankshaft");
    const [part] = list.parts;
    expect(part).toMatchObject({
      id: "S-94",
      price: 12_495_000,
      leadTime: 12 * 86_400,
      stock: 3,
      totalMass: 17.5,
    });
    const stroke = dimension(part!.values.get("crankshaft.stroke"));
    expect([stroke.low, stroke.nominal, stroke.high].map((size) => Number((size * 1e3).toFixed(6)))).toEqual([
      93.98, 94, 94.02,
    ]);
    expect(dimension(part!.values.get("crankshaft.crankpinDiameter")).nominal).toBeCloseTo(0.048, 12);
  });

  it("is the same in CSV, with other separators, in YAML and in JSON", () => {
    const row = "S-94,94,48 mm,1249.50,12,3,17.5";
    const text = csv(row);
    const same = [
      ["shafts.csv", text.replaceAll("\n", "\r\n")],
      [
        "shafts.csv",
        `\uFEFF${csv(row.replaceAll(",", ";"), "id;stroke (mm);crankpinDiameter;price (EUR);leadTime (d);stock;totalMass (kg)")}`,
      ],
      [
        "shafts.tsv",
        csv(
          row.replaceAll(",", "\t"),
          "id\tstroke [mm]\tcrankpinDiameter\tprice (EUR)\tleadTime (d)\tstock\ttotalMass (kg)",
        ),
      ],
      [
        "shafts.yaml",
        `part: crankshaft\nabout: Invented.\nkeep: [originalStroke, throws]\nunits: { stroke: mm, price: EUR }\nparts:\n  - { id: S-94, stroke: 94, crankpinDiameter: 48 mm, price: 1249.50, leadTime: 12 d, stock: 3, totalMass: 17.5 kg }\n`,
      ],
      [
        "shafts.json",
        '{ "part": "crankshaft", "about": "Invented.", "keep": ["originalStroke", "throws"], "units": { "stroke": "mm", "price": "EUR" }, "parts": [{ "id": "S-94", "stroke": 94, "crankpinDiameter": "48 mm", "price": 1249.50, "leadTime": "12 d", "stock": 3, "totalMass": "17.5 kg" }] }',
      ],
    ] as const;
    const plain = (file: string, source: string) => {
      const { parts, file: _, ...rest } = readPartsListText(source, file);
      return { ...rest, parts: parts.map(({ line, ...part }) => part) };
    };
    const wanted = plain("shafts.csv", text);
    expect(wanted.parts).toHaveLength(1);
    expect(same).toHaveLength(5);
    for (const [file, source] of same) expect(plain(file, source), file).toEqual(wanted);
  });

  it("reads words, longer forms and tables in cells", () => {
    const list = readPartsListText(
      '# part: piston\nid,crownVolume (cm3),diameter\nP-1,13.8 dish ± 0.3,"{ value: 86.41 mm, instrument: micrometer }"\n',
      "pistons.csv",
    );
    const { values } = list.parts[0]!;
    expect(dimension(values.get("piston.crownVolume")).nominal).toBeCloseTo(13.8e-6, 12);
    expect(values.get("piston.diameter")).toMatchObject({ provenance: "measured" });
    const shafts = readPartsListText(
      '# part: crankshaft\nid,throws\nS-1,"[{ pin: 0 deg, bank: 0 deg, position: 0 mm, fires: 0 deg }]"\n',
      "shafts.csv",
    );
    expect(shafts.parts[0]!.values.get("crankshaft.throws")).toMatchObject({ kind: "table" });
  });

  it("leaves out what a cell leaves empty", () => {
    const { parts } = readPartsListText(csv("S-94,94,,,,,\n,,,,,,\nS-95,95,,100,,,"), "shafts.csv");
    expect(parts.map(({ id }) => id)).toEqual(["S-94", "S-95"]);
    expect(parts[0]!.values.size).toBe(1);
    expect(parts[0]!.price).toBeUndefined();
  });

  it.each([
    [
      "no unit anywhere",
      csv("S-1,94,48,,,,"),
      /^shafts\.csv:5:8: row 1, column "crankpinDiameter": found "48": a number without a unit; expected a number with its unit \(m, mm/,
    ],
    ["the unit twice", csv("S-1,94 mm,,,,,"), /row 1, column "stroke": found "94 mm": the unit once more/],
    ["another unit under a unit", csv("S-1,3.7 in,,,,,"), /column "stroke": found/],
    [
      "a word for a number",
      csv("S-1,long,,,,,"),
      /column "stroke": found "long": no number at its head; expected a number in mm/,
    ],
    [
      "a size that cannot be",
      csv("S-1,9400,,,,,"),
      /found "9400 mm": 9400 mm, outside what this dimension can be/,
    ],
    [
      "a unit of another kind",
      csv("S-1,94", "id,stroke (kg)"),
      /^shafts\.csv:4:4: column "stroke": found the unit "kg"; expected a number with its unit \(m,/,
    ],
    ["an unknown unit", csv("S-1,94", "id,stroke (mn)"), /found the unit "mn"/],
    ["a unit for a count", csv("S-1,2", "id,rodsPerPin (mm)"), /found the unit "mm"; expected no unit/],
    [
      "an unknown column",
      csv("S-1,94", "id,strok (mm)"),
      /column "strok": found the unknown column "strok"\. Did you mean "stroke"\?/,
    ],
    ["a column twice", csv("S-1,94,94", "id,stroke (mm),stroke (mm)"), /the column "stroke" a second time/],
    [
      "an id twice",
      csv("S-1,94,,,,,\nS-1,95,,,,,"),
      /^shafts\.csv:6:1: row 2, column "id": found "S-1" a second time \(first in line 5\)/,
    ],
    ["no id", csv(",94,,,,,"), /row 1, column "id": found nothing; expected an id/],
    ["an id that is a formula", csv("=1+1,94,,,,,"), /row 1, column "id": found "=1\+1": not an id/],
    [
      "a formula",
      csv('S-1,"=HYPERLINK(""a"")",,,,,'),
      /column "stroke": found "=HYPERLINK\("a"\)": a formula/,
    ],
    ["a formula behind a sign", csv("S-1,+cmd|x,,,,,"), /a formula/],
    ["a formula as a name", csv("S-1,@x", "id,name"), /column "name": found "@x": a formula/],
    [
      "a price without a currency",
      csv("S-1,100", "id,price"),
      /a price without a currency; expected the currency once/,
    ],
    ["a currency of its own", csv("S-1,,,100 EUR,,,"), /found "100 EUR": not a price/],
    ["a price below nothing", csv("S-1,,,-5,,,"), /found "-5": not a price/],
    [
      "a currency that is none",
      csv("S-1,100", "id,price (Euro)"),
      /the currency "Euro"; expected three capital letters/,
    ],
    [
      "a time without a unit",
      csv("S-1,12", "id,leadTime"),
      /column "leadTime": found "12": a number without a unit/,
    ],
    ["half an engine in stock", csv("S-1,,,,,1.5,"), /column "stock": found "1.5"/],
    ["too many cells", csv("S-1,94,48 mm,1,1,1,1,1"), /row 1: found 8 cells; expected 7/],
    ["too few cells", csv("S-1,94"), /row 1: found 2 cells; expected 7/],
    ["a size to be found", csv("S-1,? 90 mm to 95 mm", "id,stroke"), /a dimension that is to be found/],
    ["readings", csv('S-1,"{ readings: { ""1"": 48 mm } }"', "id,crankpinDiameter"), /readings by position/],
    ["an unclosed quote", csv('S-1,"94'), /^shafts\.csv:5:5: found a quote that nothing closes/],
    ["an unclosed bracket", csv('S-1,"{ value: 94 mm"', "id,stroke"), /not YAML or JSON/],
    [
      "no part",
      "id,stroke (mm)\nS-1,94\n",
      /shafts\.csv:1:1: part: found nothing; expected the part of the build file/,
    ],
    ["an unknown part", "# part: crankshft\nid\nS-1\n", /found "crankshft"\. Did you mean "crankshaft"\?/],
    ["what nobody sells", "# part: targets\nid\nS-1\n", /part: found "targets"/],
    [
      "an unknown key at the top",
      "# part: crankshaft\n# keeps: throws\nid\nS-1\n",
      /the unknown key "keeps"\. Did you mean "keep"\?/,
    ],
    [
      "an unknown field to keep",
      "# part: crankshaft\n# keep: throw\nid\nS-1\n",
      /the unknown field "throw"\. Did you mean "throws"\?/,
    ],
    ["no parts", "# part: crankshaft\nid,stroke (mm)\n", /found 0 parts; expected 1 to 50000 parts/],
    ["no columns", "# part: crankshaft\n", /no row of column heads/],
    ["a way into prototypes", csv("S-1,94", "id,__proto__"), /the unknown column "__proto__"/],
  ])("refuses %s, and says where", (_, text, message) => {
    const found = problemsOf(text);
    expect(found.length).toBeGreaterThan(0);
    expect(found[0]).toMatch(message);
  });

  it("names the place in YAML too", () => {
    const text =
      "part: piston\nparts:\n  - { id: P-1, compressionHeight: 31 }\n  - { id: P-2, compresionHeight: 31 mm }\n";
    expect(problemsOf(text, "p.yaml")[1]).toMatch(
      /^p\.yaml:4:16: column "compresionHeight": found the unknown column .* Did you mean "compressionHeight"\?/,
    );
    expect(problemsOf(text.replace("compresionHeight: 31 mm", "pinBore: 22 mm"), "p.yaml")[0]).toMatch(
      /^p\.yaml:3:35: row 1, column "compressionHeight": found "31": a number without a unit/,
    );
  });

  it("lets no slip hide the others", () => {
    const text = csv(
      'S-1,94,,1,,,\nS-2,9x,,1,,,\nS-3,94,,1,,,,,,,\nS-4,,,-1,,,\nS-5,"94,,1,,,',
      "id,stroke (mm),crankpinDiametr,price (EUR),leadTime (d),stock,totalMass (kg)",
    );
    expect(problemsOf(text)).toEqual([
      expect.stringMatching(/^shafts\.csv:4:\d+: column "crankpinDiametr": found the unknown column/),
      expect.stringMatching(/^shafts\.csv:6:5: row 2, column "stroke"/),
      expect.stringMatching(/^shafts\.csv:7:\d+: row 3: found 11 cells/),
      expect.stringMatching(/^shafts\.csv:8:\d+: row 4, column "price"/),
      expect.stringMatching(/^shafts\.csv:9:5: found a quote that nothing closes/),
    ]);
  });

  it("takes the currency from the cells where the head has none, one for all", () => {
    const priced = (...prices: readonly string[]) =>
      csv(prices.map((price, index) => `S-${index},${price}`).join("\n"), "id,price");
    const list = readPartsListText(priced("640 EUR", "1249.50EUR"), "shafts.csv");
    expect([list.currency, ...list.parts.map(({ price }) => price)]).toEqual(["EUR", 6_400_000, 12_495_000]);
    expect(problemsOf(priced("640 EUR", "700 USD"))).toEqual([
      expect.stringMatching(/row 2, column "price": found "700 USD": a price in USD; expected one in EUR/),
    ]);
    expect(problemsOf(priced("640 EUR", "700"))).toEqual([
      expect.stringMatching(/a price without a currency/),
    ]);
    expect(problemsOf(priced("640 euro"))[0]).toMatch(/the currency "euro"; expected three capital letters/);
  });

  it.each([
    [
      "a decimal comma",
      csv("S-1;88,00", "id;stroke (mm)"),
      /found "88,00": a decimal comma; expected .* 88\.00/,
    ],
    [
      "a unit that the head does not say",
      csv("S-1,140 kg", "id,stroke (mm)"),
      /the unit kg; expected the number alone, in mm/,
    ],
    [
      "a group in place of a number",
      "part: crankshaft\nunits: { price: EUR }\nparts:\n  - { id: S-1, price: { value: 5 } }\n",
      /found \{"value":"5"\}: not a price/,
    ],
  ])("says of %s what it is", (_, text, message) => {
    expect(problemsOf(text, text.startsWith("part") ? "p.yaml" : "shafts.csv")[0]).toMatch(message);
  });

  it("names the first slips of many, and says how many there are", () => {
    const rows = Array.from({ length: 80 }, (_, index) => `S-${index},9`).join("\n");
    const found = problemsOf(csv(rows, "id,stroke"));
    expect(found).toHaveLength(51);
    expect(found[50]).toMatch(/30 more problems/);
  });

  it("is bounded", () => {
    expect(problemsOf(csv(`S-1,${"9".repeat(listLimits.cell + 1)}`, "id,stroke (mm)"))[0]).toMatch(
      /at most 8000 characters|does not end/,
    );
    expect(problemsOf(" ".repeat(listLimits.characters + 1))[0]).toMatch(/at most 16777216 characters/);
    const wide = Array.from({ length: listLimits.columns + 1 }, (_, index) => `c${index}`).join(",");
    expect(problemsOf(csv("", wide))[0]).toMatch(/301 columns; expected at most 300/);
  });

  it("has no column that is also a field of a part", () => {
    const names = parts.flatMap((part) => Object.keys(part.fields));
    expect(names.length).toBeGreaterThan(300);
    expect(fields.size).toBeGreaterThan(300);
    expect(listColumns.filter((column) => names.includes(column))).toEqual([]);
  });
});
