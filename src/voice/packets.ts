// A clip's Opus packets as one run of bytes, and back: each packet behind its length, 16 bits,
// little-endian. Opus packets do not say where they end.

export const joinPackets = (packets: readonly Uint8Array[]): Uint8Array => {
  const bytes = new Uint8Array(packets.reduce((sum, packet) => sum + 2 + packet.length, 0));
  let to = 0;
  for (const packet of packets) {
    bytes[to] = packet.length & 0xff;
    bytes[to + 1] = packet.length >> 8;
    bytes.set(packet, to + 2);
    to += 2 + packet.length;
  }
  return bytes;
};

export const splitPackets = (bytes: Uint8Array): readonly Uint8Array[] => {
  const packets: Uint8Array[] = [];
  for (let from = 0; from < bytes.length; ) {
    const length = (bytes[from] ?? 0) + ((bytes[from + 1] ?? 0) << 8);
    packets.push(bytes.subarray(from + 2, from + 2 + length));
    from += 2 + length;
  }
  return packets;
};
