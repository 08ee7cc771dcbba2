import "server-only";
import { cookies } from "next/headers";
import type { Learner } from "@/lib/casebook/learners/learnerFile";
import { idSchema } from "@/lib/vocabulary/words";
import { learnerShelf } from "./learnerShelf";

/** The cookie that says who is studying on this machine. */
export const learnerCookie = "learner";

/** Who said so on this machine, and their file as it stands now. */
export type Studying = Readonly<{
  /** Undefined where nobody said who they are, and where the file cannot be read. */
  learner: Learner | undefined;
  /** Whether somebody said who they are and their file is gone or cannot be read. */
  isLost: boolean;
}>;

/** Who is studying on this machine. */
export async function currentLearner(): Promise<Studying> {
  const id = (await cookies()).get(learnerCookie)?.value;
  const learner = learnerOf(id);
  return { learner, isLost: id !== undefined && learner === undefined };
}

/** The learner of an id from outside; undefined for what is no id, or nobody's. */
export function learnerOf(id: string | undefined): Learner | undefined {
  const known = idSchema.safeParse(id);
  return known.success ? learnerShelf().get(`${known.data}.md`) : undefined;
}
