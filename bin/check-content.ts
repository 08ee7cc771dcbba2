import { openContentShelf } from "@/lib/casebook/files/openContentShelf";
import { readLearner } from "@/lib/casebook/learners/readLearner";
import { lessonFaults } from "@/lib/casebook/lessons/lessonFaults";
import { readLesson } from "@/lib/casebook/lessons/readLesson";
import { formatProblem } from "@/lib/document/contentProblem";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";
import { openContent } from "./openContent";

// Every file is looked at anew: what an earlier start remembers is not what is to be checked.
const { casebook, bench, folders, problems } = openContent({ ...process.env, BENCHLORE_CACHE: "none" });
const { instruments, checks, causes, repairs, cautions, sayings, causeNotes } = bench.vocabulary;
const notes = [...causeNotes.values()].reduce((sum, { length }) => sum + length, 0);
const isFit = (id: string) => {
  const kase = casebook.cases.get(id);
  return kase !== undefined && isFitForStudy(kase);
};
const lessons = openContentShelf(folders.lessons, (text, file) => {
  const reading = readLesson(text, file);
  return {
    entry: reading.lesson,
    problems: reading.lesson ? lessonFaults(reading, isFit) : reading.problems,
  };
}).all();
const learners = openContentShelf(folders.learners, (text, file) => {
  const { learner, problems: faults } = readLearner(text, file);
  return { entry: learner, problems: faults };
}).all();
const all = [...problems, ...lessons.problems, ...learners.problems];
for (const problem of all) process.stdout.write(`${formatProblem(problem)}\n`);
process.stderr.write(
  `${casebook.cases.size} cases, ${instruments.size} instruments, ${checks.size} checks, ${causes.size} causes, ` +
    `${repairs.size} repairs, ${cautions.size} cautions, ${sayings.length} sayings, ${notes} notes, ${lessons.entries.length} lessons, ` +
    `${learners.entries.length} learners; ${all.length} problems\n`,
);
process.exitCode = all.length > 0 ? 1 : 0;
