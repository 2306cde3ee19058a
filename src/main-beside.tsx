// What stands around every place and is fetched behind it: news of a newer version, the offer to install, what is
// promised of accessibility. Wired beside main.tsx; the page does as well without any of it.
import type { ReadonlySignal } from "@preact/signals";
import type { ComponentType } from "preact";
import type { BrowserRuns } from "./live/browser-runs.ts";
import { after } from "./timers.ts";
import type { InstallOffer } from "./ui/install.tsx";
import { withLateWords } from "./ui/language.ts";
import { late } from "./ui/late.tsx";

interface Beside {
  /** When the first screen stands. */
  readonly idle: Promise<void>;
  readonly runs: () => Promise<BrowserRuns>;
  readonly installOffer: ReadonlySignal<InstallOffer | null>;
}

export function besideThePage({ idle, runs, installOffer }: Beside) {
  const News = late(async () => {
    await idle;
    const parts = Promise.all([
      withLateWords(import("./ui/news.tsx")),
      import("./live/updates.ts"),
      runs(),
    ]);
    return orNothing(
      parts.then(async ([{ newsWith }, { browserUpdates }, { current }]) => {
        const leads = () => current.value !== null;
        const reload = () => location.reload();
        return newsWith({ updates: await browserUpdates({ leads, reload, after }), current });
      }),
    );
  });

  const Statement = late(async () => {
    const { Statement } = await withLateWords(import("./ui/statement.tsx"));
    return Statement;
  });

  const Install = late(async () => {
    await idle;
    const part = withLateWords(import("./ui/install.tsx"));
    return orNothing(part.then(({ installWith }) => installWith(installOffer)));
  });

  return { News, Install, Statement };
}

/** What cannot be fetched is not complained of. */
function orNothing(part: Promise<ComponentType>): Promise<ComponentType> {
  return part.catch(() => () => null);
}
