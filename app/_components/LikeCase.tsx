import type { SimilarCase } from "@/lib/consult/answer";
import { CaseLine } from "./CaseLine";
import { factsOf } from "./factsOf";

/** A past case beside the job at hand: how alike, what agrees and differs, and its lesson. */
export function LikeCase({ like }: Readonly<{ like: SimilarCase }>) {
  return (
    <CaseLine
      id={like.case}
      title={like.title}
      meta={`${like.instrument} · ${Math.round(100 * like.similarity)} in 100 alike`}
      facts={factsOf(like)}
      lesson={like.lessons[0]}
    />
  );
}
