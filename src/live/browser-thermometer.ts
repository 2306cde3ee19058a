// A thermometer over Bluetooth: chosen once by the person, then listened to, and sought again by itself
// whenever its connection breaks, at growing pauses, until it is closed.
import type { Bluetooth, BluetoothDevice, GattCharacteristic } from "./bluetooth.ts";
import { steadyClock } from "./steady-clock.ts";
import type { Clock } from "./synthesiser.ts";
import {
  type Connecting,
  celsiusOf,
  ENVIRONMENTAL_SENSING,
  type Listener,
  TEMPERATURE,
  type Thermometer,
  type ThermometerRefusal,
} from "./thermometer.ts";

/** One that has told nothing by itself for so long is asked, seconds. */
const ASK_AFTER = 20;
/** Before the connection is sought again, seconds; then every so often as the last. */
const PAUSES = [1, 2, 4, 8, 16, 30];

/** Null where the browser has no such thing. */
export function browserThermometer(clock: Clock = steadyClock): Thermometer | null {
  const { bluetooth } = navigator as Navigator & { readonly bluetooth?: Bluetooth };
  return bluetooth === undefined ? null : thermometerOver(bluetooth, clock);
}

export function thermometerOver(bluetooth: Bluetooth, clock: Clock): Thermometer {
  return {
    async connect(listener) {
      let device: BluetoothDevice;
      try {
        device = await bluetooth.requestDevice({
          filters: [{ services: [ENVIRONMENTAL_SENSING] }],
        });
      } catch (error) {
        return { kind: "refused", why: refusalOf(error) };
      }
      return linked(device, listener, clock);
    },
  };
}

function refusalOf(error: unknown): ThermometerRefusal {
  switch (nameOf(error)) {
    case "NotFoundError":
      return "none";
    case "NotAllowedError":
    case "SecurityError":
      return "denied";
    default:
      return "unable";
  }
}

const nameOf = (error: unknown): string => (error instanceof DOMException ? error.name : "");

async function linked(
  device: BluetoothDevice,
  listener: Listener,
  clock: Clock,
): Promise<Connecting> {
  let state: "seeking" | "on" | "closed" = "seeking";
  let deafen = () => {};
  let callOff = () => {};

  async function open(): Promise<void> {
    deafen = await listenTo(await temperatureOf(device), listener, clock);
    if (device.gatt?.connected) return;
    deafen();
    throw new DOMException("gone again", "NetworkError");
  }

  function seek(attempt: number): void {
    state = "seeking";
    callOff = clock.after(PAUSES[attempt] ?? PAUSES.at(-1) ?? 0, async () => {
      const found = await open().then(
        () => true,
        () => false,
      );
      if (state === "closed") letGo();
      else if (found) {
        state = "on";
        listener.again();
      } else seek(attempt + 1);
    });
  }

  function broke(): void {
    // What breaks while it is sought is found by the seeking itself.
    if (state !== "on") return;
    deafen();
    listener.lost();
    seek(0);
  }

  function letGo(): void {
    deafen();
    device.gatt?.disconnect();
  }

  try {
    await open();
  } catch (error) {
    letGo();
    // Of one that is connected: it has not what is sought.
    return {
      kind: "refused",
      why: nameOf(error) === "NotFoundError" ? "unfit" : "unreachable",
    };
  }
  state = "on";
  device.addEventListener("gattserverdisconnected", broke);
  return {
    kind: "connected",
    name: device.name ?? "",
    close() {
      state = "closed";
      callOff();
      device.removeEventListener("gattserverdisconnected", broke);
      letGo();
    },
  };
}

async function temperatureOf({ gatt }: BluetoothDevice): Promise<GattCharacteristic> {
  if (gatt === undefined) throw new DOMException("cannot be connected", "NetworkError");
  const server = await gatt.connect();
  const service = await server.getPrimaryService(ENVIRONMENTAL_SENSING);
  return service.getCharacteristic(TEMPERATURE);
}

/** Returns the way to stop. */
async function listenTo(
  temperature: GattCharacteristic,
  listener: Listener,
  clock: Clock,
): Promise<() => void> {
  const { properties } = temperature;
  let stopped = false;
  let callOff = () => {};

  function heard(value: DataView | undefined): void {
    if (stopped) return;
    const celsius = value === undefined ? null : celsiusOf(value);
    if (celsius !== null) listener.read(celsius, clock.now());
    askLater();
  }

  /** Whatever tells its readings by itself may do so only as they change. */
  function askLater(): void {
    callOff();
    if (properties.read && !stopped) callOff = clock.after(ASK_AFTER, ask);
  }

  async function ask(): Promise<void> {
    // One that cannot be read now is asked again; that it is gone is told by its connection.
    heard(await temperature.readValue().catch(() => undefined));
  }

  const told = () => heard(temperature.value);
  temperature.addEventListener("characteristicvaluechanged", told);
  let tellsItself = properties.notify || properties.indicate;
  if (tellsItself) {
    tellsItself = await temperature.startNotifications().then(
      () => true,
      () => false,
    );
  }
  if (!tellsItself && !properties.read) throw new DOMException("tells nothing", "NotFoundError");
  if (properties.read) void ask();
  return () => {
    stopped = true;
    callOff();
    temperature.removeEventListener("characteristicvaluechanged", told);
  };
}
