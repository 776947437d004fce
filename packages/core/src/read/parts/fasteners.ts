import { fastenerFields } from "../fastener/fastenerFields.ts";
import { jointFields, springFields } from "../fastener/jointFields.ts";
import { choice, count } from "../fields.ts";
import { part } from "../part.ts";

/** Studs or bolts of the main caps. */
export const mainFastener = part(
  {
    key: "mainFastener",
    id: "main-fastener",
    label: "Main fasteners",
    help: "Studs or bolts of the main caps.",
  },
  {
    size: choice({
      label: "Stud size",
      help: "Against the engine's own main fasteners.",
      options: {
        original: "same thread as the engine was made with",
        larger: "larger thread, block drilled for it",
      },
    }),
    ...fastenerFields({ key: "mainFastener", where: "main", into: "block" }),
    ...jointFields("the cap with its washer"),
  },
);

/** Studs or bolts of the cylinder head. */
export const headFastener = part(
  {
    key: "headFastener",
    id: "head-fastener",
    label: "Head fasteners",
    help: "Studs or bolts of the cylinder head.",
  },
  {
    perCylinder: count({
      label: "Fasteners round one cylinder",
      symbol: "n_h",
      help: "Fasteners that stand round one cylinder, each counted whole, those shared with a neighbour too.",
      least: 2,
      most: 12,
    }),
    ...fastenerFields({ key: "headFastener", where: "head", into: "block" }),
    ...jointFields("head and gasket with the washer"),
  },
);

/** The bolts that hold the flywheel. */
export const flywheelFastener = part(
  {
    key: "flywheelFastener",
    id: "flywheel-fastener",
    label: "Flywheel fasteners",
    help: "The bolts that hold the flywheel to the crankshaft.",
  },
  {
    ...fastenerFields({ key: "flywheelFastener", where: "flywheel", into: "crankshaft" }),
    ...springFields("the flywheel’s hub with any washer"),
  },
);
