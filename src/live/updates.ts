// The page's service worker in, whether a newer version stands ready and the way to take it out. A page never
// loads itself anew: a run may be on, in it or in another of this browser. Taking is asked for by a person.
import { type ReadonlySignal, signal } from "@preact/signals";
import { claimRun, runIsHeld } from "./one-runner.ts";

type News =
  | "none"
  /** Fetched whole, and waits to be taken. */
  | "ready"
  /** Taken in another page: what this one has yet to fetch may be gone. */
  | "taken-elsewhere";

export interface Updates {
  readonly news: ReadonlySignal<News>;
  /** Loads the page anew, unless something is in the way of it. */
  take(): Promise<"taken" | "run-is-on" | "other-pages" | "failed">;
}

/** What of the browser is used, so that a test can stand in for it. */
export interface UpdateParts {
  readonly workers: Pick<ServiceWorkerContainer, "controller" | "addEventListener">;
  readonly registration: Pick<
    ServiceWorkerRegistration,
    "waiting" | "installing" | "update" | "addEventListener"
  >;
  /** null where the browser has none: then no other page can be known of. */
  readonly locks: LockManager | null;
  /** Whether this page leads a run. */
  readonly leads: () => boolean;
  readonly reload: () => void;
  readonly after: (ms: number, act: () => void) => () => void;
  /** ms; of any beginning. */
  readonly now: () => number;
}

/** Held by every page for its life, shared: a page that has died counts no more. */
const PAGE = "tankside-page";
/** A version that has been told to begin and has not after so long will not, ms. */
const PATIENCE = 10_000;
/** The host is asked for a newer version at most so often, ms. */
const LEAST_BETWEEN = 600_000;

export interface OpenUpdates extends Updates {
  /** Asks the host for a newer version, but never while a run is on. */
  look(): Promise<void>;
}

export function openUpdates(parts: UpdateParts): OpenUpdates {
  const { workers, registration, locks, leads, reload, after, now } = parts;
  const news = signal<News>("none");
  let controlled = workers.controller !== null;
  let taking = false;
  let lookedAt = now();
  // Never let go. Rejected only where the page is going away.
  void locks?.request(PAGE, { mode: "shared" }, () => new Promise(() => {})).catch(() => {});

  function notice(): void {
    if (news.value !== "taken-elsewhere")
      news.value = registration.waiting === null ? "none" : "ready";
  }

  function follow(worker: ServiceWorker | null): void {
    worker?.addEventListener("statechange", notice);
  }

  follow(registration.installing);
  follow(registration.waiting);
  registration.addEventListener("updatefound", () => follow(registration.installing));
  workers.addEventListener("controllerchange", () => {
    // The first worker of all takes over a page that had none; that page is its own version's.
    if (controlled && !taking) news.value = "taken-elsewhere";
    controlled = true;
  });
  notice();

  /** A page of the version before would find its late parts gone from the store, and from a new host. */
  async function otherPages(): Promise<boolean> {
    const { held = [] } = (await locks?.query()) ?? {};
    return held.filter(({ name }) => name === PAGE).length > 1;
  }

  /** True once the version that waited is the one that answers. */
  function begun(waiting: ServiceWorker): Promise<boolean> {
    return new Promise((resolve) => {
      const giveUp = after(PATIENCE, () => resolve(false));
      const changed = () => {
        giveUp();
        resolve(true);
      };
      workers.addEventListener("controllerchange", changed, { once: true });
      waiting.postMessage({ type: "SKIP_WAITING" });
    });
  }

  return {
    news,
    async look() {
      if (leads() || now() - lookedAt < LEAST_BETWEEN || (await runIsHeld(locks))) return;
      lookedAt = now();
      // Without a network there is nothing newer to be had.
      await registration.update().catch(() => {});
    },
    async take() {
      if (leads()) return "run-is-on";
      // Held until the page has gone, so that no run begins meanwhile.
      const letGo = await claimRun(locks);
      if (letGo === null) return "run-is-on";
      if (news.value === "taken-elsewhere") {
        reload();
        return "taken";
      }
      if (await otherPages()) {
        letGo();
        return "other-pages";
      }
      taking = true;
      const { waiting } = registration;
      if (waiting === null || !(await begun(waiting))) {
        taking = false;
        letGo();
        return "failed";
      }
      reload();
      return "taken";
    },
  };
}

/** Every hour, ms, and whenever the page is looked at again. */
const HOUR = 3_600_000;

/** @returns once there is a worker; never where there is to be none. */
export async function browserUpdates(
  parts: Pick<UpdateParts, "leads" | "reload" | "after">,
): Promise<Updates> {
  const workers = navigator.serviceWorker;
  const registration = await (workers?.ready ?? new Promise<never>(() => {}));
  const locks = navigator.locks ?? null;
  const now = () => performance.now();
  const updates = openUpdates({ ...parts, workers, registration, locks, now });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") void updates.look();
  });
  setInterval(() => void updates.look(), HOUR);
  return updates;
}
