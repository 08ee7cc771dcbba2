import type { JudgedTell } from "@/lib/consult/record/judgeTells";
import styles from "./SeenHere.module.css";

/** In how many of the cases a finding was met; and the word that they speak for, where the handbook's is clearly off. */
export function SeenHere({ judged }: Readonly<{ judged: JudgedTell | undefined }>) {
  if (!judged || judged.looked === 0) return null;
  const { seen, looked, verdict } = judged;
  return (
    <>
      {seen} of {looked}
      {verdict.kind === "off" ? <b className={styles.off}>: rather {verdict.proposed}</b> : null}
    </>
  );
}
