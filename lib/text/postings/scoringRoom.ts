import type { WordPostings } from "./wordPostings";

/** Arrays to score texts in; they may be longer than need be, and hold whatever was left in them. */
export interface ScoringRoom {
  /** By number: a text's score so far, and how many of the words it holds. */
  scores: Float64Array;
  found: Uint8Array;
  /** One after another: the texts that hold a term, and what it gives to each. */
  numbers: Int32Array;
  added: Float64Array;
  /** By the place of a text among those asked about. */
  similarities: Float64Array;
}

const rooms = new WeakMap<WordPostings, ScoringRoom>();

const makeRoom = (texts: number): Omit<ScoringRoom, "similarities"> => ({
  scores: new Float64Array(texts),
  found: new Uint8Array(texts),
  numbers: new Int32Array(texts),
  added: new Float64Array(texts),
});

/**
 * Gives the room kept for scoring the texts of some postings. Arrays as long as the casebook made anew for every question cost
 * more than the scoring: the system has to clear their memory, and the collector to take it back.
 *
 * @param asked how many texts are asked about
 * @returns arrays that are the asker's until the next question
 */
export function scoringRoom(postings: WordPostings, asked = 0): ScoringRoom {
  const texts = postings.ids.length;
  const room = rooms.get(postings) ?? { ...makeRoom(texts), similarities: new Float64Array(asked) };
  // Twice as much as is needed now: a casebook that grows case by case must not ask for a new room at each.
  if (room.scores.length < texts) Object.assign(room, makeRoom(2 * texts));
  if (room.similarities.length < asked) room.similarities = new Float64Array(2 * asked);
  rooms.set(postings, room);
  return room;
}
