import { choice, dimension } from "../fields.ts";
import { part } from "../part.ts";

const signs = { "before TDC": -1, "after TDC": 1 } as const;

/** When the charge is lit and how long it burns. */
export const combustion = part(
  {
    key: "combustion",
    id: "combustion",
    label: "Combustion",
    help: "When the charge is lit and how long it burns.",
    bought: false,
  },
  {
    sparkTiming: dimension({
      label: "Spark timing",
      symbol: "theta_sp",
      unit: "deg",
      range: ["-70 deg", "20 deg"],
      tolerance: "1",
      signs,
      help: "Crank angle of the spark at the power target, before or after top dead centre of the firing stroke.",
    }),
    burnStart: dimension(
      {
        label: "Start of burning",
        symbol: "theta_bs",
        unit: "deg",
        range: ["-60 deg", "30 deg"],
        tolerance: "5",
        signs,
        help: "Crank angle at which the charge begins to give heat, some degrees after the spark, at the power target. It sets where the peak pressure lies.",
        assumed: {
          value: "16 deg before TDC ± 6",
          because:
            "spark-ignition engines at full power begin to burn at about 10 to 22° before TDC (from memory)",
        },
      },
      "assumed",
    ),
    burnDuration: dimension(
      {
        label: "Duration of burning",
        symbol: "theta_bd",
        unit: "deg",
        range: ["15 deg", "120 deg"],
        tolerance: "8",
        help: "Crank angle from the start of burning until next to nothing is left to burn.",
        assumed: {
          value: "55 deg ± 10",
          because: "charges burn over about 45 to 65° of crank angle at full power (from memory)",
        },
      },
      "assumed",
    ),
    octaneTrendSpread: dimension({
      label: "Spread about the octane trend",
      symbol: "delta_oct",
      unit: "1",
      range: ["-3", "3"],
      tolerance: "0.5",
      help: "How far the trapped ratio that this engine bears lies from what engines usually bear on the octane number; positive when it bears more. Chamber, head metal, charge temperature and spark move it.",
      assumed: {
        value: "0 ± 0.5",
        because:
          "an aluminium head, a cool charge and a good squish band bear 0.3 to 0.5 more, an iron head as much less (from memory)",
      },
    }),
    knockReference: choice({
      label: "Build to compare knock with",
      help: "Whether a build of this engine that is known to run clean is at hand: its knock integral is then compared.",
      options: { yes: "its knock integral is entered", no: "none" },
      assumed: {
        value: "no",
        because: "no build is named to compare with",
        unless: ["combustion.referenceKnockIntegral"],
      },
    }),
    referenceKnockIntegral: dimension({
      label: "Knock integral of the clean build",
      symbol: "I_kr",
      unit: "1",
      range: ["0.01", "50"],
      tolerance: "5 %",
      help: "Knock integral that this program gives for a build of the same engine that is known to run without knock on the same fuel.",
    }),
  },
);
