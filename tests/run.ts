// Every check there is, one after another: format and lint, types, the pure stages' types, dead
// code, the sounds and the page built, then all tests. The last line is `N passed, N failed`.
import { type StdioOptions, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";

interface Count {
  readonly passed: number;
  readonly failed: number;
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

function checkMeanwhile(title: string, command: string, args: readonly string[]) {
  const running = begun(title, command, args);
  return async (): Promise<Count> =>
    (await running()) === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

function check(title: string, command: string, args: readonly string[]): Count {
  process.stdout.write(`\n— ${title}\n`);
  const { status } = spawnSync(command, args, { stdio: ["ignore", "inherit", "inherit"] });
  return status === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

const cores = availableParallelism();
/** A busy machine is slow, and that is no failure, ms. */
const patience = "--testTimeout=60000";

const report = () => join(mkdtempSync(join(tmpdir(), "tankside-")), "report.json");

const toRun = (file: string, which: readonly string[]): readonly string[] => [
  "run",
  ...which,
  "--reporter=default",
  "--reporter=json",
  // Files share a worker's modules: read once, they are as good for the next.
  "--no-isolate",
  `--outputFile.json=${file}`,
];

/** What a report counts; a run that crashed counts as one failure. */
function counted(file: string, status: number | null): Count {
  try {
    const { numPassedTests: passed, numFailedTests: failed } = JSON.parse(
      readFileSync(file, "utf8"),
    );
    const crashed = status !== 0 && failed === 0;
    return { passed, failed: failed + (crashed || passed === 0 ? 1 : 0) };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

/** About what is heard: sounds are timed, and whatever else runs gives way to them. */
const ofSound = [
  "run",
  "recovery",
  "pocket",
  "gaps",
  "rehearsal",
  "own-voice",
  "knocks",
  "hear-first",
].map((name) => `tests/browser/${name}.test.ts`);
const newcomer = "newcomer";

function tests(title: string, ...which: readonly string[]): Count {
  process.stdout.write(`\n— ${title}\n`);
  const file = report();
  const stdio: StdioOptions = ["ignore", "inherit", "inherit"];
  return counted(file, spawnSync(bin("vitest"), toRun(file, which), { stdio }).status);
}

/** For what waits far more than it works. */
function testsMeanwhile(title: string, ...which: readonly string[]): () => Promise<Count> {
  const file = report();
  const running = begun(title, bin("vitest"), toRun(file, which));
  return async () => counted(file, await running());
}

/** For what may wait: it is given what the machine has left. */
function testsLast(title: string, ...which: readonly string[]): () => Promise<Count> {
  const file = report();
  const running = begun(title, "nice", ["-n", "15", bin("vitest"), ...toRun(file, which)]);
  return async () => counted(file, await running());
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
const counts: Count[] = [];
for (const ended of [...checks, sounds]) counts.push(await ended());
counts.push(check("The page", bin("vite"), ["build", "--logLevel", "error"]));
// Six minutes out of sight, in which a page does next to nothing.
const hidden = testsMeanwhile("A run out of sight", "tests/browser/hidden.test.ts");
const all = testsLast("Tests", "--exclude", "tests/browser/**", `--maxWorkers=${cores}`, patience);
counts.push(
  // They wait more than they work, and what they capture is timed on the page's own clocks.
  tests("Tests of what is heard", ...ofSound, "--maxWorkers=2", patience),
  await all(),
  // With nothing beside it: it has ten seconds by the clock on the wall.
  tests("A newcomer", "tests/browser/page.test.ts", `--testNamePattern=${newcomer}`, patience),
  tests(
    "Tests in a real browser",
    "tests/browser",
    ...["tests/browser/hidden.test.ts", ...ofSound].flatMap((file) => ["--exclude", file]),
    `--testNamePattern=^(?!.*${newcomer})`,
    "--maxWorkers=3",
    patience,
  ),
  await hidden(),
);
const total = counts.reduce(
  (sum, { passed, failed }) => ({ passed: sum.passed + passed, failed: sum.failed + failed }),
  { passed: 0, failed: 0 },
);
process.stdout.write(`\n${total.passed} passed, ${total.failed} failed\n`);
process.exit(total.failed === 0 ? 0 : 1);
