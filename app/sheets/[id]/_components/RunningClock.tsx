"use client";

import { useEffect, useState } from "react";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { clockMinutes } from "@/lib/consult/sheet/clock";

type Props = Readonly<{
  minutes: number;
  since: string | undefined;
  /** What it shows until the browser counts by itself. */
  first: string;
}>;

/** As often as whole minutes can come late unnoticed. */
const lookAgainMs = 5_000;

/** The minutes on a clock, counting on by themselves. */
export function RunningClock({ minutes, since, first }: Props) {
  const [shown, show] = useState(first);
  useEffect(() => {
    const clock = since === undefined ? { minutes } : { minutes, since };
    const look = () => show(formatMinutes(Math.floor(clockMinutes(clock, Date.now()))));
    look();
    if (since === undefined) return;
    const timer = setInterval(look, lookAgainMs);
    return () => clearInterval(timer);
  }, [minutes, since]);
  return <b className="reading">{shown}</b>;
}
