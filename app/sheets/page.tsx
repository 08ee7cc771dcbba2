import type { Metadata } from "next";
import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { formatDay } from "@/app/_components/formatDay";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { labelOf } from "@/app/_components/labelOf";
import { readUnit } from "@/app/_components/readUnit";
import { StateNote } from "@/app/_components/StateNote";
import { stepViews } from "@/app/_components/stepViews";
import { getShop } from "@/app/_data/shop";
import { lengthWords } from "@/lib/gauging/lengths/lengthWords";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Sheets" };

/** The jobs in hand, the one taken in last first. */
export default async function SheetsPage() {
  const { bench, vocabulary } = await getShop();
  const lengths = lengthWords(await readUnit());
  const open = [...bench.open.values()].sort((a, b) =>
    a.received === b.received ? (a.id < b.id ? 1 : -1) : a.received < b.received ? 1 : -1,
  );
  return (
    <main className="page" id="main">
      <h1>Jobs in hand</h1>
      {open.length === 0 ? (
        <StateNote level={2} title="Nothing is open on the bench.">
          <p>
            Say what came in on the <Link href="/">bench</Link> and keep it as a bench sheet. From then on
            every step is on disk as soon as it is tapped.
          </p>
        </StateNote>
      ) : (
        <ul className={styles.jobs}>
          {open.map((kase) => {
            const steps = stepViews(kase, vocabulary, lengths);
            const last = steps.at(-1);
            return (
              <li key={kase.id}>
                <h2>
                  <Link className={controls.title} href={`/sheets/${kase.id}`} prefetch={false}>
                    {kase.title}
                  </Link>
                </h2>
                <p className={styles.meta}>
                  <span>{kase.id}</span>
                  <span>
                    {[labelOf(vocabulary.instruments, kase.instrument), kase.maker, kase.model]
                      .filter(Boolean)
                      .join(", ")}
                  </span>
                  <span>taken in {formatDay(kase.received)}</span>
                  {kase.clock?.since ? <span>its clock is running</span> : null}
                  {kase.harms.length > 0 ? <span className={styles.harm}>a repair did harm</span> : null}
                </p>
                <p className={styles.last}>
                  {last ? `Last: ${last.title}: ${last.found.toLowerCase()}` : "No step yet"}
                </p>
                <p className={styles.spent}>
                  <span className="reading">
                    {formatMinutes(steps.reduce((sum, { minutes }) => sum + minutes, 0))}
                  </span>{" "}
                  {steps.length} {steps.length === 1 ? "step" : "steps"}
                  {kase.quoted ? `, quoted ${formatMinutes(kase.quoted.minutes)}` : ""}
                </p>
              </li>
            );
          })}
        </ul>
      )}
    </main>
  );
}
