// Makes a bare clone ready, with Node's own modules alone: the packages when the lock file has
// changed, and, asked with --browser, a Chromium for the tests. Says what it does on standard error.
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const stamp = join(root, "node_modules", ".cache", "tankside", "installed");

const tell = (line) => process.stderr.write(`${line}\n`);

function run(command, args, env = process.env) {
  // Standard output belongs to the command that follows, so all of this goes to standard error.
  const running = spawn(command, args, { cwd: root, env, stdio: ["ignore", 2, 2] });
  return new Promise((resolve) => {
    running.on("error", () => resolve(false));
    running.on("close", (status) => resolve(status === 0));
  });
}

async function installPackages() {
  const lock = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lock) return;
  tell("Installing packages …");
  const { NODE_ENV, npm_config_omit, ...env } = process.env;
  const ci = ["ci", "--include=dev", "--no-audit", "--no-fund", "--loglevel=error"];
  if (!(await run("npm", ci, env))) {
    tell("The packages could not be installed: `npm ci` failed (its message stands above).");
    process.exit(1);
  }
  mkdirSync(join(stamp, ".."), { recursive: true });
  writeFileSync(stamp, lock);
}

const browserNames = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "chrome",
];

function findBrowser() {
  const named = process.env.CHROME_PATH;
  if (named !== undefined && existsSync(named)) return named;
  const folders = (process.env.PATH ?? "").split(delimiter);
  return browserNames
    .flatMap((name) => folders.map((folder) => join(folder, name)))
    .find((path) => existsSync(path));
}

async function installBrowser() {
  const debian = process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");
  if (debian) {
    tell("Installing Chromium for the tests …");
    const apt = ["-o", "DPkg::Lock::Timeout=300"];
    await run("apt-get", [...apt, "update", "-qq"]);
    await run("apt-get", [...apt, "install", "-y", "-qq", "--no-install-recommends", "chromium"]);
  }
  if (findBrowser() !== undefined) return;
  tell("No Chromium was found. Install one, or set CHROME_PATH to it; the browser tests need it.");
  if (process.env.CI) process.exit(1);
}

/** While a browser is still on its way: the sounds take as long, and ask nothing of the network. */
async function buildSounds() {
  await run(join(root, "node_modules", ".bin", "tsx"), ["src/voice/build-sounds.ts"]);
}

const packages = installPackages();
// Both wait for the network, neither for the other.
if (process.argv.includes("--browser") && findBrowser() === undefined)
  await Promise.all([packages.then(buildSounds), installBrowser()]);
else await packages;
