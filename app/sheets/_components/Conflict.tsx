import controls from "@/app/_components/controls.module.css";
import { SideBySide } from "@/app/_components/SideBySide";
import { StateNote } from "@/app/_components/StateNote";
import styles from "./SheetForm.module.css";

type Props = Readonly<{
  conflict: Readonly<{ mine: string; theirs: string; theirHash: string }>;
  sheet: string;
  /** The outcome that was tapped, for doing it once more. */
  found: string | undefined;
}>;

/** The file changed while this was being written: both versions side by side, both kept, and what can be done. */
export function Conflict({ conflict, sheet, found }: Props) {
  const { mine, theirs } = conflict;
  return (
    <StateNote title="This sheet was changed elsewhere meanwhile" tone="warn">
      <p>
        {theirs === ""
          ? "Its file has been taken away. Nothing of yours is lost: it is kept among the earlier versions."
          : "Both versions are kept, yours among the earlier versions. Nothing was overwritten."}
      </p>
      <SideBySide left={theirs} right={mine} leftTitle="As it stands now" rightTitle="As you wanted it" />
      <p className={styles.buttons}>
        {theirs === "" ? null : (
          <button
            type="submit"
            name={found === undefined ? "again" : "step.0.found"}
            value={found ?? "1"}
            className={controls.lead}
          >
            Do mine again on top of it
          </button>
        )}
        <input type="hidden" name="text" value={mine} />
        <button type="submit" name="wish" value="mine" className={controls.plain}>
          Put my version in its place
        </button>
        <a className={controls.plain} href={`/sheets/${sheet}`}>
          Leave it as it stands
        </a>
      </p>
    </StateNote>
  );
}
