import { mostSentBytes } from "../../safety/mostSentBytes";
import type { BringBackState } from "./bringBack";

export const noZipYet: BringBackState = { fault: "", found: undefined };

/** What to do about a zip that is too large to be sent. */
export const zipTooLarge = `It weighs more than ${mostSentBytes / 2 ** 20} MB. Bring it in by the command line: npm run -s case -- import FILE.zip, then the same with --write.`;
