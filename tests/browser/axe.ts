// A page in, what axe-core finds wrong with it for those who do not see, hear or point as most do, out.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** @param contrast left out where it is measured apart, and more strictly (measure.ts): it takes most of the time. */
export async function axeFinds(page: Page, contrast = true): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async (enabled) => {
    const { axe } = window as unknown as {
      axe: {
        run(options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
      };
    };
    const { violations } = await axe.run({ rules: { "color-contrast": { enabled } } });
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  }, contrast);
}
