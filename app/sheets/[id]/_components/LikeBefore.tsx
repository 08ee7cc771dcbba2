import controls from "@/app/_components/controls.module.css";
import job from "@/app/_components/JobPage.module.css";
import { LikeCase } from "@/app/_components/LikeCase";
import { Section } from "@/app/_components/Section";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import type { Case } from "@/lib/casebook/caseFile";
import { isRepairStep } from "@/lib/casebook/step";
import type { SimilarCase } from "@/lib/consult/answer";

type Props = Readonly<{
  sheet: SheetVersion;
  similar: readonly SimilarCase[];
  cases: ReadonlyMap<string, Case>;
}>;

const shown = 3;

/** Past cases like this job, each with its plan to be taken over as a draft. */
export function LikeBefore({ sheet, similar, cases }: Props) {
  return (
    <Section title="Like it before" id="alike" className="unprinted">
      {similar.length === 0 ? <p className="small soft">No past case is like it.</p> : null}
      <div className={job.like}>
        {similar.slice(0, shown).map((like) => {
          const helped = cases
            .get(like.case)
            ?.path.some((step) => isRepairStep(step) && ["fixed", "better"].includes(step.result));
          return (
            <div key={like.case}>
              <LikeCase like={like} />
              {helped ? (
                <SheetForm sheet={sheet} wish="take-over" name={`take-over-${like.case}`}>
                  <input type="hidden" name="from" value={like.case} />
                  <button type="submit" className={controls.plain}>
                    Take over its plan<span className="heard"> from case {like.case}</span>
                  </button>
                </SheetForm>
              ) : null}
            </div>
          );
        })}
      </div>
    </Section>
  );
}
