import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import styles from "./Print.module.css";
import { PrintButton } from "./PrintButton";

/** Above a page that is for paper: back to where it came from, and to the printer. */
export function PrintTools({ back, label }: Readonly<{ back: string; label: string }>) {
  return (
    <div className={`${styles.tools} unprinted`}>
      <Link className={controls.link} href={back} prefetch={false}>
        {label}
      </Link>
      <PrintButton />
    </div>
  );
}
