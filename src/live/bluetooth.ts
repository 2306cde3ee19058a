// As much of Web Bluetooth as a thermometer needs: types alone. Browsers that have it are some, and the
// types that come with TypeScript do not know it.

export interface Bluetooth {
  requestDevice(options: {
    readonly filters: readonly { readonly services: readonly number[] }[];
  }): Promise<BluetoothDevice>;
}

export interface BluetoothDevice extends EventTarget {
  readonly name?: string | undefined;
  readonly gatt?: GattServer | undefined;
}

interface GattServer {
  readonly connected: boolean;
  connect(): Promise<GattServer>;
  disconnect(): void;
  getPrimaryService(service: number): Promise<GattService>;
}

interface GattService {
  getCharacteristic(characteristic: number): Promise<GattCharacteristic>;
}

export interface GattCharacteristic extends EventTarget {
  readonly properties: {
    readonly read: boolean;
    readonly notify: boolean;
    readonly indicate: boolean;
  };
  /** As last heard. */
  readonly value?: DataView | undefined;
  readValue(): Promise<DataView>;
  startNotifications(): Promise<unknown>;
}
