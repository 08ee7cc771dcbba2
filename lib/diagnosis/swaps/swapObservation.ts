/** How the one part ran in or on the other. Only `free` counts as sound: what drags is a fault that has not got worse yet. */
export type SwapResult = "free" | "drags" | "sticks";

/** What an outcome may depend on: the place in the stroke, the way it went, how the one part was turned in the other. */
export const swapAspects = ["where", "way", "turned"] as const;
export type SwapAspect = (typeof swapAspects)[number];

/**
 * One part was tried with another: a piston in a casing, a slide's leg on its fellow, a head joint in a body.
 * Each aspect is in the technician's words; equal words mean the same place, way or turn. Left out: `where` and `way` were not
 * told, and it was not turned.
 */
export type SwapObservation = Readonly<{ a: string; b: string; result: SwapResult }> &
  Readonly<{ [aspect in SwapAspect]?: string }>;
