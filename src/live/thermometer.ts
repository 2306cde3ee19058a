// A thermometer that tells its readings by itself, as a port: implemented for a browser beside this file, and
// by hand in tests. The bytes of a reading in, °C out, as the Environmental Sensing Service has them.

/** Of Bluetooth's assigned numbers: the service, and its temperature. */
export const ENVIRONMENTAL_SENSING = 0x181a;
export const TEMPERATURE = 0x2a6e;

export type ThermometerRefusal =
  /** None was chosen, or there is none to choose. */
  | "none"
  /** The person, or the device's owner, said no. */
  | "denied"
  /** It did not answer: too far away, asleep, or in use by another device. */
  | "unreachable"
  /** It answered, and gives no temperature. */
  | "unfit"
  /** The browser cannot, or will not on a page such as this. */
  | "unable";

/** What comes of a thermometer once it is connected. */
export interface Listener {
  /** `at`: seconds on the steady clock. */
  read(celsius: number, at: number): void;
  /** The connection broke, and is being sought again. */
  lost(): void;
  again(): void;
}

export type Connecting =
  | {
      readonly kind: "connected";
      /** As the thermometer calls itself; empty where it does not. */
      readonly name: string;
      readonly close: () => void;
    }
  | { readonly kind: "refused"; readonly why: ThermometerRefusal };

export interface Thermometer {
  /** To be called from a press: the browser asks which one. Never rejects. */
  connect(listener: Listener): Promise<Connecting>;
}

/** °C; null where the thermometer does not know, or what came is no temperature. */
export function celsiusOf(value: DataView): number | null {
  if (value.byteLength < 2) return null;
  // GATT Specification Supplement, Temperature: sint16 in steps of 0.01 °C, 0x8000 for not known.
  const hundredths = value.getInt16(0, true);
  return hundredths < -273_15 ? null : hundredths / 100;
}
