import { describe, expect, it } from "vitest";
import { dueList } from "@/lib/study/memory/dueList";
import { jobsOf } from "@/lib/study/memory/jobsOf";
import { progressBy } from "@/lib/study/memory/progressBy";
import { standingOf } from "@/lib/study/memory/standingOf";
import { session, went } from "./sessions";

// First waits: missed a day, nearly two, got three, cleanly eight (see comesBack.test.ts).
const sessions = [
  session({ case: "c-got", day: "2026-03-01", ...went.got }),
  session({ case: "a-missed", day: "2026-03-01", ...went.missed }),
  session({ case: "b-nearly", day: "2026-03-01", ...went.nearly }),
  session({ case: "d-clean", day: "2026-03-01", ...went.cleanly }),
];
const jobs = jobsOf({ sessions });
const nowOn = (day: string) => dueList(jobs, day).now.map((job) => job.case);

describe("what is to be seen again", () => {
  it("changes as the clock is moved: nothing on the day itself, then one after another", () => {
    expect(nowOn("2026-03-01")).toEqual([]);
    expect(nowOn("2026-03-02")).toEqual(["a-missed"]);
    expect(nowOn("2026-03-03")).toEqual(["a-missed", "b-nearly"]);
    expect(nowOn("2026-03-04")).toEqual(["a-missed", "b-nearly", "c-got"]);
    expect(nowOn("2026-03-09")).toEqual(["a-missed", "b-nearly", "c-got", "d-clean"]);
    expect(nowOn("2026-02-01")).toEqual([]);
  });

  it("tells what comes later in the order of its days", () => {
    expect(dueList(jobs, "2026-03-02").later.map(({ due }) => due)).toEqual([
      "2026-03-03",
      "2026-03-04",
      "2026-03-09",
    ]);
  });

  it("loses a job once it has been worked through again", () => {
    const again = [...sessions, session({ case: "a-missed", day: "2026-03-02", ...went.got })];
    expect(dueList(jobsOf({ sessions: again }), "2026-03-02").now).toEqual([]);
  });

  it("leaves out what the casebook no longer has", () => {
    expect(dueList(jobs, "2026-03-09", (id) => id !== "b-nearly").now.map((job) => job.case)).toEqual([
      "a-missed",
      "c-got",
      "d-clean",
    ]);
  });

  it("puts what went worse first on the same day", () => {
    const both = jobsOf({
      sessions: [
        session({ case: "x", day: "2026-03-01", ...went.nearly }),
        session({ case: "y", day: "2026-03-02", ...went.missed }),
      ],
    });
    expect(dueList(both, "2026-03-03").now.map((job) => job.case)).toEqual(["y", "x"]);
  });
});

describe("jobs that were worked through", () => {
  it("stand once each, as they went last, by day and not by their place in the file", () => {
    const [job, ...others] = jobsOf({
      sessions: [session({ day: "2026-03-05", ...went.got }), session({ day: "2026-03-01", ...went.missed })],
    });
    expect(others).toEqual([]);
    expect(job).toMatchObject({ went: "got it", last: "2026-03-05" });
    expect(job?.sessions.map(({ day }) => day)).toEqual(["2026-03-01", "2026-03-05"]);
  });
});

describe("progress", () => {
  const kind = (id: string) => (id === "d-clean" ? [] : id === "a-missed" ? ["slide"] : ["valve", "all"]);

  it("counts each job once under each of its kinds, what is most in need first", () => {
    expect(progressBy(jobs, kind, "2026-03-03")).toEqual([
      {
        key: "slide",
        jobs: 1,
        went: { missed: 1, nearly: 0, "got it": 0, "got it cleanly": 0 },
        sessions: 1,
        due: 1,
      },
      {
        key: "all",
        jobs: 2,
        went: { missed: 0, nearly: 1, "got it": 1, "got it cleanly": 0 },
        sessions: 2,
        due: 1,
      },
      {
        key: "valve",
        jobs: 2,
        went: { missed: 0, nearly: 1, "got it": 1, "got it cleanly": 0 },
        sessions: 2,
        due: 1,
      },
    ]);
  });

  it("sums a learner up in one line", () => {
    const learner = {
      id: "a",
      name: "A",
      demo: false,
      since: "2026-03-01",
      sessions,
      notes: "",
      file: "a.md",
    };
    expect(standingOf(learner, "2026-03-03")).toEqual({
      id: "a",
      name: "A",
      demo: false,
      jobs: 4,
      sessions: 4,
      got: 2,
      missed: 1,
      nearly: 1,
      due: 2,
      last: "2026-03-01",
    });
    expect(standingOf({ ...learner, sessions: [] }, "2026-03-03")).toMatchObject({ jobs: 0, last: null });
  });
});
