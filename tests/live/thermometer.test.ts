import { describe, expect, test, vi } from "vitest";
import type { BluetoothDevice, GattCharacteristic } from "../../src/live/bluetooth.ts";
import { browserThermometer, thermometerOver } from "../../src/live/browser-thermometer.ts";
import { celsiusOf } from "../../src/live/thermometer.ts";
import { handClock } from "./device-by-hand.ts";

const bytes = (...all: readonly number[]) => new DataView(Uint8Array.from(all).buffer);
const reading = (celsius: number) => {
  const view = bytes(0, 0);
  view.setInt16(0, Math.round(celsius * 100), true);
  return view;
};

describe("A reading's bytes", () => {
  test("are hundredths of a degree Celsius, signed, the low byte first", () => {
    expect(celsiusOf(bytes(0xd0, 0x07))).toBe(20);
    expect(celsiusOf(bytes(0x9e, 0x07))).toBe(19.5);
    expect(celsiusOf(bytes(0xff, 0xff))).toBe(-0.01);
    expect(celsiusOf(bytes(0x4d, 0x95))).toBe(-273.15);
    // Further bytes are another make's business.
    expect(celsiusOf(bytes(0xd0, 0x07, 0xff))).toBe(20);
  });

  test("are no temperature where it is not known, below absolute nought, or not whole", () => {
    expect(celsiusOf(bytes(0x00, 0x80))).toBeNull();
    expect(celsiusOf(bytes(0x4c, 0x95))).toBeNull();
    expect(celsiusOf(bytes(0xd0))).toBeNull();
    expect(celsiusOf(bytes())).toBeNull();
  });
});

interface Make {
  readonly notify?: boolean;
  readonly read?: boolean;
  /** Notifications are promised, and refused. */
  readonly dumb?: boolean;
  readonly without?: "service" | "temperature";
}

/** A probe in the room: within reach until it is moved away. */
function room({ notify = true, read = false, dumb = false, without }: Make = {}) {
  const { clock, pass } = handClock();
  let celsius = 20;
  let reach = true;
  let connected = false;
  let asked = 0;
  let attempts = 0;
  let temperature: (GattCharacteristic & { value?: DataView }) | null = null;
  const missing = () => new DOMException("not there", "NotFoundError");
  const gatt = {
    get connected() {
      return connected;
    },
    async connect() {
      attempts += 1;
      if (!reach) throw new DOMException("out of reach", "NetworkError");
      connected = true;
      return gatt;
    },
    disconnect() {
      connected = false;
    },
    async getPrimaryService(service: number) {
      if (without === "service" || service !== 0x181a) throw missing();
      return {
        async getCharacteristic(characteristic: number) {
          if (without === "temperature" || characteristic !== 0x2a6e) throw missing();
          temperature = Object.assign(new EventTarget(), {
            properties: { read, notify, indicate: false },
            async readValue() {
              asked += 1;
              if (!connected) throw new DOMException("gone", "NetworkError");
              return reading(celsius);
            },
            async startNotifications() {
              if (dumb) throw new DOMException("no", "NotSupportedError");
            },
          });
          return temperature;
        },
      };
    },
  };
  const device: BluetoothDevice = Object.assign(new EventTarget(), { name: "Kelp probe", gatt });
  const heard: (string | number)[] = [];
  const at: number[] = [];
  const settle = async () => {
    for (let i = 0; i < 20; i += 1) await Promise.resolve();
  };
  return {
    heard,
    at,
    connect: () =>
      thermometerOver({ requestDevice: async () => device }, clock).connect({
        read(celsius, when) {
          heard.push(celsius);
          at.push(when);
        },
        lost: () => heard.push("lost"),
        again: () => heard.push("again"),
      }),
    notify(celsius: number) {
      if (temperature === null) return;
      temperature.value = reading(celsius);
      temperature.dispatchEvent(new Event("characteristicvaluechanged"));
    },
    setTo(next: number) {
      celsius = next;
    },
    moveAway() {
      reach = false;
      connected = false;
      device.dispatchEvent(new Event("gattserverdisconnected"));
    },
    comeBack() {
      reach = true;
    },
    async wait(seconds: number) {
      for (let i = 0; i < seconds; i += 1) {
        pass(1);
        await settle();
      }
    },
    settle,
    asked: () => asked,
    attempts: () => attempts,
    connected: () => connected,
  };
}

