import Link from "next/link";
import type { ReactNode } from "react";
import { benchHref } from "./benchHref";
import type { BenchQuery } from "./benchQuery";

type Props = Readonly<{
  to: BenchQuery;
  className?: string | undefined;
  /** The choice that holds now. */
  current?: boolean;
  label?: string;
  /** Brings words of its own, or none: those in the box are not carried along. */
  ownWords?: boolean;
  /** Asks for the whole plan as well, which nothing else does: it takes longer than all the rest. */
  plan?: boolean;
  children: ReactNode;
}>;

/** A tap on the bench: a plain link to the bench as it stands afterwards, so that going back undoes it. */
export function BenchLink({
  to,
  className,
  current = false,
  label,
  ownWords = false,
  plan = false,
  children,
}: Props) {
  return (
    <Link
      href={benchHref(to, "/", plan)}
      scroll={false}
      prefetch={false}
      data-tap={ownWords ? undefined : ""}
      className={className}
      aria-current={current ? "true" : undefined}
      aria-label={label}
    >
      {children}
    </Link>
  );
}
