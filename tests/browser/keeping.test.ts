import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { keeping } from "../../src/ui/words/en/keep.ts";
import { serveDist } from "./serve.ts";
import { setStage } from "./stage.ts";

interface Asked {
  readonly asked: readonly string[];
}

describe("What a real browser keeps", () => {
  const stage = setStage();

  /** Lights out, in a browser of its own. */
  async function lightsOut(prepared: (page: Page) => Promise<unknown>): Promise<Page> {
    // Kept aside by no worker, so that nothing else is in the store.
    const context = await stage.browser.newContext({ serviceWorkers: "block" });
    const page = await context.newPage();
    await prepared(page);
    await page.goto(`${stage.served.url}#lights-out`);
    await page.getByRole("button", { name: /^Begin/ }).waitFor();
    return page;
  }

  const begins = async (page: Page) => {
    await page.getByRole("button", { name: /^Begin/ }).click();
    await page.locator(".guided").waitFor();
  };

  test.concurrent("is nothing where it refuses its store: that is said before a run, which begins all the same", {
    timeout: 60_000,
  }, async () => {
    const page = await lightsOut((it) =>
      it.addInitScript(() => {
        Object.defineProperty(window, "indexedDB", {
          get() {
            throw new DOMException("refused", "SecurityError");
          },
        });
      }),
    );
    await page.getByText(keeping.nothing).waitFor();
    await begins(page);
    await page.context().close();
  });

  test.concurrent("has no room where its quota is spent: that is said before a run, which begins all the same", {
    timeout: 60_000,
  }, async () => {
    const page = await lightsOut(async (it) => {
      const devtools = await it.context().newCDPSession(it);
      const { origin } = new URL(stage.served.url);
      await devtools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1000 });
    });
    await page.getByText(keeping.noRoom).waitFor();
    await begins(page);
    await page.context().close();
  });

  test.concurrent("is said nothing of where it keeps a run, and asked to stay by the first press, not before", {
    timeout: 60_000,
  }, async () => {
    const page = await lightsOut((it) =>
      it.addInitScript(() => {
        const asked: string[] = [];
        Object.assign(window, { asked });
        const persist = navigator.storage.persist.bind(navigator.storage);
        navigator.storage.persist = () => {
          asked.push("persist");
          return persist();
        };
      }),
    );
    const asked = () => page.evaluate(() => (window as unknown as Asked).asked);
    await page.waitForTimeout(500);
    for (const said of Object.values(keeping)) expect(await page.getByText(said).count()).toBe(0);
    expect(await asked()).toEqual([]);
    await begins(page);
    await page.waitForFunction(() => (window as unknown as Asked).asked.length > 0);
    expect(await asked()).toEqual(["persist"]);
    await page.context().close();
  });
});

describe("The page as a program of the device", () => {
  const stage = setStage();

  test.concurrent("has nothing in its manifest that a browser finds wanting, and is one program for each place it is served from", {
    timeout: 60_000,
  }, async () => {
    const elsewhere = await serveDist("/another/");
    const context = await stage.browser.newContext();
    const page = await context.newPage();
    const devtools = await context.newCDPSession(page);
    const ids: (string | undefined)[] = [];
    for (const { url } of [stage.served, elsewhere]) {
      await page.goto(url);
      const manifest = await devtools.send("Page.getAppManifest");
      expect(manifest.errors).toEqual([]);
      const { lang, description, start_url } = JSON.parse(manifest.data ?? "{}");
      expect({ lang, start_url }).toEqual({ lang: "en", start_url: "./" });
      expect(description).toMatch(/in the dark\.$/);
      const { installabilityErrors } = await devtools.send("Page.getInstallabilityErrors");
      // A context of a test is a private window, where no browser installs anything.
      expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual(["in-incognito"]);
      const { appId } = await devtools.send("Page.getAppId");
      ids.push(appId?.replace(new URL(url).origin, ""));
    }
    expect(ids).toEqual(["/somewhere/else/", "/another/"]);
    await context.close();
    await elsewhere.close();
  });
});
