"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import styles from "./Header.module.css";
import { placesToGo } from "./placesToGo";

const isWithin = (path: string, href: string) =>
  href === "/" ? path === "/" : path === href || path.startsWith(`${href}/`);

/** The places, the current one held in a jaw. On the client because only there the layout learns the address. */
export function Places() {
  const path = usePathname();
  return (
    <nav className={styles.places} aria-label="Places">
      {placesToGo.map(({ href, label }) => (
        <Link
          key={href}
          href={href}
          prefetch={false}
          aria-current={isWithin(path, href) ? "page" : undefined}
        >
          {label}
        </Link>
      ))}
    </nav>
  );
}
