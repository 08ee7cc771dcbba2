import type { NextRequest } from "next/server";
import { learnerOf } from "@/app/_data/currentLearner";
import { learnerShelf } from "@/app/_data/learnerShelf";
import { sessionsAsCsv, sessionsAsJson } from "@/lib/study/memory/exportSessions";

const forms = {
  csv: { write: sessionsAsCsv, type: "text/csv; charset=utf-8" },
  json: { write: sessionsAsJson, type: "application/json; charset=utf-8" },
} as const;

/** Gives out all sessions, or one learner's, as a table (`as=csv`) or as JSON (`as=json`). */
export function GET(request: NextRequest): Response {
  const params = request.nextUrl.searchParams;
  const as = params.get("as") === "json" ? "json" : "csv";
  const id = params.get("learner");
  const learner = id === null ? undefined : learnerOf(id);
  if (id !== null && !learner) return new Response("There is no such learner.\n", { status: 404 });
  const { write, type } = forms[as];
  const name = learner ? `sessions-${learner.id}` : "sessions";
  return new Response(write(learner ? [learner] : learnerShelf().all().entries), {
    headers: {
      "Content-Type": type,
      "Content-Disposition": `attachment; filename="${name}.${as}"`,
      "Cache-Control": "no-store",
    },
  });
}
