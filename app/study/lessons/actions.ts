"use server";

import { redirect } from "next/navigation";
import { keepLesson } from "@/app/_data/keepLesson";
import { readBuildQuery, triedHref } from "./_components/buildQuery";

/** Keeps a lesson and goes to it; what hinders it is told on the page where it was filled in. */
export async function keepBuiltLesson(data: FormData): Promise<void> {
  const names = [...new Set(data.keys())].filter((name) => !name.startsWith("$"));
  const query = readBuildQuery(
    Object.fromEntries(names.map((name) => [name, data.getAll(name).map(String)])),
  );
  const { id, revised } = await keepLesson(query);
  redirect(revised.kind === "saved" ? `/study/lessons/${id}` : triedHref(query));
}
