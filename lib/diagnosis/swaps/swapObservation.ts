/** How the one part ran in or on the other. Only `free` counts as sound: what drags is a fault that has not got worse yet. */
export type SwapResult = "free" | "drags" | "sticks";

/**
 * One part was tried with another: a piston in a casing, a slide's leg on its fellow, a head joint in a body.
 * `where` is the place in the stroke in the technician's words; equal words mean the same place.
 */
export type SwapObservation = Readonly<{ a: string; b: string; result: SwapResult; where?: string }>;
