import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { seededRandom } from "@/lib/diagnosis/learned/seededRandom";
import { fail } from "./fail";
import { editOutside } from "./torture/editOutside";
import { fillDisk } from "./torture/fillDisk";
import { fillRealDisk, fillUp } from "./torture/fillRealDisk";
import { killSaver } from "./torture/killSaver";
import { saveLines } from "./torture/saveLines";
import { saveUntilKilled } from "./torture/saveUntilKilled";
import { turnClockBack } from "./torture/turnClockBack";
import { twoSavers } from "./torture/twoSavers";

const usage = "usage: npm run -s torture -- [--short] [--seed 1]";

const { values, positionals } = readArguments();
const [folder = "", second = "", third = ""] = positionals;
if (values.saver) saveUntilKilled(folder, Number(second));
else if (values.lines) saveLines(folder, second, Number(third));
else if (values.fill) process.stdout.write(JSON.stringify(fillUp(folder)));
else await torture();

/** The first three are how the command starts itself as a program to be tortured. */
function readArguments() {
  try {
    return parseArgs({
      allowPositionals: true,
      options: {
        saver: { type: "boolean" },
        lines: { type: "boolean" },
        fill: { type: "boolean" },
        short: { type: "boolean" },
        seed: { type: "string", default: "1" },
      },
    });
  } catch {
    return fail(2, usage);
  }
}

async function torture(): Promise<void> {
  const seed = Number(values.seed);
  if (positionals.length > 0 || !Number.isSafeInteger(seed)) fail(2, usage);
  const size = values.short
    ? { saves: 25, lines: 12, rounds: 4, clock: 10 }
    : { saves: 200, lines: 100, rounds: 50, clock: 100 };
  const place = mkdtempSync(join(tmpdir(), "benchlore-torture-"));
  try {
    const killed = await killSaver(join(place, "killed"), size.saves, seededRandom(seed));
    const together = await twoSavers(join(place, "together"), size.lines);
    const outside = editOutside(join(place, "outside"), size.rounds);
    const full = fillDisk(join(place, "full"));
    const small = fillRealDisk(join(place, "small"));
    const clock = turnClockBack(join(place, "clock"), size.clock);
    const held =
      killed.halfWritten + killed.acknowledgedSavesLost + killed.revisionsDamaged === 0 &&
      together.linesLost + together.linesTwice + together.revisionsDamaged === 0 &&
      outside.conflictsFound === outside.edits &&
      outside.outsideEditsLost + outside.formsLost === 0 &&
      full.saidInWords === full.injected &&
      full.fileHurt + full.filesLeftBehind + full.revisionsDamaged === 0 &&
      full.savedAfterwards === full.injected &&
      (typeof small === "string" ||
        (small.saidInWords && small.fileIsLastSaved && small.filesLeftBehind === 0)) &&
      clock.outOfOrder === 0;
    const report = { held, killed, together, outside, fullDiskInjected: full, fullDiskMounted: small, clock };
    process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
    process.exitCode = held ? 0 : 1;
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
}
