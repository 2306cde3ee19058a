import { describe, expect, test } from "vitest";
import { type OpenUpdates, openUpdates } from "../../src/live/updates.ts";
import { fakeLocks } from "./locks-by-hand.ts";

class Worker extends EventTarget {
  constructor(private readonly told: (message: unknown) => void) {
    super();
  }
  postMessage(message: unknown): void {
    this.told(message);
  }
}

/** One page of a browser, whose worker a test moves by hand. */
function page({ locks = fakeLocks(), controlled = true, obeys = true } = {}) {
  const told: unknown[] = [];
  const happened: string[] = [];
  let leads = false;
  let at = 0;
  let waitingFor: (() => void)[] = [];
  const workers = Object.assign(new EventTarget(), {
    controller: controlled ? ({} as ServiceWorker) : null,
  });
  const registration = Object.assign(new EventTarget(), {
    waiting: null as ServiceWorker | null,
    installing: null as ServiceWorker | null,
    update: async () => {
      happened.push("looked");
      return {} as ServiceWorkerRegistration;
    },
  });
  const controllerChanges = () => workers.dispatchEvent(new Event("controllerchange"));
  const updates: OpenUpdates = openUpdates({
    workers: workers as unknown as ServiceWorkerContainer,
    registration: registration as unknown as ServiceWorkerRegistration,
    locks: locks.manager,
    leads: () => leads,
    reload: () => happened.push("reloaded"),
    after(_, act) {
      waitingFor.push(act);
      return () => {
        waitingFor = waitingFor.filter((it) => it !== act);
      };
    },
    now: () => at,
  });
  return {
    updates,
    locks,
    told,
    happened,
    controllerChanges,
    leads(on: boolean) {
      leads = on;
    },
    hourGoesBy() {
      at += 3_600_000;
    },
    loseTime() {
      for (const act of waitingFor) act();
    },
    newVersion() {
      const worker = new Worker((message) => {
        told.push(message);
        if (obeys) controllerChanges();
      }) as unknown as ServiceWorker;
      registration.installing = worker;
      registration.dispatchEvent(new Event("updatefound"));
      registration.installing = null;
      registration.waiting = worker;
      worker.dispatchEvent(new Event("statechange"));
    },
  };
}

describe("a newer version", () => {
  test("is told of once it waits, and nothing is loaded anew by itself", () => {
    const it = page();
    expect(it.updates.news.value).toBe("none");
    it.newVersion();
    expect(it.updates.news.value).toBe("ready");
    expect(it.told).toEqual([]);
    expect(it.happened).toEqual([]);
  });

  test("begins when it is asked for, and the page is loaded anew once", async () => {
    const it = page();
    it.newVersion();
    expect(await it.updates.take()).toBe("taken");
    expect(it.told).toEqual([{ type: "SKIP_WAITING" }]);
    it.controllerChanges();
    expect(it.happened).toEqual(["reloaded"]);
    expect(it.updates.news.value).not.toBe("taken-elsewhere");
  });

  test("waits while this page leads a run, with locks and without", async () => {
    for (const locks of [fakeLocks(), { manager: null }]) {
      const it = page({ locks: locks as ReturnType<typeof fakeLocks> });
      it.newVersion();
      it.leads(true);
      expect(await it.updates.take()).toBe("run-is-on");
      expect(it.told).toEqual([]);
      it.leads(false);
      expect(await it.updates.take()).toBe("taken");
    }
  });

  test("waits while another page leads a run", async () => {
    const it = page();
    const letGo = it.locks.hold("tankside-run");
    it.newVersion();
    expect(await it.updates.take()).toBe("run-is-on");
    expect(it.told).toEqual([]);
    letGo();
    expect(await it.updates.take()).toBe("taken");
  });

  test("waits while another page of the version before is open, and lets a run begin meanwhile", async () => {
    const it = page();
    const closeOther = it.locks.hold("tankside-page");
    it.newVersion();
    expect(await it.updates.take()).toBe("other-pages");
    expect(it.told).toEqual([]);
    it.locks.hold("tankside-run")();
    closeOther();
    expect(await it.updates.take()).toBe("taken");
  });

  test("lets no run begin between the press and the loading", async () => {
    const it = page();
    it.newVersion();
    await it.updates.take();
    expect(() => it.locks.hold("tankside-run")).toThrow("held");
  });

  test("that will not begin is given up, and a run may begin again", async () => {
    const it = page({ obeys: false });
    it.newVersion();
    const taking = it.updates.take();
    await new Promise((resolve) => setTimeout(resolve));
    it.loseTime();
    expect(await taking).toBe("failed");
    expect(it.happened).toEqual([]);
    it.locks.hold("tankside-run")();
  });

  test("taken in another page is told of, and loads only when asked for", async () => {
    const it = page();
    it.controllerChanges();
    expect(it.updates.news.value).toBe("taken-elsewhere");
    expect(it.happened).toEqual([]);
    expect(await it.updates.take()).toBe("taken");
    expect(it.happened).toEqual(["reloaded"]);
  });

  test("is not what the first worker of a first visit is", () => {
    const it = page({ controlled: false });
    it.controllerChanges();
    expect(it.updates.news.value).toBe("none");
  });
});

describe("the host is asked for a newer version", () => {
  test("now and then, and not each time the page is looked at", async () => {
    const it = page();
    await it.updates.look();
    expect(it.happened).toEqual([]);
    it.hourGoesBy();
    await it.updates.look();
    await it.updates.look();
    expect(it.happened).toEqual(["looked"]);
  });

  test("never while a run is on, in this page or another", async () => {
    const it = page();
    it.hourGoesBy();
    it.leads(true);
    await it.updates.look();
    it.leads(false);
    const letGo = it.locks.hold("tankside-run");
    await it.updates.look();
    expect(it.happened).toEqual([]);
    letGo();
    await it.updates.look();
    expect(it.happened).toEqual(["looked"]);
  });
});
