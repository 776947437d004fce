import { type Build, compareReports, type JudgedBuild, type Report, refineBuild } from "trialfit";
import { prettyView } from "../../data/prettyUnits.ts";
import type { ChoosingGround } from "../choosingProtocol.ts";
import type { PairView } from "../pairProtocol.ts";
import { judgedBy } from "./judgedBy.ts";
import { type Readable, readWhatCan } from "./readWhatCan.ts";
import { viewPair } from "./viewPair.ts";

type By = Pick<ChoosingGround, "stage" | "set">;

/** The build that stands beside the one on the bench: read once, judged once by the same rules. */
export class OtherBuild {
  private readonly read: Readable;
  private judged: { readonly by: By; readonly report: Report } | undefined;

  constructor(text: string) {
    this.read = readWhatCan(text, "the other build");
  }

  /**
   * Both side by side.
   * @param report of the build on the bench, with nothing pending
   * @param signal ends it at the next breath
   * @throws the reason of the signal
   */
  async beside(build: Build, report: Report, by: By, signal: AbortSignal): Promise<PairView> {
    const { build: other, troubles } = this.read;
    if (other === undefined)
      return { state: "unread", lines: troubles.map(({ text }) => ({ text, tone: "bad" })) };
    const sides: readonly [JudgedBuild, JudgedBuild] = [
      { build, report },
      { build: other, report: await this.report(other, by, signal) },
    ];
    const change = await compareReports(sides[1], sides[0], signal);
    return prettyView(viewPair(change, [sides[0].report, sides[1].report], troubles));
  }

  private async report(build: Build, by: By, signal: AbortSignal): Promise<Report> {
    const { judged } = this;
    if (judged !== undefined && judged.by.stage === by.stage && judged.by.set === by.set)
      return judged.report;
    let last: Report | undefined;
    for await (const { report } of refineBuild(build, { ...judgedBy(by), signal })) last = report;
    this.judged = { by, report: last! };
    return last!;
  }
}
