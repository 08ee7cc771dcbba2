/**
 * A group of causes as a title.
 *
 * @example groupWord("player-and-care") // "Player and care"
 */
export const groupWord = (group: string) =>
  group.charAt(0).toUpperCase() + group.slice(1).replaceAll("-", " ");
