import { describe, expect, it } from "vitest";
import { openContentShelf } from "@/lib/casebook/files/openContentShelf";
import { lessonFaults } from "@/lib/casebook/lessons/lessonFaults";
import { readLesson } from "@/lib/casebook/lessons/readLesson";
import { openBench } from "@/lib/consult/bench/openBench";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";

const { casebook, folders } = openBench({ BENCHLORE_CACHE: "none" });
const isFit = (id: string) => {
  const kase = casebook.cases.get(id);
  return kase !== undefined && isFitForStudy(kase);
};

describe("the lessons that come along", () => {
  const { entries, problems } = openContentShelf(folders.lessons, (text, file) => {
    const reading = readLesson(text, file);
    return {
      entry: reading.lesson,
      problems: reading.lesson ? lessonFaults(reading, isFit) : reading.problems,
    };
  }).all();

  it("can be read, and every job in them can be worked through", () => {
    expect(problems).toEqual([]);
    expect(entries.length).toBeGreaterThan(0);
  });

  it("say that they are demo lessons, and what they are about", () => {
    for (const { demo, introduction } of entries) {
      expect(demo).toBe(true);
      expect(introduction.length).toBeGreaterThan(100);
    }
  });
});
