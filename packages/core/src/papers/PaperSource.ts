import type { BuildChange } from "../compare/BuildChange.ts";
import type { Steps } from "../derive/Steps.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import type { Build } from "../read/Build.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { Report, ReportVerdict } from "../report/Report.ts";
import type { Room } from "./findRoom.ts";
import type { Override } from "./Paper.ts";
import type { Printer } from "./print/Printer.ts";

/** Everything that papers are written from. */
export interface PaperSource {
  readonly build: Build;
  /** Fields of the build, defaults filled in. */
  readonly values: ReadonlyMap<string, FieldValue>;
  readonly report: Report;
  /** Rules that were judged, by id. */
  readonly rules: ReadonlyMap<string, CompiledRule>;
  readonly verdicts: ReadonlyMap<string, ReportVerdict>;
  readonly print: Printer;
  /** By the id of a paper, or of a paper and a line (`order-list piston`). */
  readonly overrides: ReadonlyMap<string, Override>;
  /** What changed since the state that was handed in as the one before. */
  readonly change: BuildChange | undefined;
  /** Answers what each field may become, found when it is first asked for. */
  readonly room: (path: string) => Room;
  /** The same in pieces, for whoever lets others have their turn. */
  readonly roomInSteps: (path: string) => Steps<Room>;
  /** Whether a rule rests on a field, by the ways that this build takes. */
  readonly restsOn: (rule: CompiledRule, path: string) => boolean;
}
