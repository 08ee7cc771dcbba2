import type { SimilarCase } from "@/lib/consult/answer";
import job from "../_components/JobPage.module.css";
import { LikeCase } from "../_components/LikeCase";
import { More } from "../_components/More";
import { Section } from "../_components/Section";

/** As many as stand side by side. */
const shownFirst = 3;

/** Past cases most like this one: what agrees, what differs, what is not known, and what it was. */
export function LikeItBefore({ similar }: Readonly<{ similar: readonly SimilarCase[] }>) {
  const rest = similar.slice(shownFirst);
  return (
    <Section
      title="Like it before"
      id="alike"
      aside={similar.length > 0 ? `${Math.min(shownFirst, similar.length)} of ${similar.length}` : undefined}
    >
      {similar.length === 0 ? <p className="small soft">No past case is like it.</p> : null}
      <Cases similar={similar.slice(0, shownFirst)} />
      <More count={rest.length} of="case">
        <Cases similar={rest} />
      </More>
    </Section>
  );
}

function Cases({ similar }: Readonly<{ similar: readonly SimilarCase[] }>) {
  return (
    <div className={job.like}>
      {similar.map((like) => (
        <LikeCase key={like.case} like={like} />
      ))}
    </div>
  );
}
