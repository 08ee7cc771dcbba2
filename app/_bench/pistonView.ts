import { parsePartRef } from "@/lib/casebook/partRef";
import type { Answer } from "@/lib/consult/answer";
import { appliesTo } from "@/lib/vocabulary/appliesTo";
import type { Check, Outcome } from "@/lib/vocabulary/check";
import { checkThatReads } from "@/lib/vocabulary/checkThatReads";
import type { Part } from "@/lib/vocabulary/part";
import { placesOf } from "@/lib/vocabulary/placesOf";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** A valve marked in the drawing: its number from 1, and where in the stroke (index into the place check's outcomes). */
export type PistonMark = Readonly<{ valve: number; place: number }>;

/** What there is to draw of an instrument with pistons. */
export type PistonView = Readonly<{
  guest: Part;
  host: Part;
  /** The part that a finding about the whole valve names. */
  valve: string;
  count: number;
  placeCheck: Check | undefined;
  wayCheck: Check | undefined;
  marks: readonly PistonMark[];
  /** The outcome of the way check that holds for the marked valve. */
  way: Outcome | undefined;
}>;

/** The drawing has room for no more; beyond it the words must do. */
const mostValves = 6;

/**
 * Gathers what the drawn valves and the swap grid show.
 *
 * @param instrument the instrument's id, or undefined while it is not known: then a usual piston instrument is drawn
 * @returns undefined where the instrument has no parts that change places
 */
export function pistonView(
  vocabulary: Vocabulary,
  instrument: string | undefined,
  answer: Answer | undefined,
): PistonView | undefined {
  const guest = [...vocabulary.parts.values()].find(
    ({ numbered, swapsInto, families }) =>
      numbered && swapsInto !== undefined && appliesTo(vocabulary, families, instrument),
  );
  const host = guest?.swapsInto ? vocabulary.parts.get(guest.swapsInto) : undefined;
  if (!guest || !host) return undefined;
  const count =
    (instrument === undefined ? undefined : placesOf(vocabulary, instrument, guest.id)) ??
    placesOf(vocabulary, guest.families[0] ?? "", guest.id);
  if (count === undefined || count > mostValves) return undefined;

  const placeCheck = checkThatReads(vocabulary, "place");
  const wayCheck = checkThatReads(vocabulary, "way");
  const understood = answer?.understood ?? [];
  const marks = understood.flatMap(({ check, outcome, part, source }): PistonMark[] => {
    // Where another valve's piston caught in this casing is no trouble of this valve.
    if (source === "swaps") return [];
    const valve = part === null ? undefined : parsePartRef(part)?.place;
    const place = placeCheck?.outcomes.findIndex(({ id }) => id === outcome) ?? -1;
    return check === placeCheck?.id && valve !== undefined && place >= 0 ? [{ valve, place }] : [];
  });
  const found = understood.find(({ check }) => check === wayCheck?.id)?.outcome;
  return {
    guest,
    host,
    valve: guest.belongsTo ?? guest.id,
    count,
    placeCheck,
    wayCheck,
    marks,
    way: wayCheck?.outcomes.find(({ id }) => id === found),
  };
}
