import { choice, dimension } from "../../fields.ts";

/** What rides on the lobe, and how its lash is taken up. */
export const followerFields = {
  followerFace: choice({
    label: "Follower face",
    help: "What of the follower touches the lobe.",
    options: {
      flat: "a flat or nearly flat face that slides on the lobe",
      roller: "a roller",
      curved: "a curved pad that slides on the lobe, as on many fingers",
    },
    assumed: {
      byChoice: "valveDrive.kind",
      values: { bucket: { value: "flat", because: "a bucket slides on the lobe with its flat top" } },
    },
  }),
  followerDiameter: dimension({
    label: "Follower face diameter",
    symbol: "D_fo",
    unit: "mm",
    range: ["8 mm", "60 mm"],
    tolerance: "0.05",
    help: "Diameter of the flat face on which the lobe rubs.",
  }),
  followerBodyDiameter: dimension({
    label: "Follower body diameter",
    symbol: "D_fb",
    unit: "mm",
    range: ["8 mm", "60 mm"],
    tolerance: "0.005",
    help: "Outside diameter of the follower or bucket where it slides in its bore.",
  }),
  followerBore: dimension({
    label: "Follower bore",
    symbol: "B_fb",
    unit: "mm",
    range: ["8 mm", "60 mm"],
    tolerance: "0.01",
    help: "Bore in block or head in which the follower or bucket slides, by bore gauge.",
  }),
  rollerRadius: dimension({
    label: "Roller radius",
    symbol: "R_ro",
    unit: "mm",
    range: ["3 mm", "40 mm"],
    tolerance: "0.1",
    help: "Radius of the roller that rides on the lobe.",
  }),
  lashAdjustment: choice({
    label: "Taking up of lash",
    help: "Whether lash is set by hand or taken up by oil pressure.",
    options: {
      solid: "set with screws, shims or caps: the train runs with lash",
      hydraulic: "taken up by hydraulic lifters or adjusters: no lash",
    },
  }),
  lifterPreload: dimension({
    label: "Lifter preload",
    symbol: "x_hl",
    unit: "mm",
    measureBy: "trial-assembly",
    range: ["-1 mm", "5 mm"],
    tolerance: "0.1",
    help: "How far the plunger of a hydraulic lifter is pressed down from its top stop with the valve shut: turns past zero lash times the pitch of the thread, brought to the lifter by the lever of the rocker.",
  }),
};
