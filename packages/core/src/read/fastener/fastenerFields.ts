import { dimension } from "../fields.ts";
import { strengthFields } from "./strengthFields.ts";
import { threadFields } from "./threadFields.ts";
import { tighteningFields } from "./tighteningFields.ts";

/** What any screwed joint needs to know of one fastener. */
export function fastenerFields(fastener: {
  /** Key of the part in the build file. */
  readonly key: string;
  /** Word of the fastener: main, head. */
  readonly where: string;
  /** Into what it is screwed. */
  readonly into: string;
}) {
  const { key, where, into } = fastener;
  return {
    ...threadFields(key),
    shankArea: dimension({
      label: "Shank section",
      symbol: "A_sh",
      unit: "mm2",
      range: ["8 mm2", "800 mm2"],
      tolerance: "2 %",
      help: "Smallest section outside the thread.",
    }),
    ...tighteningFields(key, where),
    ...strengthFields(key),
    engagement: dimension({
      label: "Thread engagement",
      symbol: "m_e",
      unit: "mm",
      range: ["2 mm", "120 mm"],
      tolerance: "0.5",
      help: `Length of thread engaged in the ${into}: turns counted × pitch.`,
    }),
  };
}
