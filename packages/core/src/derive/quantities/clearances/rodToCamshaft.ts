import { rodClearance } from "../../clearances/rodClearance.ts";
import { camshaftEnvelope } from "../../clearances/rodObstacles.ts";

export const rodToCamshaft = rodClearance({
  id: "rodToCamshaft",
  name: "Rod to camshaft",
  symbol: "c_rc",
  obstacle: camshaftEnvelope,
  meaning:
    "Least distance between the connecting rod and the circle that the highest lobe of a camshaft in the block sweeps; negative when they can strike. A longer stroke or a higher lobe takes it away.",
  expect: "16.64 mm",
});
