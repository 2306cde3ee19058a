// The build step that makes every sound: run before the page is built, and by the tests. Tells its
// progress on standard error: on a terminal in one line, elsewhere a line for every tenth.
import { buildSounds } from "./build.ts";
import { tellProgress } from "./progress.ts";

try {
  await buildSounds(tellProgress());
} catch (error) {
  process.stderr.write(
    `\nThe sounds were not built: ${error instanceof Error ? error.message : error}\n`,
  );
  process.exit(1);
}
// The audio library keeps its thread, and Node would wait for it.
process.exit(0);
