import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";
import { SideBySide } from "@/app/_components/SideBySide";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import { type Revision, shortHash } from "@/lib/casebook/keeping/revisionName";
import styles from "./Versions.module.css";

type Props = Readonly<{
  sheet: SheetVersion;
  revisions: readonly Revision[];
  /** The version being looked at, with its text; undefined where none is, or where it cannot be read. */
  looked: Readonly<{ number: number; text: string }> | undefined;
}>;

const sayTime = (at: string) => `${at.slice(0, 10)}, ${at.slice(11, 16)} UTC`;

/** Every version that is kept: look at one beside what stands now, or put it back, which is a new version itself. */
export function Versions({ sheet, revisions, looked }: Props) {
  const now = revisions.find(({ hash, aside }) => hash === shortHash(sheet.hash) && !aside)?.number;
  return (
    <Section title="Earlier versions" id="versions" aside={`${revisions.length} kept`} className="unprinted">
      {revisions.length === 0 ? (
        <p className="small soft">None yet: the first change keeps the version before it.</p>
      ) : (
        <details open={looked !== undefined}>
          <summary className={controls.opens}>Look at them, put one back</summary>
          <ol className={styles.versions}>
            {revisions.map(({ number, at, aside }) => (
              <li key={number}>
                <span>
                  <b>{number}</b> {sayTime(at)}
                  {number === now ? ", as it stands" : null}
                  {aside ? ", set aside: written while another was saved" : null}
                </span>
                {number === now ? null : (
                  <span className={controls.row}>
                    <Link
                      className={controls.word}
                      href={`/sheets/${sheet.id}?version=${number}#versions`}
                      prefetch={false}
                    >
                      Look<span className="heard"> at version {number}</span>
                    </Link>
                    <SheetForm sheet={{ ...sheet, text: "" }} wish="restore" name={`restore-${number}`}>
                      <input type="hidden" name="version" value={number} />
                      <button type="submit" className={controls.word}>
                        Put back<span className="heard"> version {number}</span>
                      </button>
                    </SheetForm>
                  </span>
                )}
                {looked?.number === number ? (
                  <div className={styles.looked}>
                    <SideBySide
                      left={sheet.text}
                      right={looked.text}
                      leftTitle="As it stands now"
                      rightTitle={`Version ${number}`}
                    />
                  </div>
                ) : null}
              </li>
            ))}
          </ol>
        </details>
      )}
    </Section>
  );
}
