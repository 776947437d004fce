import { choice } from "../fields.ts";
import { part } from "../part.ts";
import { followerFields } from "./valveDrive/followerFields.ts";
import { massFields } from "./valveDrive/massFields.ts";
import { pushrodFields } from "./valveDrive/pushrodFields.ts";
import { rockerFields } from "./valveDrive/rockerFields.ts";

/** What moves the valves: follower, pushrod, rocker. */
export const valveDrive = part(
  {
    key: "valveDrive",
    id: "valve-drive",
    label: "Valve drive",
    help: "What stands between camshaft and valve.",
  },
  {
    kind: choice({
      label: "Kind",
      help: "How the lobe moves the valve.",
      options: {
        pushrod: "camshaft in the block, pushrods and rockers",
        rocker: "overhead camshaft with rockers",
        finger: "overhead camshaft with finger followers",
        bucket: "overhead camshaft straight on bucket followers",
      },
    }),
    ...rockerFields,
    ...massFields,
    ...pushrodFields,
    ...followerFields,
  },
);
