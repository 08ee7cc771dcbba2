"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, type ReactNode, useEffect, useRef } from "react";

/** Long enough for a number to be finished, short enough to seem at once. */
const pauseMs = 350;

/** A form whose fields go into the address as they are filled in; without JavaScript a plain form with a button. */
export function LiveForm({
  action,
  className,
  children,
}: Readonly<{ action: string; className?: string | undefined; children: ReactNode }>) {
  const router = useRouter();
  const waiting = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(waiting.current), []);

  const readSoon = ({ currentTarget: form }: FormEvent<HTMLFormElement>) => {
    clearTimeout(waiting.current);
    waiting.current = setTimeout(() => {
      const filled = [...new FormData(form).entries()].flatMap(([name, value]): [string, string][] =>
        typeof value === "string" && value.trim() !== "" ? [[name, value]] : [],
      );
      router.replace(`${action}?${new URLSearchParams(filled)}`, { scroll: false });
    }, pauseMs);
  };

  return (
    <form action={action} method="get" className={className} onInput={readSoon} autoComplete="off">
      {children}
    </form>
  );
}
