/** The sheet that the valves are drawn on, in its own units; shown about one unit a pixel. */
export const sheetWidth = 372;
export const sheetHeight = 412;

/** Room at the right for the words of each place. */
const labelWidth = 124;
/** Widest a valve is drawn, and the height of one row of places: both more than a finger at the narrowest page. */
const widestPitch = 80;
const usualRow = 46;
const firstRowY = 96;
/** Lowest line that a piston's upper face reaches. */
const lowestRowY = 280;

export type ValvePlan = Readonly<{ number: number; centreX: number }>;
export type ValveLayout = Readonly<{
  valves: readonly ValvePlan[];
  /** Width given to one valve. */
  pitch: number;
  /** Half the outer width of a casing. */
  half: number;
  rowHeight: number;
  left: number;
  right: number;
  /** The height of a place, by its index from the top of the stroke. */
  rowY: (row: number) => number;
}>;

/**
 * Lays out a cluster of valves beside the words for its places.
 *
 * @param count valves, 1..6
 * @param rows places in the stroke, from the top down
 */
export function layOutValves(count: number, rows: number): ValveLayout {
  const pitch = Math.min(widestPitch, (sheetWidth - labelWidth) / count);
  const left = sheetWidth - labelWidth - count * pitch;
  const rowHeight = rows > 1 ? Math.min(usualRow, (lowestRowY - firstRowY) / (rows - 1)) : usualRow;
  return {
    valves: Array.from({ length: count }, (_, place) => ({
      number: place + 1,
      centreX: left + (place + 0.5) * pitch,
    })),
    pitch,
    half: pitch / 2 - 4,
    rowHeight,
    left,
    right: sheetWidth - labelWidth,
    rowY: (row) => firstRowY + row * rowHeight,
  };
}
