// Loaded into `trialfit` by tests/bench/runStream.ts before anything else, in its process and in its workers: at SIGUSR2
// each collects what it no longer uses and says on pipe 3 how much is left.
import { writeSync } from "node:fs";
import { BroadcastChannel, isMainThread, receiveMessageOnPort, threadId } from "node:worker_threads";

const PIPE = 3;
const channel = new BroadcastChannel("tell the heap");
channel.unref();

/** @param {number} asked number of the question */
function tell(asked) {
  globalThis.gc();
  const { heapUsed, external } = process.memoryUsage();
  writeSync(PIPE, `${JSON.stringify({ asked, thread: threadId, heapUsed, external })}\n`);
}

if (isMainThread) {
  let asked = 0;
  process.on("SIGUSR2", () => {
    asked += 1;
    channel.postMessage(asked);
    tell(asked);
  });
} else {
  // A worker sleeps from one line to the next and hears nothing: it looks for a question whenever it reads a line.
  const parse = JSON.parse;
  JSON.parse = (...input) => {
    const question = receiveMessageOnPort(channel);
    if (question !== undefined) tell(question.message);
    return parse(...input);
  };
}
