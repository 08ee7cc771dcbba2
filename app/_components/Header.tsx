import Link from "next/link";
import styles from "./Header.module.css";
import { LightSwitch } from "./LightSwitch";
import { Mark } from "./Mark";
import { Places } from "./Places";
import type { Light } from "./readLight";

/** The head of every page: mark and name, the places, and the light to work in. */
export function Header({ light }: Readonly<{ light: Light | undefined }>) {
  return (
    <header className={`${styles.head} unprinted`}>
      <a className={styles.skip} href="#main">
        To the work
      </a>
      <div className={styles.row}>
        <Link className={styles.wordmark} href="/" prefetch={false} aria-label="Benchlore, to an empty bench">
          <Mark />
          <span>Benchlore</span>
        </Link>
        <Places />
        <LightSwitch light={light} />
      </div>
    </header>
  );
}
