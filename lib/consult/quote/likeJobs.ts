import type { Case } from "../../casebook/caseFile";
import type { LikeJob } from "../../estimate/minutesCurve";
import type { RetrievedLike } from "../similarCases";

/** How much more the more alike count. Chosen, as are the 25 that are asked: see `evaluate --casebook`. */
const sharpness = 4;

/** A past case as a like job. */
export type LikeCaseJob = LikeJob & Readonly<{ case: Case }>;

/** Those of the cases like a job that tell how long they took. */
export const likeJobs = (like: readonly RetrievedLike[]): LikeCaseJob[] =>
  like.flatMap(({ case: kase, similarity }) =>
    kase.minutes === undefined || similarity <= 0
      ? []
      : [{ case: kase, minutes: kase.minutes, weight: similarity ** sharpness }],
  );
