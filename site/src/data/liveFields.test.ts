import { expect, it } from "vitest";
import { rules } from "./catalog.ts";
import { liveForm } from "./liveFields.ts";

it("every slider can stand at the value that its field shows", () => {
  let count = 0;
  for (const rule of rules.filter((_, at) => at % 5 === 0)) {
    const { first, more } = liveForm(rule);
    for (const field of [...first, ...more]) {
      if (field.kind !== "dimension" || field.slide === undefined || !/^-?[\d.]+$/.test(field.value))
        continue;
      const { least, most, step } = field.slide;
      const value = Number(field.value);
      const steps = (value - least) / step;
      expect(Math.abs(steps - Math.round(steps)) * step, `${rule.file.id} ${field.path}`).toBeLessThan(
        1e-6 * most,
      );
      expect(value).toBeGreaterThanOrEqual(least);
      expect(value).toBeLessThanOrEqual(most);
      count += 1;
    }
  }
  expect(count).toBeGreaterThan(100);
});
