// A browser's locks, held for as long as a test says: enough of them for one run at a time and many pages.

interface Held {
  readonly name: string;
  readonly shared: boolean;
}

export interface LocksByHand {
  readonly manager: LockManager;
  /** As another page would. @throws where it is held already and not shared. */
  hold(name: string): () => void;
}

export function fakeLocks(): LocksByHand {
  let held: readonly Held[] = [];

  function grant(name: string, shared: boolean): (() => void) | null {
    if (held.some((it) => it.name === name && !(it.shared && shared))) return null;
    const mine = { name, shared };
    held = [...held, mine];
    return () => {
      held = held.filter((it) => it !== mine);
    };
  }

  async function request(
    name: string,
    { mode }: LockOptions,
    act: (lock: Lock | null) => unknown,
  ): Promise<unknown> {
    const letGo = grant(name, mode === "shared");
    try {
      return await act(letGo === null ? null : { name, mode: mode ?? "exclusive" });
    } finally {
      letGo?.();
    }
  }

  const query = async (): Promise<LockManagerSnapshot> => ({
    held: held.map(({ name, shared }) => ({ name, mode: shared ? "shared" : "exclusive" })),
    pending: [],
  });

  return {
    manager: { request, query } as LockManager,
    hold(name) {
      const letGo = grant(name, name === "tankside-page");
      if (letGo === null) throw new Error(`${name} is held`);
      return letGo;
    },
  };
}
