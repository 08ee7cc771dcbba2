import type { Warning } from "@/lib/consult/answer";
import { Tally } from "../_components/Tally";

/** The same count as `Odds` gives in words, as cells. */
export const OddsTally = ({ warning: { likeJobs } }: Readonly<{ warning: Pick<Warning, "likeJobs"> }>) =>
  likeJobs ? <Tally k={likeJobs.harmed} n={likeJobs.done} /> : null;
