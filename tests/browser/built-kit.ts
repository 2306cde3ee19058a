// The tones that the page plays, from the built files.
import { readFileSync } from "node:fs";
import { openKit } from "../../src/tones/kit.ts";

const file = (name: string) => readFileSync(new URL(`../../public/sound/${name}`, import.meta.url));

export const builtKit = openKit(JSON.parse(file("tones.json").toString()), file("tones.pcm"));
