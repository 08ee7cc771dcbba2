import type { Answer } from "@/lib/consult/answer";
import { chanceIn100 } from "../_components/chanceIn100";

/** One sentence for a screen reader when the answer changes; the whole of it would be too much to be told at every word. */
export function AnswerInShort({ answer }: Readonly<{ answer: Answer | undefined }>) {
  const cause = answer?.causes[0];
  const next = answer?.nextChecks[0];
  return (
    <p className="heard" role="status">
      {cause ? `Likeliest: ${cause.label}, ${chanceIn100(cause.probability)} in 100. ` : null}
      {next ? `Check next: ${next.label}.` : null}
    </p>
  );
}
