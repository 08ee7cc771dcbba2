import { openBench } from "@/lib/consult/openBench";
import { formatProblem } from "@/lib/document/contentProblem";

// Every file is looked at anew: what an earlier start remembers is not what is to be checked.
const { casebook, bench, problems } = openBench({ ...process.env, BENCHLORE_CACHE: "none" });
const { instruments, checks, causes, repairs, cautions } = bench.vocabulary;
for (const problem of problems) process.stdout.write(`${formatProblem(problem)}\n`);
process.stderr.write(
  `${casebook.cases.size} cases, ${instruments.size} instruments, ${checks.size} checks, ${causes.size} causes, ` +
    `${repairs.size} repairs, ${cautions.size} cautions; ${problems.length} problems\n`,
);
process.exitCode = problems.length > 0 ? 1 : 0;
