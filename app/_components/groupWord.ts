import { upperFirst } from "@/lib/text/upperFirst";

/**
 * A group of causes as a title.
 *
 * @example groupWord("player-and-care") // "Player and care"
 */
export const groupWord = (group: string) => upperFirst(group.replaceAll("-", " "));
