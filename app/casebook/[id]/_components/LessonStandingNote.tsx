import Link from "next/link";
import type { LessonStanding } from "@/lib/casebook/lessonStandings";

const jobs = (count: number) => (count === 1 ? "1 later job" : `${count} later jobs`);

/** What later jobs said of a case's lesson. */
export function LessonStandingNote({ standing }: Readonly<{ standing: LessonStanding | undefined }>) {
  if (!standing) return null;
  return (
    <p className="small">
      {(
        [
          ["held in", standing.held],
          ["did not hold in", standing.failed],
        ] as const
      )
        .filter(([, ids]) => ids.length > 0)
        .map(([words, ids], at) => (
          <span key={words}>
            {at === 0 ? "It " : "; it "}
            {words} {jobs(ids.length)}:{" "}
            {ids.map((id, place) => (
              <span key={id}>
                {place > 0 ? ", " : ""}
                <Link href={`/casebook/${id}`} prefetch={false}>
                  {id}
                </Link>
              </span>
            ))}
          </span>
        ))}
      .
    </p>
  );
}
