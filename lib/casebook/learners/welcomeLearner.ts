import type { ContentProblem } from "../../document/contentProblem";
import { idOfName } from "../files/idOfName";
import { noFile } from "../keeping/contentHash";
import type { FileKeeper } from "../keeping/holdFile";
import { keepingPlace } from "../keeping/keepingPlace";
import { reviseFile } from "../keeping/reviseFile";
import { type Learner, learnerNameSchema } from "./learnerFile";
import { writeLearner } from "./writeLearner";

/** The id of a learner known or new, or what keeps a file from being begun. */
export type WelcomedLearner =
  | Readonly<{ id: string; problems: readonly [] }>
  | Readonly<{ id: undefined; problems: readonly ContentProblem[] }>;

const mostTries = 8;
const sameName = (name: string) => name.normalize("NFC").toLowerCase().replaceAll(/\s+/g, " ");

/**
 * Finds the learner of a name, capitals and blanks aside, or begins a file for one. There is no account: whoever gives the
 * name goes on with its file.
 *
 * @param known all learners there are
 * @param today year-month-day
 */
export function welcomeLearner(
  typed: string,
  { known, folder, today }: Readonly<{ known: readonly Learner[]; folder: string; today: string }>,
  keeper: FileKeeper,
): WelcomedLearner {
  const parsed = learnerNameSchema.safeParse(typed.replaceAll(/\s+/g, " "));
  if (!parsed.success) {
    const received = typed.trim() === "" ? "no name" : `${typed.length} signs`;
    const expected = "a name of 1 to 60 signs that can be seen, on one line";
    return { id: undefined, problems: [{ file: "", line: 0, field: "name", received, expected }] };
  }
  const name = parsed.data;
  const before = known.find((one) => sameName(one.name) === sameName(name));
  if (before) return { id: before.id, problems: [] };
  const taken = new Set(known.map(({ id }) => id));
  for (let tries = 1; ; tries++) {
    const id = idOfName(name, taken, "learner");
    const text = writeLearner({ id, name, demo: false, since: today, sessions: [] }, "");
    const revised = reviseFile({ text, baseHash: noFile }, keepingPlace(folder, id), keeper);
    if (revised.kind === "saved") return { id, problems: [] };
    if (revised.kind === "refused") return { id: undefined, problems: revised.problems };
    if (tries === mostTries) {
      const problem = {
        file: `${id}.md`,
        line: 0,
        field: "id",
        received: `'${id}'`,
        expected: "another name",
      };
      return { id: undefined, problems: [problem] };
    }
    taken.add(id);
  }
}
