/** The units in which the bench writes a length down. */
export type LengthUnit = "inch" | "thou" | "mm";

/**
 * How many millimetres one of each unit holds.
 *
 * Source: the international inch, 25.4 mm exactly since 1959; a thou is a thousandth of it.
 */
export const mmPerUnit: Readonly<Record<LengthUnit, number>> = { inch: 25.4, thou: 0.0254, mm: 1 };
