import { describe, expect, it } from "vitest";
import { lineJudge } from "./lineJudge.ts";

const judge = lineJudge({ file: "builds.jsonl", brief: true });
const told = async (text: string) => judge({ number: 7, text });

describe("a line of a stream", () => {
  it.each([
    ['{"trialfit":"1","name":"a","name":"b"}', "a key that stands twice in one object"],
    ['{"trialfit":"1","name":"a","block":{"bore":"86 mm","bore":"87 mm"}}', "a key that stands twice"],
    ['{"trialfit":"1","name":"a","block":{"bore":"86 mm","b\\u006fre":"87 mm"}}', "a key that stands twice"],
    ["null", "found null"],
    ["7", "found 7"],
    ['{"trialfit":', "a line that is not JSON"],
  ])("%s is refused", async (text, found) => {
    const { problems, report } = await told(text);
    expect(problems?.join()).toContain(found);
    expect(problems?.join()).toContain("builds.jsonl:7");
    expect(report).toBeUndefined();
  });

  it.each([
    ['{ "trialfit" : "1", "name": "a \\"quoted\\": name", "block": { "bore": "86 mm" } }'],
    ['{"trialfit":"1","name":"name\\\\","block":{"bore":"86 mm"},"crankshaft":{"stroke":"90 mm"}}'],
  ])("%s is judged", async (text) => expect((await told(text)).report).toContain('"line":7'));
});
