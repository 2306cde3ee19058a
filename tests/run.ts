// Every check there is, one after another: format and lint, types, the pure stages' types, dead
// code, the sounds and the page built, then all tests. What failed is named once more at the end;
// the last line is `N passed, N failed`.
import { type StdioOptions, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";

interface Outcome {
  readonly passed: number;
  /** What failed, by name and with what was said of it. */
  readonly failed: readonly string[];
}

const bin = (name: string) => join("node_modules", ".bin", name);

/** Begun now, and told of when it is waited for. */
function begun(
  title: string,
  command: string,
  args: readonly string[],
): () => Promise<number | null> {
  const running = spawn(command, args, { stdio: ["ignore", "pipe", "inherit"] });
  const told: Buffer[] = [];
  running.stdout?.on("data", (part) => told.push(part));
  const ended = new Promise<number | null>((resolve) => running.on("close", resolve));
  return async () => {
    const status = await ended;
    process.stdout.write(`\n— ${title}\n${Buffer.concat(told)}`);
    return status;
  };
}

const checked = (title: string, status: number | null): Outcome =>
  status === 0 ? { passed: 1, failed: [] } : { passed: 0, failed: [title] };

function checkMeanwhile(title: string, command: string, args: readonly string[]) {
  const running = begun(title, command, args);
  return async () => checked(title, await running());
}

function check(title: string, command: string, args: readonly string[]): Outcome {
  process.stdout.write(`\n— ${title}\n`);
  const { status } = spawnSync(command, args, { stdio: ["ignore", "inherit", "inherit"] });
  return checked(title, status);
}

const cores = availableParallelism();
/** A busy machine is slow, and that is no failure, ms. */
const patience = ["--testTimeout=60000", "--hookTimeout=60000"];

/** What is read here of a report. */
interface Report {
  readonly numPassedTests: number;
  readonly testResults: readonly {
    readonly name: string;
    /** Why a file could not be run; empty where it could. */
    readonly message: string;
    readonly assertionResults: readonly {
      readonly fullName: string;
      readonly status: string;
      readonly failureMessages: readonly string[];
    }[];
  }[];
}

const newReport = () => join(mkdtempSync(join(tmpdir(), "tankside-")), "report.json");

const toRun = (file: string, which: readonly string[]): readonly string[] => [
  "run",
  ...which,
  "--reporter=default",
  "--reporter=json",
  // Files share a worker's modules: read once, they are as good for the next.
  "--no-isolate",
  `--outputFile.json=${file}`,
];

/** What a report tells; a run that crashed, or ran nothing, is a failure of its own. */
function told(title: string, file: string, status: number | null): Outcome {
  try {
    const report: Report = JSON.parse(readFileSync(file, "utf8"));
    const failed = report.testResults.flatMap(({ name, message, assertionResults }) => {
      const tests = assertionResults.filter((it) => it.status === "failed");
      if (tests.length === 0 && message) return [`${name}: ${message}`];
      return tests.map((it) => `${name}: ${it.fullName}\n${it.failureMessages.join("\n")}`);
    });
    const passed = report.numPassedTests;
    const crashed = failed.length === 0 && (status !== 0 || passed === 0);
    return { passed, failed: crashed ? [title] : failed };
  } catch {
    return { passed: 0, failed: [title] };
  }
}

/** About what is heard: sounds are timed, and whatever else runs gives way to them. */
const ofSound = [
  "run",
  "recovery",
  "let-sound",
  "pocket",
  "gaps",
  "rehearsal",
  "own-voice",
  "knocks",
  "hear-first",
].map((name) => `tests/browser/${name}.test.ts`);
const newcomer = "newcomer";

function tests(title: string, ...which: readonly string[]): Outcome {
  process.stdout.write(`\n— ${title}\n`);
  const file = newReport();
  const stdio: StdioOptions = ["ignore", "inherit", "inherit"];
  return told(title, file, spawnSync(bin("vitest"), toRun(file, which), { stdio }).status);
}

/** Tests beside others; `niceness` is how far they give way to those. */
function testsMeanwhile(title: string, niceness: number, ...which: readonly string[]) {
  const file = newReport();
  const vitest = [bin("vitest"), ...toRun(file, which)];
  const running = begun(title, "nice", ["-n", `${niceness}`, ...vitest]);
  return async () => told(title, file, await running());
}

// None of these asks for what the others make, and some of them work on one core only.
const checks = [
  checkMeanwhile("Format and lint", bin("biome"), ["ci", "--colors=off"]),
  checkMeanwhile("Types", bin("tsc"), ["-p", "tsconfig.json"]),
  checkMeanwhile("Types of the pure stages, without a browser", bin("tsc"), [
    "-p",
    "src/pure.tsconfig.json",
  ]),
  checkMeanwhile("Dead code", bin("knip"), ["--no-progress"]),
];
const sounds = checkMeanwhile("Sounds", bin("tsx"), ["src/voice/build-sounds.ts"]);
const outcomes: Outcome[] = [];
for (const ended of [...checks, sounds]) outcomes.push(await ended());
outcomes.push(check("The page", bin("vite"), ["build", "--logLevel", "error"]));
// Six minutes out of sight, in which a page does next to nothing.
const hidden = testsMeanwhile("A run out of sight", 0, "tests/browser/hidden.test.ts");
const withoutBrowser = testsMeanwhile(
  "Tests without a browser",
  15,
  ...["--exclude", "tests/browser/**", `--maxWorkers=${cores}`, ...patience],
);
outcomes.push(
  // They wait more than they work, and what they capture is timed on the page's own clocks.
  tests("Tests of what is heard", ...ofSound, "--maxWorkers=2", ...patience),
  await withoutBrowser(),
  tests(
    "Tests in a real browser",
    "tests/browser",
    ...["tests/browser/hidden.test.ts", ...ofSound].flatMap((file) => ["--exclude", file]),
    `--testNamePattern=^(?!.*${newcomer})`,
    "--maxWorkers=3",
    ...patience,
  ),
  await hidden(),
  // With nothing beside it: it has ten seconds by the clock on the wall.
  tests("A newcomer", "tests/browser/page.test.ts", `--testNamePattern=${newcomer}`, ...patience),
);
const passed = outcomes.reduce((sum, outcome) => sum + outcome.passed, 0);
const failed = outcomes.flatMap((outcome) => outcome.failed);
for (const each of failed) process.stdout.write(`\n✗ ${each}\n`);
process.stdout.write(`\n${passed} passed, ${failed.length} failed\n`);
process.exit(failed.length === 0 ? 0 : 1);
