import type { HowItWent } from "@/lib/study/memory/howItWent";

/** How a session went, as one says it. */
export const wentWords: Readonly<Record<HowItWent, string>> = {
  missed: "Missed",
  nearly: "Nearly",
  "got it": "Got it",
  "got it cleanly": "Got it cleanly",
};
