// Every check there is, one after another: format and lint, types, the pure stages' types, dead
// code, the sounds and the page built, then all tests. The last line is `N passed, N failed`.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

interface Count {
  readonly passed: number;
  readonly failed: number;
}

const bin = (name: string) => join("node_modules", ".bin", name);

function check(title: string, command: string, args: readonly string[]): Count {
  process.stdout.write(`\n— ${title}\n`);
  const { status } = spawnSync(command, args, { stdio: ["ignore", "inherit", "inherit"] });
  return status === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** Runs some of the tests and counts them; a run that crashed counts as one failure. */
function tests(title: string, ...which: readonly string[]): Count {
  process.stdout.write(`\n— ${title}\n`);
  const report = join(mkdtempSync(join(tmpdir(), "tankside-")), "report.json");
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  const { status } = spawnSync(bin("vitest"), ["run", ...which, ...reporters], {
    stdio: ["ignore", "inherit", "inherit"],
  });
  try {
    const { numPassedTests: passed, numFailedTests: failed } = JSON.parse(
      readFileSync(report, "utf8"),
    );
    const crashed = status !== 0 && failed === 0;
    return { passed, failed: failed + (crashed || passed === 0 ? 1 : 0) };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

const counts = [
  check("Format and lint", bin("biome"), ["ci", "--colors=off"]),
  check("Types", bin("tsc"), ["-p", "tsconfig.json"]),
  check("Types of the pure stages, without a browser", bin("tsc"), [
    "-p",
    "src/pure.tsconfig.json",
  ]),
  check("Dead code", bin("knip"), ["--no-progress"]),
  check("Sounds", bin("tsx"), ["src/voice/build-sounds.ts"]),
  check("The page", bin("vite"), ["build", "--logLevel", "error"]),
  tests("Tests", "--exclude", "tests/browser/**"),
  // With nothing beside them: what a busy machine shows late is not the page's doing.
  tests("Tests in a real browser", "tests/browser/page.test.ts"),
  // These wait more than they work, and what they capture is timed on the page's own audio clock.
  tests(
    "Tests of whole runs in a real browser",
    "tests/browser",
    "--exclude",
    "tests/browser/page.test.ts",
    "--maxWorkers=3",
  ),
];
const total = counts.reduce(
  (sum, { passed, failed }) => ({ passed: sum.passed + passed, failed: sum.failed + failed }),
  { passed: 0, failed: 0 },
);
process.stdout.write(`\n${total.passed} passed, ${total.failed} failed\n`);
process.exit(total.failed === 0 ? 0 : 1);
