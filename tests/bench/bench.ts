// What is too noisy to assert, measured and printed: captured onsets beside naive timers, plan and
// compile time, render speed, memory, how soon a session is a file, ten thousand runs listed and
// searched, knocks heard, what a running session costs, and how much the first screen loads. Run by
// `npm run bench`.
import { spawnSync } from "node:child_process";
import { compileBench } from "./compile-bench.ts";
import { downloadBench } from "./download-bench.ts";
import { exactBench } from "./exact-bench.ts";
import { heardBench } from "./heard-bench.ts";
import { falseKnockBench, knockBench } from "./knock-bench.ts";
import { liveBench } from "./live-bench.ts";
import { logBench } from "./log-bench.ts";
import { planBench } from "./plan-bench.ts";
import { renderBench } from "./render-bench.ts";
import { returningBench, runningBench } from "./running-bench.ts";
import { takeAlongBench } from "./take-along-bench.ts";
import { underSpeechBench } from "./under-speech-bench.ts";

for (const [command, ...args] of [
  ["node_modules/.bin/tsx", "src/voice/build-sounds.ts"],
  ["node_modules/.bin/vite", "build", "--logLevel", "error"],
]) {
  spawnSync(command ?? "", args, { stdio: "inherit" });
}

for (const bench of [
  downloadBench,
  planBench,
  compileBench,
  exactBench,
  heardBench,
  underSpeechBench,
  knockBench,
  falseKnockBench,
  renderBench,
  takeAlongBench,
  logBench,
  liveBench,
  runningBench,
  returningBench,
]) {
  const { title, rows } = await bench();
  console.log(`\n${title}`);
  console.table(rows);
}
