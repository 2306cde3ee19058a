// How the tank is worked in, its factor on the development time out.
// Alone, so that the one figure that goes with a method has one place and one reason.

export const methods = ["inversion", "twist", "rotary", "tray", "hanger"] as const;

export type Method = (typeof methods)[number];

/** Common practice: a drum that never rests takes up to 15 % less; the others keep the leaflet's time. */
export function usualMethodFactor(method: Method): number {
  return method === "rotary" ? 0.85 : 1;
}
