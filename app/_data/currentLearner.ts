import "server-only";
import { cookies } from "next/headers";
import type { Learner } from "@/lib/casebook/learners/learnerFile";
import { idSchema } from "@/lib/vocabulary/words";
import { learnerShelf } from "./learnerShelf";

/** The cookie that says who is studying on this machine. */
export const learnerCookie = "learner";

/** Who is studying on this machine, as their file stands now; undefined where nobody said so or the file is gone. */
export async function currentLearner(): Promise<Learner | undefined> {
  return learnerOf((await cookies()).get(learnerCookie)?.value);
}

/** The learner of an id from outside; undefined for what is no id, or nobody's. */
export function learnerOf(id: string | undefined): Learner | undefined {
  const known = idSchema.safeParse(id);
  return known.success ? learnerShelf().get(`${known.data}.md`) : undefined;
}
