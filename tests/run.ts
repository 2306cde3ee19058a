// Every check there is: format and lint, types, the pure stages' types, dead code, the sounds and the page built, then
// all tests. What waits runs beside what works, so that no core is idle. The last line is `N passed, N failed`.
import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync } from "node:fs";
import { availableParallelism, constants, setPriority, tmpdir } from "node:os";
import { join } from "node:path";

interface Count {
  readonly passed: number;
  readonly failed: number;
}

const bin = (name: string) => join("node_modules", ".bin", name);

interface Begun {
  readonly command: string;
  readonly args: readonly string[];
  /** Whether it may wait for whatever else there is to do. */
  readonly patient?: boolean;
}

/** Begun now, and told of when it is over. */
async function ended(title: string, { command, args, patient = false }: Begun): Promise<boolean> {
  const running = spawn(command, args, { stdio: ["ignore", "pipe", "inherit"] });
  if (patient && running.pid !== undefined)
    setPriority(running.pid, constants.priority.PRIORITY_BELOW_NORMAL);
  const told: Buffer[] = [];
  running.stdout.on("data", (part) => told.push(part));
  const status = await new Promise<number | null>((resolve) => running.on("close", resolve));
  process.stdout.write(`\n— ${title}\n${Buffer.concat(told)}`);
  return status === 0;
}

async function check(title: string, command: string, args: readonly string[]): Promise<Count> {
  const passed = await ended(title, { command, args });
  return passed ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
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
function counted(file: string, ended: boolean): Count {
  try {
    const { numPassedTests: passed, numFailedTests: failed } = JSON.parse(
      readFileSync(file, "utf8"),
    );
    const crashed = !ended && failed === 0;
    return { passed, failed: failed + (crashed || passed === 0 ? 1 : 0) };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

async function tests(
  title: string,
  which: readonly string[],
  { patient = false } = {},
): Promise<Count> {
  const file = report();
  const args = toRun(file, which);
  return counted(file, await ended(title, { command: bin("vitest"), args, patient }));
}

const inBrowser = (names: readonly string[]) =>
  names.map((name) => `tests/browser/${name}.test.ts`);
const without = (files: readonly string[]) => files.flatMap((file) => ["--exclude", file]);

/** What is heard, held to the millisecond: it waits more than it works, and goes before all else. */
const sounding = inBrowser([
  "run",
  "recovery",
  "pocket",
  "gaps",
  "rehearsal",
  "own-voice",
  "hear-first",
  "knocks",
]);
const hidden = inBrowser(["hidden"]);
const newcomer = "newcomer";

// None of these asks for what the others make, and some of them work on one core only.
const checks = await Promise.all([
  check("Format and lint", bin("biome"), ["ci", "--colors=off"]),
  check("Types", bin("tsc"), ["-p", "tsconfig.json"]),
  check("Types of the pure stages, without a browser", bin("tsc"), [
    "-p",
    "src/pure.tsconfig.json",
  ]),
  check("Dead code", bin("knip"), ["--no-progress"]),
  check("Sounds", bin("tsx"), ["src/voice/build-sounds.ts"]),
]);
const page = await check("The page", bin("vite"), ["build", "--logLevel", "error"]);

async function heard(): Promise<readonly Count[]> {
  // It has ten seconds by the clock on the wall.
  const first = await tests("A newcomer", [
    ...inBrowser(["page"]),
    `--testNamePattern=${newcomer}`,
    patience,
  ]);
  const rest = await tests("Sound in a real browser", [...sounding, "--maxWorkers=3", patience]);
  return [first, rest];
}

async function allElse(): Promise<readonly Count[]> {
  const units = await tests(
    "Tests",
    [...without(["tests/browser/**"]), `--maxWorkers=${cores}`, patience],
    { patient: true },
  );
  const pages = await tests(
    "All else in a real browser",
    [
      "tests/browser",
      ...without([...sounding, ...hidden]),
      `--testNamePattern=^(?!.*${newcomer})`,
      "--maxWorkers=4",
      patience,
    ],
    { patient: true },
  );
  return [units, pages];
}

const [unseen, loud, others] = await Promise.all([
  // Six minutes, in which a page does next to nothing.
  tests("A run out of sight", hidden),
  heard(),
  allElse(),
]);
const counts = [...checks, page, unseen, ...loud, ...others];
const total = counts.reduce(
  (sum, { passed, failed }) => ({ passed: sum.passed + passed, failed: sum.failed + failed }),
  { passed: 0, failed: 0 },
);
process.stdout.write(`\n${total.passed} passed, ${total.failed} failed\n`);
process.exit(total.failed === 0 ? 0 : 1);
