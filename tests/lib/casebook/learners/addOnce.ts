import { existsSync } from "node:fs";
import { keepingPlace } from "@/lib/casebook/keeping/keepingPlace";
import { addSession } from "@/lib/casebook/learners/addSession";
import { session } from "@/tests/lib/study/memory/sessions";

/**
 * A program of its own that adds five sessions to a learner's file while its siblings do the same: it says that it is ready,
 * waits for the starting file, adds, and says how each ended.
 */
const [folder = "", start = "", mark = ""] = process.argv.slice(2);
process.stdout.write("ready\n");
const adder = setInterval(() => {
  if (!existsSync(start)) return;
  clearInterval(adder);
  const place = keepingPlace(folder, "ada-brook");
  for (const number of [1, 2, 3, 4, 5]) {
    const own = session({ case: `${mark}-${number}` });
    const added = addSession(own, place, { nowMs: Date.now(), mark: `${mark}${number}` });
    process.stdout.write(
      added.kind === "refused"
        ? `${added.problems.map(({ received }) => received).join()}\n`
        : `${added.kind}\n`,
    );
  }
}, 1);
