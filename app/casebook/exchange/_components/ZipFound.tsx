import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { StateNote } from "@/app/_components/StateNote";
import type { LeftFile } from "@/lib/casebook/archive/archiveReport";
import type { BroughtBack } from "@/lib/exchange/copies/bringBack";
import styles from "./BringIn.module.css";
import { caseOfPath, kindWords } from "./zipWords";

const shownPaths = 12;
const shownLeft = 100;

/** What a zip holds beside the casebook: what is new, what is there already, what differs, what cannot be taken in. */
export function ZipFound({ found: { name, hash, written, report } }: Readonly<{ found: BroughtBack }>) {
  const { fresh, same, differing, refused } = report;
  const hasFresh = fresh.length > 0;
  return (
    <div className={styles.step}>
      <StateNote
        title={
          written
            ? `Taken in: ${kindWords(fresh)}`
            : hasFresh
              ? `${kindWords(fresh)} would be added; nothing is written yet`
              : "Nothing in it is new"
        }
      >
        <p className={styles.read}>
          <b>{name}</b>
          {same.length > 0 ? ` · there already, the same: ${kindWords(same)}` : ""}
        </p>
        <ul className={styles.links}>
          {fresh.slice(0, shownPaths).map((path) => (
            <li key={path}>
              {written && caseOfPath(path) ? (
                <Link href={`/casebook/${caseOfPath(path)}`} prefetch={false}>
                  {caseOfPath(path)}
                </Link>
              ) : (
                path
              )}
            </li>
          ))}
          {fresh.length > shownPaths ? <li>and {fresh.length - shownPaths} more</li> : null}
        </ul>
      </StateNote>
      {differing.length > 0 ? (
        <StateNote
          title={`Not the same as what is there, so left out: ${kindWords(differing.map(({ path }) => path))}`}
          tone="warn"
        >
          <p>
            What stands in the casebook is not touched. To have both, give the one in the zip an id of its
            own.
          </p>
          <ul className={styles.links}>
            {differing.slice(0, shownLeft).map(({ path }) => (
              <li key={path}>
                {caseOfPath(path) ? (
                  <Link href={`/casebook/${caseOfPath(path)}`} prefetch={false}>
                    {caseOfPath(path)}
                  </Link>
                ) : (
                  path
                )}
              </li>
            ))}
            {differing.length > shownLeft ? <li>and {differing.length - shownLeft} more</li> : null}
          </ul>
        </StateNote>
      ) : null}
      {refused.length > 0 ? (
        <StateNote
          title={`Cannot be taken in: ${kindWords([...new Set(refused.map(({ path }) => path))])}`}
          tone="warn"
        >
          <Refused files={refused} />
        </StateNote>
      ) : null}
      {written || !hasFresh ? null : (
        <p className={styles.act}>
          <input type="hidden" name="seen" value={hash} />
          <button type="submit" name="wish" value="take" className={controls.lead}>
            Take in {kindWords(fresh)}
          </button>
          <noscript> Choose the same zip above once more before: the browser does not keep it.</noscript>
        </p>
      )}
    </div>
  );
}

/** Line and field of a fault: `cases/a.md:6 instrument` is line 6, instrument. */
function placeIn(path: string, where: string): string {
  const [, line, field = ""] = /^(?::(\d+))? ?(.*)$/.exec(where.slice(path.length)) ?? [];
  return [line === undefined ? "" : `line ${line}`, field].filter(Boolean).join(", ");
}

function Refused({ files }: Readonly<{ files: readonly LeftFile[] }>) {
  return (
    <>
      <ul className={styles.refused}>
        {files.slice(0, shownLeft).map(({ path, where, found, write }) => (
          <li key={`${where} ${found}`}>
            <b>{path}</b>
            <span>
              {where === path ? "F" : `${placeIn(path, where)}: f`}ound {found}; write {write}
            </span>
          </li>
        ))}
      </ul>
      {files.length > shownLeft ? <p>The first {shownLeft} are shown.</p> : null}
    </>
  );
}