describe("A thermometer over Bluetooth", () => {
  test("tells what it notifies of, as it comes, with its time", async () => {
    const it = room();
    expect(await it.connect()).toMatchObject({ kind: "connected", name: "Kelp probe" });
    it.notify(19.5);
    await it.wait(3);
    it.notify(19.25);
    it.notify(-327.68); // not known
    expect([it.heard, it.at]).toEqual([
      [19.5, 19.25],
      [0, 3],
    ]);
    await it.wait(60);
    expect(it.asked()).toBe(0);
  });

  test("is asked every 20 s where it cannot notify, or will not", async () => {
    for (const make of [
      { notify: false, read: true },
      { read: true, dumb: true },
    ]) {
      const it = room(make);
      await it.connect();
      await it.settle();
      it.setTo(21);
      await it.wait(41);
      expect(it.heard).toEqual([20, 21, 21]);
      expect(it.at).toEqual([0, 20, 40]);
    }
  });

  test("is asked only where it has told nothing for 20 s, if it can do both", async () => {
    const it = room({ read: true });
    await it.connect();
    await it.wait(15);
    it.notify(20.5);
    await it.wait(19);
    expect(it.asked()).toBe(1);
    await it.wait(1);
    expect(it.heard).toEqual([20, 20.5, 20]);
  });

  test("that breaks off is sought again at growing pauses, and tells on once it is found", async () => {
    const it = room();
    await it.connect();
    it.moveAway();
    expect(it.heard).toEqual(["lost"]);
    // After 1, 2, 4, 8, 16 and 30 s, then every 30.
    await it.wait(1 + 2 + 4 + 8 + 16 + 30 + 30);
    expect(it.attempts()).toBe(1 + 7);
    it.comeBack();
    await it.wait(30);
    expect(it.heard).toEqual(["lost", "again"]);
    it.notify(19);
    expect(it.heard).toEqual(["lost", "again", 19]);
    it.moveAway();
    it.comeBack();
    await it.wait(1);
    expect(it.heard).toEqual(["lost", "again", 19, "lost", "again"]);
  });

  test("that was closed is let go of and tells nothing more, sought or not", async () => {
    const it = room({ read: true });
    const connected = await it.connect();
    await it.settle();
    if (connected.kind === "connected") connected.close();
    expect(it.connected()).toBe(false);
    it.notify(30);
    await it.wait(100);
    expect(it.heard).toEqual([20]);

    const other = room();
    const again = await other.connect();
    other.moveAway();
    if (again.kind === "connected") again.close();
    other.comeBack();
    await other.wait(100);
    expect([other.heard, other.attempts()]).toEqual([["lost"], 1]);
  });

  test("is refused as data where it has no temperature to tell, or does not answer", async () => {
    for (const make of [
      { without: "service" },
      { without: "temperature" },
      { notify: false },
      { dumb: true },
    ] as const) {
      const it = room(make);
      expect(await it.connect()).toEqual({ kind: "refused", why: "unfit" });
      expect(it.connected()).toBe(false);
    }
    const far = room();
    far.moveAway();
    expect(await far.connect()).toEqual({ kind: "refused", why: "unreachable" });
  });

  test.each([
    ["NotFoundError", "none"],
    ["NotAllowedError", "denied"],
    ["SecurityError", "denied"],
    ["NotSupportedError", "unable"],
  ])("a choice that ends in %s is told as %s", async (name, why) => {
    const bluetooth = {
      async requestDevice() {
        throw new DOMException("no", name);
      },
    };
    const listener = { read() {}, lost() {}, again() {} };
    const thermometer = thermometerOver(bluetooth, handClock().clock);
    expect(await thermometer.connect(listener)).toEqual({ kind: "refused", why });
  });

  test("is none where the browser has no Bluetooth", () => {
    vi.stubGlobal("navigator", {});
    expect(browserThermometer()).toBeNull();
    vi.stubGlobal("navigator", { bluetooth: { requestDevice: async () => ({}) } });
    expect(browserThermometer()).not.toBeNull();
    vi.unstubAllGlobals();
  });
});
