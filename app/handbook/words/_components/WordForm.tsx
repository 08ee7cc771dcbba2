import controls from "@/app/_components/controls.module.css";
import type { WordChange } from "@/lib/vocabulary/wordChange";
import { decideWord } from "../actions";

type Props = Readonly<{
  change: WordChange;
  /** What the change is about, for ears. */
  about: string;
  isDeclined: boolean;
}>;

/** The two decisions about a word; plain buttons of a plain form. */
export function WordForm({ change, about, isDeclined }: Props) {
  const { cause, others, check, outcome, word, proposed } = change;
  const fields = { cause, others: others ? "yes" : "", check, outcome, word, proposed };
  return (
    <form action={decideWord} className={`${controls.row} unprinted`}>
      {Object.entries(fields).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <button type="submit" name="wish" value="take" className={controls.lead}>
        Write “{proposed}”<span className="heard">, {about}</span>
      </button>
      {isDeclined ? null : (
        <button type="submit" name="wish" value="decline" className={controls.plain}>
          Leave “{word}”<span className="heard">, {about}</span>
        </button>
      )}
    </form>
  );
}
