// The program's door to the shell: its arguments and its standard input in, text and an exit status out.
import { readFileSync } from "node:fs";
import { tankside } from "./command-line.ts";

const input = () => readFileSync(0, "utf8");
const { status, out = "", error = "" } = await tankside(process.argv.slice(2), input);
process.stderr.write(error);
process.stdout.write(out, () => process.exit(status));
