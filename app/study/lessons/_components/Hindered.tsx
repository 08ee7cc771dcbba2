import { SideBySide } from "@/app/_components/SideBySide";
import { StateNote } from "@/app/_components/StateNote";
import type { RevisedFile } from "@/lib/casebook/keeping/reviseFile";
import { formatProblem } from "@/lib/document/contentProblem";
import { type BuildQuery, triedHref } from "./buildQuery";

/** Why a lesson was not kept, and what to do about it. */
export function Hindered({ query, hindered }: Readonly<{ query: BuildQuery; hindered: RevisedFile }>) {
  if (hindered.kind === "saved") return null;
  if (hindered.kind === "refused")
    return (
      <StateNote title="Not kept yet" tone="fail" level={2}>
        <div role="alert">
          <ul>
            {hindered.problems.map((problem) => (
              <li key={formatProblem(problem)}>{sayProblem(problem.field, formatProblem(problem))}</li>
            ))}
          </ul>
        </div>
      </StateNote>
    );
  return (
    <StateNote title="This lesson was changed elsewhere meanwhile" tone="warn" level={2}>
      <p>Nothing was overwritten. Yours is kept among its earlier versions too.</p>
      <SideBySide
        left={hindered.theirs}
        right={hindered.mine}
        leftTitle="As it stands now"
        rightTitle="As you wanted it"
      />
      <p>
        <a href={triedHref({ ...query, base: hindered.theirHash }).replace("&tried=yes", "")}>
          Go on with mine, to put it in its place
        </a>{" "}
        or <a href={`/study/lessons/build?lesson=${query.lesson ?? ""}`}>take the one that stands there</a>.
      </p>
    </StateNote>
  );
}

/** What is missing in so many words where there is a form to fill in. */
function sayProblem(field: string, words: string): string {
  if (field === "title") return "The title must have 3 to 120 signs; write one.";
  return field === "cases" ? "At least one job must be in it; add one below." : words;
}
