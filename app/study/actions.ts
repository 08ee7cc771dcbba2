"use server";

import { randomUUID } from "node:crypto";
import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import { learnerCookie } from "@/app/_data/currentLearner";
import { keepStudy } from "@/app/_data/keepStudy";
import { learnerShelf } from "@/app/_data/learnerShelf";
import { today } from "@/app/_data/today";
import { welcomeLearner } from "@/lib/casebook/learners/welcomeLearner";
import { answerHref, readStudyQuery } from "./_components/studyQuery";

const yearSeconds = 365 * 24 * 60 * 60;

/** Takes an answer: keeps it in the file of whoever is studying, then goes to the feedback. */
export async function giveAnswer(data: FormData): Promise<void> {
  const names = [...new Set(data.keys())].filter((name) => !name.startsWith("$"));
  const query = readStudyQuery(
    Object.fromEntries(names.map((name) => [name, data.getAll(name).map(String)])),
  );
  const kept = await keepStudy(query);
  redirect(answerHref(query, { kept }));
}

/** Goes on with the file of a name, begun where there is none; returns in words what hinders it. */
export async function sayWho(_: string, data: FormData): Promise<string> {
  const { all, folder } = learnerShelf();
  const from = { known: all().entries, folder, today: today() };
  const name = String(data.get("name") ?? "");
  const { id, problems } = welcomeLearner(name, from, { nowMs: Date.now(), mark: randomUUID() });
  if (id === undefined)
    return problems.map((one) => `Found ${one.received}; write ${one.expected}.`).join(" ");
  (await cookies()).set(learnerCookie, id, { maxAge: yearSeconds, sameSite: "lax", httpOnly: true });
  redirect("/study");
}

/** Lets somebody else study on this machine; the file stays. */
export async function leaveStudy(): Promise<void> {
  (await cookies()).delete(learnerCookie);
  redirect("/study");
}
