import { openBench } from "@/lib/consult/openBench";
import { leaveOneOut } from "@/lib/evaluation/leaveOneOut";
import { summariseRanks } from "@/lib/evaluation/summariseRanks";
import { fail } from "./fail";

const [what, ...rest] = process.argv.slice(2);
if (what !== "--casebook" || rest.length > 0) fail(2, "usage: npm run -s evaluate -- --casebook");

const asked = leaveOneOut(openBench(process.env).bench);
const report = {
  ...summariseRanks(asked.map(({ rank }) => rank)),
  missed: asked
    .filter(({ rank }) => rank > 1)
    .map((one) => ({ ...one, rank: Number.isFinite(one.rank) ? one.rank : null })),
};
process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
