import { formatMinutes } from "@/app/_components/formatMinutes";

const minuteMs = 60_000;
/** Longer than this nobody was at the instrument all the while. */
const longestMinutes = 240;

/** How long ago the last version was kept, for the minutes of the next step; nothing where that tells nothing. */
export function SinceLast({ at }: Readonly<{ at: string }>) {
  const minutes = Math.round((Date.now() - Date.parse(at)) / minuteMs);
  return minutes >= 1 && minutes <= longestMinutes ? (
    <>{formatMinutes(minutes)} since the last entry</>
  ) : null;
}
