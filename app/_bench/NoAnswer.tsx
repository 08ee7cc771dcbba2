import Link from "next/link";
import type { Answer } from "@/lib/consult/answer";
import controls from "../_components/controls.module.css";
import { StateNote } from "../_components/StateNote";
import { OutsideNote } from "./OutsideNote";
import { Remarks } from "./Remarks";

/** The answer's place when there is no cause to name and nothing to check: why, and what to do about it. */
export function NoAnswer({ answer, says }: Readonly<{ answer: Answer; says: string }>) {
  const { instrument, understood, remarks } = answer;
  return (
    <>
      {instrument?.outside ? <OutsideNote label={instrument.label} /> : null}
      {!instrument?.outside && understood.length === 0 ? (
        <StateNote level={2} title="Nothing of that was understood" tone="warn">
          <p>Name the part and what it does: “2nd valve slow coming up”. Or tap it in the drawing.</p>
        </StateNote>
      ) : null}
      {!instrument?.outside && understood.length > 0 ? (
        <StateNote level={2} title="No cause can be named from this" tone="warn">
          <p>Nothing that is known bears on what was found. Say or tap something more.</p>
        </StateNote>
      ) : null}
      <Remarks remarks={remarks} />
      <p className={controls.row}>
        {says.trim() ? (
          <Link
            className={controls.plain}
            href={`/casebook?${new URLSearchParams({ q: says.trim() })}`}
            prefetch={false}
          >
            Look for these words in the casebook
          </Link>
        ) : null}
        <Link className={controls.word} href="/handbook" prefetch={false}>
          Leaf through the handbook
        </Link>
      </p>
    </>
  );
}
