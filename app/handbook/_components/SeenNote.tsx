import Link from "next/link";
import type { JudgedTell } from "@/lib/consult/record/judgeTells";

/** What the counts of cases beside the handbook's words mean; leads on where some of the words are off. */
export function SeenNote({ judged }: Readonly<{ judged: readonly JudgedTell[] }>) {
  if (judged.every(({ looked }) => looked === 0)) return null;
  const off = judged.filter(({ verdict }) => verdict.kind === "off").length;
  return (
    <p className="small soft">
      Seen here: found in so many of the finished jobs with this root cause in which it was checked.
      {off > 0 ? (
        <>
          {" "}
          <Link href="/handbook/words" prefetch={false}>
            {off === 1 ? "One word is" : `${off} words are`} clearly off
          </Link>
          .
        </>
      ) : null}
    </p>
  );
}
