import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import {
  angles,
  centredCrank,
  cranks,
  deg,
  mm,
  near,
  nearly,
  offsetCrank,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { pinHeight } from "./pinHeight.ts";

test("example: 60 degrees after top dead centre", () => {
  near(pinHeight(offsetCrank, 60 * deg) / mm, 162.00107, 5e-6);
  nearly(pinHeight(centredCrank, 0), 191.5 * mm);
  refusesNonFinite(pinHeight, offsetCrank, 1);
});

property.prop([cranks, angles])("the rod keeps its length between crankpin and pin", (crank, angle) => {
  const { throwRadius: r, rodLength: l, pinLineOffset: e } = crank;
  const y = pinHeight(crank, angle);
  nearly(Math.hypot(r * Math.sin(angle) - e, y - r * Math.cos(angle)), l);
});

property.prop([cranks, angles])("without an offset both sides of the turn are alike", (crank, angle) => {
  const centred = { ...crank, pinLineOffset: 0 };
  nearly(pinHeight(centred, angle), pinHeight(centred, -angle), 1e-12);
});

property.prop([cranks, angles])("mirroring the offset mirrors the turn", (crank, angle) => {
  nearly(
    pinHeight(crank, angle),
    pinHeight({ ...crank, pinLineOffset: -crank.pinLineOffset }, -angle),
    1e-12,
  );
});
