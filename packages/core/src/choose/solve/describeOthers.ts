import type { DocumentSection } from "../../report/ReportDocument.ts";
import { intervalFromSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import { formatInterval } from "../../units/formatNumber.ts";
import { reachedText } from "./describeAim.ts";
import type { Solution, SolvedField, SolvedMove } from "./Solution.ts";

type Found = Extract<Solution, { state: "solved" }>;

/** `rod length 148 mm`: of a dimension's label what stands after its part. */
const sizeText = ({ label, text }: SolvedField): string => `${label.replace(/^.*?: /, "")} ${text}`;

/** Digits of a change. */
const DIGITS = 4;

/** `+0.4771 cm3`: by what a dimension changes where the leading one grows by 1 of its unit. */
function changeText({ change, unit }: SolvedMove, lead: SolvedMove): string {
  const by = change / intervalFromSi(1, unitOf(lead.unit));
  return `${by >= 0 ? "+" : "−"}${formatInterval(Math.abs(by), unit, { digits: DIGITS })}`;
}

function introOf(family: NonNullable<Found["family"]>): string {
  const { freedom, moves, members } = family;
  const [lead, ...others] = moves;
  const words = others.map((move) => `${move.label} ${changeText(move, lead!)}`);
  const { symbol } = unitOf(lead!.unit);
  const one = symbol === "1" ? "1" : `1 ${symbol}`;
  const about =
    freedom > 1
      ? `${freedom} of the dimensions may be chosen freely. State more aims, or choose: some that lie along ${lead!.label}.`
      : `For each ${one} more of ${lead!.label}: ${words.length === 0 ? "nothing else moves" : words.join("; ")}.`;
  return members.length > 0
    ? about
    : `${about} None of those that were tried stands on the steps and keeps to the allowances.`;
}

type OthersSection = DocumentSection & { readonly of: "ranges" | "others" };

/** Other solutions, each with what it comes to; where all aims are bounds, where each dimension may lie. */
export function describeOthers({ family, ranges }: Found): readonly OthersSection[] {
  const sections: OthersSection[] = [];
  if (ranges !== undefined)
    sections.push({
      of: "ranges",
      heading: "Where the sizes may lie",
      intro:
        "The aims are bounds only. Each dimension meets them in this range, the others chosen to suit; the sizes above are one choice.",
      items: ranges.map(({ path, label, lowText, highText }) => ({
        title: label,
        id: path,
        tone: "plain",
        lines: [
          { label: "from", text: lowText === highText ? `${lowText} only` : `${lowText} to ${highText}` },
        ],
      })),
    });
  if (family !== undefined)
    sections.push({
      of: "others",
      heading: "Other solutions",
      intro: introOf(family),
      items: family.members.map((member, index) => ({
        title: member.map(sizeText).join(", "),
        tone: "plain",
        lines: [
          {
            label: "reaches",
            text: family.reached[index]!.map((aim) => `${aim.name} ${reachedText(aim)}`).join("; "),
          },
        ],
      })),
    });
  return sections;
}
