import Link from "next/link";
import controls from "../_components/controls.module.css";
import styles from "./Bench.module.css";

/** A line when content files could not be read: the answers rest on fewer cases than there are. */
export function SetAside({ count }: Readonly<{ count: number }>) {
  if (count === 0) return null;
  return (
    <p className={styles.setAside}>
      {count === 1 ? "One fault" : `${count} faults`} in the casebook's files: what could not be read is left
      out of the answers.{" "}
      <Link className={controls.link} href="/casebook#set-aside" prefetch={false}>
        See which, and what to write instead
      </Link>
    </p>
  );
}
