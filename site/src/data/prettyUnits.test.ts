import { findUnit, unitTable } from "trialfit";
import { describe, expect, it } from "vitest";
import { prettyUnit } from "./prettyUnit.ts";
import { prettyMarkup, prettyUnits } from "./prettyUnits.ts";

describe("units as people print them", () => {
  it("have their signs and raised digits after a number, and nothing else is changed", () => {
    for (const [text, pretty] of [
      ["38 deg", "38°"],
      ["from -0.5 to 1.5 deg (max. 2 deg)", "from -0.5 to 1.5° (max. 2°)"],
      ["90 degC or 194 degF", "90 °C or 194 °F"],
      ["0.4 um", "0.4 µm"],
      ["625 m2/s2, 12 cm3, 3 in3", "625 m²/s², 12 cm³, 3 in³"],
      ["11.5 um/(m K)", "11.5 µm/(m K)"],
      ["88.5 mm at 7000 rpm", "88.5 mm at 7000 rpm"],
      ["a degree, a deg of wear, model 2 degs", "a degree, a deg of wear, model 2 degs"],
      ["expected a number with its unit (m3, cm3)", "expected a number with its unit (m3, cm3)"],
    ] as const)
      expect(prettyUnits(text)).toBe(pretty);
  });
  it("are told apart: no two units are printed alike", () => {
    const printed = unitTable.map(({ symbol }) => prettyUnit(symbol));
    expect(new Set(printed).size).toBe(printed.length);
    expect(unitTable.filter(({ symbol }) => prettyUnit(symbol) !== symbol).length).toBeGreaterThan(20);
  });
  it("can be typed where they are one sign", () => {
    for (const sign of ["°", "µm", "°C", "°F"]) expect(findUnit(sign)).toBeDefined();
  });
  it("stay as they are written in code and in boxes", () => {
    expect(prettyMarkup('<p title="3 deg">3 deg <code>3 deg</code></p><option>3 deg</option>')).toBe(
      '<p title="3 deg">3° <code>3 deg</code></p><option>3 deg</option>',
    );
    expect(prettyMarkup('<svg role="img" aria-label="at 3 deg"><text>3 deg</text></svg>')).toBe(
      '<svg role="img" aria-label="at 3°"><text>3°</text></svg>',
    );
    expect(prettyMarkup("<pre><span>1 um</span> 2 um</pre><b>2 um</b>")).toBe(
      "<pre><span>1 um</span> 2 um</pre><b>2 µm</b>",
    );
    expect(prettyMarkup("<script>x = '3 deg'</script><svg><text>3 deg</text></svg>")).toBe(
      "<script>x = '3 deg'</script><svg><text>3°</text></svg>",
    );
  });
});
