import { existsSync } from "node:fs";
import { saveNewCase } from "@/lib/casebook/saveNewCase";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

/**
 * A program of its own that saves a case of the same id as its siblings, as near to the same moment as can be: it says that
 * it is ready, waits for the starting file, saves, and says how that ended.
 */
const [folder = "", start = "", mark = ""] = process.argv.slice(2);
process.stdout.write("ready\n");
const saver = setInterval(() => {
  if (!existsSync(start)) return;
  clearInterval(saver);
  const text = change(goodCase, "It was washed", `It was washed by ${mark}`);
  const { problems } = saveNewCase(text, folder, smallVocabulary, mark);
  process.stdout.write(
    problems.length === 0 ? "saved\n" : `${problems.map(({ received }) => received).join()}\n`,
  );
}, 1);
