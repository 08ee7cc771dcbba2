import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { StateNote } from "@/app/_components/StateNote";
import { type CasebookQuery, casebookHref, chosenFields } from "./casebookQuery";

/** No case answers: what to try instead. */
export function NothingFound({ query, all }: Readonly<{ query: CasebookQuery; all: number }>) {
  if (all === 0) {
    return (
      <StateNote title="The casebook is empty.">
        <p>Every job that is written up makes the next one easier. The first one is the most welcome.</p>
        <p className={controls.row}>
          <Link className={controls.lead} href="/add" prefetch={false}>
            Add the first case
          </Link>
        </p>
      </StateNote>
    );
  }
  const isNarrowed = chosenFields(query).length > 0;
  return (
    <StateNote title={query.words.trim() ? "No case says this." : "No case has all of that."}>
      <p>
        {isNarrowed
          ? "Take one of the choices away, or look through the whole casebook."
          : "Try fewer words, or another name for the part. A slip of a letter or two is forgiven."}
      </p>
      <p className={controls.row}>
        {isNarrowed && query.words ? (
          <Link className={controls.lead} href={casebookHref({ ...query, choice: {} })} prefetch={false}>
            Keep the words, drop the choices
          </Link>
        ) : null}
        <Link className={controls.plain} href="/casebook" prefetch={false}>
          All {all} cases
        </Link>
        {query.words.trim() ? (
          <Link
            className={controls.plain}
            href={`/?${new URLSearchParams({ says: query.words })}`}
            prefetch={false}
          >
            Ask the bench instead
          </Link>
        ) : null}
      </p>
    </StateNote>
  );
}
