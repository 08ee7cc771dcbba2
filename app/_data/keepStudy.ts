import "server-only";
import { randomUUID } from "node:crypto";
import { keepingPlace } from "@/lib/casebook/keeping/keepingPlace";
import { addSession } from "@/lib/casebook/learners/addSession";
import { type SentAnswer, settleStudy } from "@/lib/study/answer/settleStudy";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";
import { sessionOf } from "@/lib/study/memory/sessionOf";
import { reviewStudy } from "@/lib/study/review/reviewStudy";
import { currentLearner } from "./currentLearner";
import { learnerShelf } from "./learnerShelf";
import { getShop } from "./shop";
import { today } from "./today";

/**
 * Keeps an answer in the file of whoever is studying. Where nobody said who they are, or where the answer does not hold, there
 * is nothing to keep.
 *
 * @returns false where the file could not be written to, or not be read
 */
export async function keepStudy(
  sent: SentAnswer & Readonly<{ case: string | null; lesson: string | null }>,
): Promise<boolean> {
  const { bench } = await getShop();
  const { learner, isLost } = await currentLearner();
  const kase = sent.case === null ? undefined : bench.cases.get(sent.case);
  if (!kase || !isFitForStudy(kase)) return true;
  const { answer } = settleStudy(kase, sent, bench.vocabulary);
  if (!answer) return true;
  if (!learner) return !isLost;
  const review = reviewStudy(kase, bench, answer);
  const session = sessionOf(kase, review, answer.named, { day: today(), lesson: sent.lesson });
  const place = keepingPlace(learnerShelf().folder, learner.id);
  const added = addSession(session, place, { nowMs: Date.now(), mark: randomUUID() });
  return added.kind !== "refused";
}
