// A key pressed as a finger does it: it is let go whether or not the page has dealt with it. A driver waits for
// the page between the two, and on a busy machine a press would be a key held down.
interface Keyed<Key extends string> {
  readonly keyboard: { down(key: Key): Promise<void>; up(key: Key): Promise<void> };
}

/** Of either driver's pages. */
export async function press<Key extends string>(page: Keyed<Key>, key: Key): Promise<void> {
  await Promise.all([page.keyboard.down(key), page.keyboard.up(key)]);
}
