import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { bar, between, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { injectorDuty } from "./fuelAndAir.ts";
import { injectorFlowAt, injectorFlowNeeded } from "./injectorFlow.ts";

const rated = { ratedFlow: 8e-3, ratedPressure: 3 * bar, pressure: 4 * bar };
const wanted = { fuelFlow: 53.78e-3, injectors: 4, duty: 0.85 };

test("examples and boundary", () => {
  nearly(injectorFlowAt(rated), 9.2376e-3, 1e-5);
  nearly(injectorFlowNeeded(wanted), 15.818e-3, 1e-4);
  refuses(() => injectorFlowAt({ ...rated, pressure: 0 }), "pressure");
  refuses(() => injectorFlowNeeded({ ...wanted, injectors: 1.5 }), "injectors");
  refuses(() => injectorFlowNeeded({ ...wanted, duty: 0 }), "duty");
  refusesNonFinite(injectorFlowAt, rated);
  refusesNonFinite(injectorFlowNeeded, wanted);
});

property.prop([between(0.1, 1), between(1e-4, 1)])(
  "the flow needed works at the duty given",
  (duty, fuelFlow) => {
    const injectorFlow = injectorFlowNeeded({ fuelFlow, injectors: 6, duty });
    nearly(injectorDuty({ fuelFlow, injectors: 6, injectorFlow }), duty);
  },
);
