import { rodAlloys } from "../../../tables/alloys.ts";
import { strengthByAlloy } from "../../../tables/strengthByAlloy.ts";
import { dimension } from "../../fields.ts";

/** Beam, strength and the small end’s eye. */
export const beamFields = {
  beamArea: dimension({
    label: "Least beam section",
    symbol: "A_r",
    unit: "mm2",
    range: ["20 mm2", "3000 mm2"],
    tolerance: "5 %",
    help: "Smallest cross-section of the beam.",
  }),
  ratedSpeed: dimension({
    label: "Rated speed",
    symbol: "n_rod",
    unit: "rpm",
    range: ["1000 rpm", "25000 rpm"],
    exact: "a limit that its maker or the builder sets, not a size that is measured",
    help: "Highest speed for which the rod's maker rates it with parts of this mass.",
  }),
  bendOrTwist: dimension({
    label: "Bend or twist over 100 mm",
    symbol: "d_bt",
    unit: "mm",
    measureBy: "trial-assembly",
    range: ["0 mm", "2 mm"],
    tolerance: "0.005",
    help: "How far the axes of big end and small end run apart over 100 mm, by bend or by twist, whichever is more; the worst rod of the set.",
  }),
  beamInertiaInPlane: dimension({
    label: "Second moment of the beam, in plane",
    symbol: "I_x",
    unit: "mm4",
    range: ["100 mm4", "2000000 mm4"],
    tolerance: "5 %",
    help: "Second moment of area of the beam’s middle section against bending in the plane in which the rod swings.",
  }),
  beamInertiaSideways: dimension({
    label: "Second moment of the beam, sideways",
    symbol: "I_y",
    unit: "mm4",
    range: ["50 mm4", "1000000 mm4"],
    tolerance: "5 %",
    help: "Second moment of area of the beam’s middle section against bending along the crankshaft.",
  }),
  yieldStrength: dimension({
    label: "Rod yield strength",
    symbol: "R_r",
    unit: "MPa",
    range: ["150 MPa", "2200 MPa"],
    tolerance: "5 %",
    help: "Yield strength of the rod’s material at 20 °C.",
    assumed: strengthByAlloy("connectingRod.alloy", "yield", rodAlloys),
  }),
  fatigueStrength: dimension({
    label: "Rod fatigue strength",
    symbol: "sigma_w",
    unit: "MPa",
    range: ["40 MPa", "900 MPa"],
    tolerance: "10 %",
    help: "Stress amplitude at 20 °C that the rod’s surface stands for ever, or for the life that is wanted.",
  }),
  smallEndOuterDiameter: dimension({
    label: "Small-end outer diameter",
    symbol: "D_so",
    unit: "mm",
    range: ["12 mm", "120 mm"],
    tolerance: "0.2",
    help: "Outer diameter of the small-end eye.",
  }),
  bushOuterDiameter: dimension({
    label: "Bush outer diameter",
    symbol: "D_bu",
    unit: "mm",
    range: ["9 mm", "100 mm"],
    tolerance: "0.01",
    help: "Outer diameter of the small-end bush, which is the bore of the eye.",
  }),
  bushInterference: dimension({
    label: "Bush interference",
    symbol: "delta_bu",
    unit: "mm",
    range: ["0 mm", "0.3 mm"],
    tolerance: "0.01",
    help: "Outer diameter of the bush before pressing less the bore of the eye.",
  }),
};
